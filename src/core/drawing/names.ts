import { clientId, operatorId, type Position, type Rig, type WantedFeed } from "#core/rig/rig.ts";
import { firstName } from "#core/rig/same-parts.ts";
import { checked, type Edited, refuse } from "./edited.ts";

/** A name that nothing in a rig has or ever had: the word by itself, or with the first number that is free. Where a word may be broken is no part of it. */
export function freshName(rig: Rig, said: string): string {
  const word = said.replaceAll("\u00AD", "");
  const taken = namesIn(rig);
  if (!taken.has(word)) return word;
  for (let number = 2; ; number++) {
    const name = `${word} ${number}`;
    if (!taken.has(name)) return name;
  }
}

/** The next of several: 'headphones 4' becomes the first of 'headphones 5', 'headphones 6' that is free. */
export const nextName = (rig: Rig, name: string): string => {
  const [, word = name] = /^(.*?)(?: \d+)?$/.exec(name) ?? [];
  const taken = namesIn(rig);
  for (let number = Number(/ (\d+)$/.exec(name)?.[1] ?? 1) + 1; ; number++)
    if (!taken.has(`${word} ${number}`)) return `${word} ${number}`;
};

const namesIn = ({ parts, positions }: Rig): ReadonlySet<string> =>
  new Set([
    operatorId,
    clientId,
    ...parts.flatMap((part) => [part.id, firstName(part)]),
    ...positions.map(({ id }) => id),
  ]);

/** In sentences, places and sights these part one name from the next. */
const marks = /, |: | \/ |^known good /;

/** A part by another name, wherever it is spoken of. */
export function partNamed(rig: Rig, id: string, said: string): Edited {
  const name = said.trim();
  if (name === id) return { rig };
  if (name === "") return refuse({ refused: "no name" });
  if (marks.test(name)) return refuse({ refused: "marks in the name" });
  const first = rig.parts.find((part) => part.id === id)?.first ?? id;
  const others = { ...rig, parts: rig.parts.filter((part) => part.id !== id) };
  if (namesIn(others).has(name)) return refuse({ refused: "name taken", name });
  const now = (one: string): string => (one === id ? name : one);
  return checked(
    {
      ...rig,
      parts: rig.parts.map((part) => (part.id === id ? { ...part, id: name, first } : part)),
      plugged: rig.plugged.map((end) => ({ ...end, part: now(end.part), into: now(end.into) })),
      positions: rig.positions.map((seat) => ({ ...seat, wears: now(seat.wears) })),
    },
    rig,
  );
}

/** Another name on the tape of a position. */
export function positionNamed(rig: Rig, id: string, said: string): Edited {
  const name = said.trim();
  if (name === "") return refuse({ refused: "no name" });
  const own = rig.positions.find((one) => one.id === id);
  if (own === undefined || own.name === name) return { rig };
  if (rig.positions.some((one) => one.name === name))
    return refuse({ refused: "name taken", name });
  const positions = rig.positions.map((one) => (one.id === id ? { ...one, name } : one));
  return { rig: { ...rig, positions } };
}

/** Something else is wanted at a position; left out, stereo. */
export function positionWanting(rig: Rig, id: string, wants?: WantedFeed): Edited {
  const own = rig.positions.find((one) => one.id === id);
  if (own === undefined || own.wants === wants) return { rig };
  const { wants: _, ...rest } = own;
  const next: Position = wants === undefined ? rest : { ...rest, wants };
  return { rig: { ...rig, positions: rig.positions.map((one) => (one === own ? next : one)) } };
}

/** A position further up or down in the order in which they are heard. */
export function positionMoved(rig: Rig, id: string, by: -1 | 1): Edited {
  const at = rig.positions.findIndex((one) => one.id === id);
  const [one, other] = [rig.positions[at], rig.positions[at + by]];
  if (one === undefined || other === undefined) return { rig };
  const positions = rig.positions.map((seat) => {
    if (seat === one) return other;
    return seat === other ? one : seat;
  });
  return { rig: { ...rig, positions } };
}

/** A position for what is worn, by the next number, and behind it what stands behind another's; what is wanted there is wanted here. */
export function nextPosition(rig: Rig, wears: string, like?: Position): Position {
  const id = nextName(rig, `position ${rig.positions.length}`);
  const behind = like && /^\d+ (.*)$/.exec(like.name)?.[1];
  const numbers = new Set(rig.positions.map(({ name }) => Number.parseInt(name, 10)));
  let number = rig.positions.length + 1;
  while (numbers.has(number)) number++;
  const name = behind === undefined ? `${number}` : `${number} ${behind}`;
  return { id, name, wears, ...(like?.wants === undefined ? {} : { wants: like.wants }) };
}
