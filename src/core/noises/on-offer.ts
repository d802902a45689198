import type { Noise, Trial } from "#core/checks/noise.ts";
import { type Box, isCabled, sharedUpTo, type Way } from "./way.ts";

/** Every trial that may tell something of a noise at a position, in the order of the way. */
export function trialsFor(way: Way, noise: Noise): readonly Trial[] {
  return [...own[noise](way), ...elsewhere(way), { try: "recording" }];
}

const own: Readonly<Record<Noise, (way: Way) => readonly Trial[]>> = {
  hiss: (way) => [
    { try: "programme stopped" },
    ...knobsDown(way),
    ...feedsOut(way),
    ...nearer(way),
  ],
  hum: (way) => [
    { try: "programme stopped" },
    ...knobsDown(way),
    ...feedsOut(way),
    ...batteries(way),
    ...outlet(way),
    ...otherLeads(way),
    ...atLeads(way, "lead bent", false),
    ...atLeads(way, "plugs turned", false),
  ],
  crackle: (way) => [
    ...way.boxes.flatMap((box): readonly Trial[] =>
      hasTrack(box) ? [{ try: "knob to and fro", part: box.part, socket: box.socket }] : [],
    ),
    ...knobsDown(way),
    ...atLeads(way, "lead bent", true),
    ...atLeads(way, "plugs turned", true),
    ...nearer(way),
    ...others(way),
  ],
  distortion: (way) => [
    ...knobsDown(way),
    ...(way.boxes.length > 1 ? [{ try: "quieter source" } as const] : []),
    ...others(way),
  ],
};

const hasTrack = ({ knob, soft, link }: Box): boolean => knob && !soft && !link;

const knobsDown = ({ boxes }: Way): readonly Trial[] =>
  boxes.flatMap(({ part, socket, knob }) => (knob ? [{ try: "knob down", part, socket }] : []));

const feedsOut = (way: Way): readonly Trial[] =>
  way.boxes.flatMap(({ part }, at) => (isCabled(way, at) ? [{ try: "feed out", part }] : []));

/** What has a battery of its own, and hangs on the mains. */
const portable: readonly string[] = ["laptop", "phone"];

const batteries = ({ rig, boxes }: Way): readonly Trial[] =>
  boxes.flatMap(({ part, supply }) =>
    supply !== "battery" && portable.includes(rig.part(part).kind)
      ? [{ try: "on battery", part }]
      : [],
  );

const outlet = ({ boxes }: Way): readonly Trial[] =>
  boxes.filter(({ supply }) => supply !== "battery").length > 1 ? [{ try: "one outlet" }] : [];

/** Leads that carry no sound here, and may close a loop: of any box that hangs on the mains. */
const otherLeads = ({ boxes }: Way): readonly Trial[] =>
  boxes.some(({ supply }) => supply !== "battery") ? [{ try: "other leads out" }] : [];

/** A hand at every lead between boxes; of what crackles at those to the ears as well. */
function atLeads(way: Way, name: "lead bent" | "plugs turned", toEars: boolean): readonly Trial[] {
  const boxes = toEars ? way.boxes : way.boxes.slice(0, -1);
  const cord = toEars && way.boxes.at(-1)?.link !== true;
  const leads = boxes.flatMap(({ wires }) => wires);
  return [...leads, ...(cord ? [way.worn] : [])].map((part) => ({ try: name, part }));
}

const nearer = ({ boxes }: Way): readonly Trial[] =>
  boxes.flatMap(({ part, link }) => (link ? [{ try: "nearer the sender", part }] : []));

/** What goes into an ear is lent to nobody. */
const others = ({ rig, worn }: Way): readonly Trial[] =>
  rig.part(worn).oneListener ? [] : [{ try: "other headphones" }];

/** One other position for each stretch of the way that some share and some do not: the first of them. */
function elsewhere(way: Way): readonly Trial[] {
  const asked = new Map<number, string>();
  for (const { id } of way.rig.positions) {
    if (id === way.position) continue;
    const upTo = sharedUpTo(way, id);
    if (!asked.has(upTo)) asked.set(upTo, id);
  }
  return [...asked.values()].map((position) => ({ try: "elsewhere", position }));
}
