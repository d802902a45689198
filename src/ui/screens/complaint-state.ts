import type { Complaint } from "#core/checks/complaints.ts";
import type { Rig } from "#core/rig/rig.ts";
import { type StandInFeed, standIn } from "#core/rig/stand-ins.ts";
import type { Said } from "#core/session/log.ts";
import { type Step, steps, type Told } from "./complaint-told.ts";

/** What a step of a complaint needs to draw itself, and what a press tells. */
export interface AtComplaint {
  readonly told: Told;
  /** The rig the log has drawn, where it is one of real gear. */
  readonly inHand: Rig | undefined;
  readonly tell: (more: Told) => void;
}

/** How many listen, as far as it was told. */
const listenersOf = ({ feed, listeners }: Told, inHand: Rig | undefined): number =>
  (feed === "rig in hand" ? inHand?.positions.length : listeners) ?? 1;

/** Whether a question has anything to ask, after the answers before it. */
function isAsked(step: Step, told: Told, inHand: Rig | undefined): boolean {
  const drawn = told.feed === "rig in hand";
  if (step === "worn" || step === "listeners") return !drawn;
  const several = listenersOf(told, inHand) > 1;
  if (step === "seat") return drawn && several;
  return step === "others" ? several : true;
}

/** The next thing to ask; nothing once all is told. */
export const stepAfter = (told: Told, inHand: Rig | undefined): Step | undefined =>
  steps.find((step) => told[step] === undefined && isAsked(step, told, inHand));

/** What goes into the log once all is told, the complaint last, and where to go on. */
export interface Outcome {
  /** Another rig than the one in hand; a session begins with it. */
  readonly rig?: Rig;
  readonly position: string;
  readonly entries: readonly Said[];
}

/** Throws where something was not told yet, which is a mistake of ours. */
export function outcomeOf(told: Told, inHand: Rig | undefined): Outcome {
  const step = stepAfter(told, inHand);
  const { said = [], feed = "don't know" } = told;
  if (step !== undefined) throw new Error(`${step} was not told`);
  const rig = feed === "rig in hand" ? inHand : standInFor(told, feed);
  const position = told.seat ?? rig?.positions[0]?.id;
  if (rig === undefined || position === undefined) throw new Error("nobody sits in this rig");
  const others = rig.positions.map(({ id }) => id).filter((id) => id !== position);
  const theirs = told.others === "all" ? said : (["no complaint"] as const);
  const all = told.others === "don't know" || told.others === undefined ? [] : others;
  return {
    ...(feed === "rig in hand" ? {} : { rig }),
    position,
    entries: [...all.map((id) => complained(id, theirs)), complained(position, said)],
  };
}

const standInFor = ({ worn, listeners = 1 }: Told, feed: StandInFeed): Rig =>
  standIn({ feed, listeners, ...(worn === undefined || worn === "don't know" ? {} : { worn }) });

const complained = (position: string, said: readonly Complaint[]): Said => ({
  entry: "finding",
  finding: { asked: { check: "complaint", position }, results: [said] },
});

const oneSided: readonly Complaint[] = [
  "only the left ear works",
  "only the right ear works",
  "left side quiet",
  "right side quiet",
];

/** Whether it may be one ear or one side of the gear, which turning the headphones round tells. */
export const isOneSided = ({ said = [] }: Told): boolean =>
  said.some((one) => oneSided.includes(one));
