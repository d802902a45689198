/**
 * What the field cases' words are in the program's answers: one table, made before any score was printed. A word that could be
 * several answers is a set of them; 'unknown' is no finding.
 */
import { heards } from "#core/listening/heard.ts";

export interface FieldCase {
  readonly id: string;
  readonly heard: Readonly<Record<string, string>>;
  readonly heard_inferred: readonly string[];
  readonly inferred_basis: string;
  readonly centre_detail?: string;
  readonly cause_class: string;
  readonly source: string;
}

const ending = (...places: string[]): readonly string[] =>
  heards.filter((heard) => places.some((place) => heard.endsWith(place)));
const faint: readonly string[] = heards.filter((heard) => heard.startsWith("faint"));

/** One side alone. */
const sides: Readonly<Record<string, readonly string[]>> = {
  left: ["left ear"],
  right: ["right ear"],
  both: ending("middle", "off to the left", "off to the right", "all round"),
  none: ["nothing"],
  weak: faint,
};

/** The same on both sides, by what the report says of the middle and of the level. */
function centre({ heard, centre_detail }: FieldCase): readonly string[] | undefined {
  const wide = ending("all round");
  const gone = ["nothing", ...faint];
  switch (heard.centre_mono_signal) {
    case "centred":
      return heard.level === "imbalanced" ? ["off to the left", "off to the right"] : ["middle"];
    case "one ear":
      return ending("left ear", "right ear");
    case "none":
      return gone;
    case "hollow-or-vanishes":
      if (centre_detail === "present but diffuse") return wide;
      return centre_detail === "gone or nearly gone" ? gone : [...wide, ...gone];
    default:
      return undefined;
  }
}

/** The answers a case gives to each check, for those it says something about. */
export function answersOf(
  one: FieldCase,
): Readonly<Record<string, readonly (readonly string[])[]>> {
  const [left, right] = [
    sides[one.heard.left_only_signal ?? ""],
    sides[one.heard.right_only_signal ?? ""],
  ];
  const middle = centre(one);
  return {
    ...(left ? { left: [left] } : {}),
    ...(right ? { right: [right] } : {}),
    ...(middle ? { pair: [middle, heards] } : {}),
  };
}
