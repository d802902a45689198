import { complaints } from "#core/checks/complaints.ts";
import { type Answered, isAnswered, isNoticed, isReading } from "#core/checks/finding.ts";
import { twistAnswers } from "#core/checks/twist.ts";
import type { Model } from "#core/diagnosis/model.ts";
import type { Part } from "#core/index.ts";
import { earCheck, type Finding } from "#core/index.ts";
import { point } from "#core/parts/part.ts";
import { contactsOf } from "#core/parts/plugs.ts";
import { isPart } from "#core/rig/plug-troubles.ts";
import type { BuiltRig } from "#core/rig/rig.ts";
import { answerProblems, seatProblems } from "./answer-problems.ts";
import { noticedProblems } from "./noise-problems.ts";
import { oneOf, type Path, type Problem } from "./problem.ts";
import { noPart } from "./rig-problems.ts";

/** What a finding names that a rig lacks, with paths from `at`. `now` is the rig as the moves before it left it. */
export function findingProblems(
  model: Model,
  now: BuiltRig,
  finding: Finding,
  at: Path,
): readonly Problem[] {
  if (isAnswered(finding)) return answeredProblems(model, now, finding, at);
  if (isNoticed(finding)) return noticedProblems(now, finding, at);
  if (!isReading(finding)) return seatProblems(now, finding.asked.position, [...at, "asked"]);
  const { part, from, to } = finding.asked;
  if (!isPart(now, part)) return [noPart([...at, "asked", "part"], part)];
  const contacts = contactsIn(now.part(part));
  const ends = { from, to };
  const wrong = (["from", "to"] as const).filter((end) => !contacts.includes(ends[end]));
  const same = wrong.length === 0 && from === to ? (["to"] as const) : [];
  return [...wrong, ...same].map((end) => ({
    path: [...at, "asked", end],
    expected: oneOf(contacts.filter((contact) => end === "from" || contact !== from)),
    found: ends[end],
  }));
}

/** The contacts of a part that a meter can be put to. */
function contactsIn({ plugs, sockets, body }: Part): readonly string[] {
  const nodes = new Set(body.flatMap(({ a, b }) => [a, b]));
  const named = plugs.flatMap(({ name, kind }) =>
    contactsOf(kind).map((contact) => point(name, contact)),
  );
  const others = [...nodes].filter((node) =>
    sockets.some(({ name }) => node.startsWith(`${name}.`)),
  );
  return [...new Set([...named, ...others])].filter((node) => nodes.has(node));
}

function answeredProblems(
  model: Model,
  now: BuiltRig,
  finding: Answered,
  at: Path,
): readonly Problem[] {
  const place = placeProblems(model, now, finding.asked, [...at, "asked"]);
  if (place.length > 0) return place;
  const lists = listsFor(model, finding.asked);
  return (["results", "otherTimes"] as const).flatMap((key) =>
    answerProblems(lists, finding[key] ?? [], [...at, key]),
  );
}

function placeProblems(
  { looks }: Model,
  now: BuiltRig,
  asked: Answered["asked"],
  at: Path,
): readonly Problem[] {
  if (asked.check === "look") {
    const places = looks.map(({ place }) => place);
    return places.includes(asked.place)
      ? []
      : [{ path: [...at, "place"], expected: oneOf(places), found: asked.place }];
  }
  if (asked.check !== "twist") return seatProblems(now, asked.position, at);
  if (!isPart(now, asked.part)) return [noPart([...at, "part"], asked.part)];
  const plugs = now.part(asked.part).plugs.map(({ name }) => name);
  return plugs.includes(asked.plug)
    ? []
    : [{ path: [...at, "plug"], expected: oneOf(plugs), found: asked.plug }];
}

/** The closed list of answers to each question. */
function listsFor({ looks }: Model, asked: Answered["asked"]): readonly (readonly string[])[] {
  switch (asked.check) {
    case "look":
      return [looks.find(({ place }) => place === asked.place)?.answers ?? []];
    case "twist":
      return [twistAnswers];
    case "complaint":
      return [complaints];
    default:
      return earCheck(asked.check).questions.map(({ answers }) => answers);
  }
}
