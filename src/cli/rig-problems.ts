import type { Rig } from "#core/index.ts";
import type { PlugTrouble, RigTrouble } from "#core/rig/trouble.ts";
import { rigTroubles } from "#core/rig/troubles.ts";
import { oneOf, type Path, type Problem } from "./problem.ts";

/** What keeps a rig from being one, with paths from `at`; nothing where it can be built and every position is fed. */
export const rigProblems = (rig: Rig, at: Path): readonly Problem[] =>
  rigTroubles(rig).map((trouble) => told(trouble, at));

/** A name that no part of a rig bears. */
export const noPart = (path: Path, found: string): Problem => ({
  path,
  expected: "the id of a part of the rig",
  found,
});

const isOfPlug = (trouble: RigTrouble): trouble is PlugTrouble => "end" in trouble;

function told(trouble: RigTrouble, at: Path): Problem {
  if (isOfPlug(trouble)) return plugProblem(trouble, [...at, "plugged", trouble.index]);
  switch (trouble.trouble) {
    case "goes round":
    case "not one feed":
      return {
        path: [...at, "plugged", ...(trouble.index === undefined ? [] : [trouble.index])],
        expected:
          trouble.trouble === "goes round"
            ? `a way to ${trouble.part} that does not go round`
            : `one box that drives ${trouble.part} (${trouble.said})`,
      };
    case "name taken":
    case "a person":
    case "setting":
    case "settings together":
      return partProblem(trouble, at);
    default:
      return seatProblem(trouble, [...at, "positions"]);
  }
}

type OfPart = Extract<
  RigTrouble,
  { readonly trouble: "name taken" | "a person" | "setting" | "settings together" }
>;

function partProblem(trouble: OfPart, at: Path): Problem {
  const path = [...at, "of" in trouble ? trouble.of : "parts", trouble.index];
  switch (trouble.trouble) {
    case "name taken":
      return {
        path: [...path, "id"],
        expected: "an id that nothing else has",
        found: trouble.id,
      };
    case "a person":
      return {
        path: [...path, "kind"],
        expected: "no person: they are added",
        found: trouble.kind,
      };
    case "setting":
      return {
        path: [...path, "settings", trouble.name],
        expected: trouble.understood,
        found: trouble.value,
      };
    case "settings together":
      return {
        path: [...path, "settings"],
        expected: `settings that go together: ${trouble.understood}`,
      };
  }
}

type OfSeat = Exclude<RigTrouble, OfPart | PlugTrouble | { readonly part: string }>;

const seatWords: Readonly<Record<Exclude<OfSeat["trouble"], "nobody listens">, string>> = {
  "worn is no part": "the id of a part of the rig",
  "not to be worn": "headphones, in-ears or an instrument",
  "worn twice": "headphones that nobody else wears",
  "hangs from nothing": "headphones that are plugged in",
};

const seatProblem = (trouble: OfSeat, path: Path): Problem =>
  trouble.trouble === "nobody listens"
    ? { path, expected: "at least one position" }
    : {
        path: [...path, trouble.index, "wears"],
        expected: seatWords[trouble.trouble],
        found: trouble.id,
      };

function plugProblem(trouble: PlugTrouble, path: Path): Problem {
  const { end } = trouble;
  const amiss = (key: "plug" | "socket", expected: string): Problem => ({
    path: [...path, key],
    expected,
    found: end[key],
  });
  switch (trouble.trouble) {
    case "no such part":
      return noPart([...path, trouble.key], end[trouble.key]);
    case "no such plug":
      return amiss("plug", oneOf(trouble.has));
    case "no such socket":
      return amiss("socket", oneOf(trouble.has));
    case "does not fit":
      return amiss("socket", `a socket that a ${trouble.plug} plug goes into`);
    case "used twice":
      return amiss(trouble.key, `a ${trouble.key} that nothing above uses`);
  }
}
