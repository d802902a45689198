import {
  type Answered,
  type Finding,
  isAnswered,
  isNoticed,
  isReading,
  type Noticed,
  type Results,
} from "#core/checks/finding.ts";
import type { Trial } from "#core/checks/noise.ts";
import type { Move } from "#core/rig/moves.ts";
import { clientId, listenerOf, operatorId } from "#core/rig/rig.ts";
import type { Names } from "#core/rig/same-parts.ts";

/** What names a place: a part, a socket as 'part, socket', a person, or positions with commas between. */
function placeIn(place: string, { part, position }: Names): string | undefined {
  const whole = part(place) ?? position(place);
  if (whole !== undefined) return whole;
  const seat = /^(.*): listener$/.exec(place)?.[1];
  if (seat !== undefined) return position(seat) && listenerOf(seat);
  const [head = "", ...rest] = place.split(", ");
  const owner = part(head);
  if (owner !== undefined) return [owner, ...rest].join(", ");
  const seats = place.split(", ");
  if (seats.every((one) => position(one) !== undefined)) return place;
  return place === operatorId || place === clientId ? place : undefined;
}

/** A finding in the names of another drawing; nothing where what it speaks of is there no more. */
export function findingIn(finding: Finding, names: Names): Finding | undefined {
  if (isAnswered(finding)) return answeredIn(finding, names);
  if (isNoticed(finding)) return noticedIn(finding, names);
  if (!isReading(finding))
    return names.position(finding.asked.position) === undefined ? undefined : finding;
  const part = names.part(finding.asked.part);
  return part === undefined ? undefined : { ...finding, asked: { ...finding.asked, part } };
}

function answeredIn(finding: Answered, names: Names): Finding | undefined {
  const { asked, results } = finding;
  switch (asked.check) {
    case "look": {
      const place = placeIn(asked.place, names);
      if (place === undefined) return undefined;
      return { ...finding, asked: { ...asked, place }, results: sightsIn(results, names) };
    }
    case "twist": {
      const part = names.part(asked.part);
      return part === undefined ? undefined : { ...finding, asked: { ...asked, part } };
    }
    default:
      return names.position(asked.position) === undefined ? undefined : finding;
  }
}

/** What was tried is in the names of the rig as well. */
function noticedIn(finding: Noticed, names: Names): Noticed | undefined {
  const { asked } = finding;
  if (names.position(asked.position) === undefined) return undefined;
  const trial = trialIn(asked.trial, names);
  return trial && { ...finding, asked: { ...asked, trial } };
}

function trialIn(trial: Trial, names: Names): Trial | undefined {
  if (trial.try === "elsewhere")
    return names.position(trial.position) === undefined ? undefined : trial;
  if (!("part" in trial)) return trial;
  const part = names.part(trial.part);
  return part === undefined ? undefined : { ...trial, part };
}

/** Sights begin with the part that shows them. */
const sightsIn = (results: Results, { part }: Names): Results =>
  results.map((given) =>
    given.map((sight) => {
      const [owner = "", ...rest] = sight.split(" / ");
      return rest.length === 0 ? sight : [part(owner) ?? owner, ...rest].join(" / ");
    }),
  );

/** A move in the names of another drawing; nothing where what it is about is there no more. */
export function moveIn(move: Move, names: Names): Move | undefined {
  switch (move.move) {
    case "set right":
    case "replaced": {
      const place = placeIn(move.place, names);
      return place === undefined ? undefined : { ...move, place };
    }
    case "exchanged":
      return exchangedIn(move, names);
    case "turned round":
      return names.position(move.position) === undefined ? undefined : move;
    default:
      return movedIn(move, names);
  }
}

type Exchanged = Extract<Move, { readonly move: "exchanged" }>;

function exchangedIn(move: Exchanged, names: Names): Move | undefined {
  const [one, other] = move.parts.map(names.part);
  return one === undefined || other === undefined ? undefined : { ...move, parts: [one, other] };
}

function movedIn(move: Extract<Move, { readonly part: string }>, names: Names): Move | undefined {
  const part = names.part(move.part);
  if (part === undefined) return undefined;
  if (move.move !== "moved") return { ...move, part };
  const into = names.part(move.into);
  return into === undefined ? undefined : { ...move, part, into };
}
