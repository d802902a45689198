import type { Decibels } from "#core/units/units.ts";
import { type Room, rooms, standsOut } from "./audible.ts";

/** How loud a programme is, in words, each from so many decibels of sound pressure on. Common practice, no source. */
const loudnesses = [
  ["nothing", Number.NEGATIVE_INFINITY],
  ["hardly there", 30],
  ["soft", 52],
  ["comfortable", 66],
  ["loud", 83],
  ["too loud for long", 88],
  ["far too loud", 100],
] as const satisfies readonly (readonly [string, Decibels])[];
export type Loudness = (typeof loudnesses)[number][0];

/** What somebody would call a programme of so much at the ear. */
export const loudnessOf = (level: Decibels): Loudness =>
  loudnesses.findLast(([, from]) => level >= from)?.[0] ?? "nothing";

/** Rooms from the most silent on. */
export const roomNames = Object.keys(rooms) as readonly Room[];

/** The loudest room in which hiss of so much at the ear is heard while nothing else plays; nothing where it is heard in none. */
export const heardIn = (hiss: Decibels): Room | undefined =>
  roomNames.findLast((room) => standsOut(hiss, room) > 0);

/** From so much at the ear on hiss is heard in a room. */
export const heardFrom = (room: Room): Decibels => -standsOut(0, room);

/** How loud somebody wants a programme at the ear: mean level, decibels of sound pressure. Common practice, no source. */
export const wantedLevels = {
  "quiet talk": 70,
  music: 80,
  "loud stage": 88,
} as const satisfies Readonly<Record<string, Decibels>>;
export type Wanted = keyof typeof wantedLevels;
export const wantedNames = Object.keys(wantedLevels) as readonly Wanted[];
