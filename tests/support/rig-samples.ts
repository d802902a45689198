import type { Refusal } from "#core/drawing/edited.ts";
import type { Plug, Socket } from "#core/parts/part.ts";
import type { RigTrouble } from "#core/rig/trouble.ts";
import type { LevelChange } from "#core/session/compared.ts";
import type { Lost } from "#core/session/mended.ts";

/** Every kind of plug, a jack in both of its sizes. */
const plugs: Readonly<Record<Plug["kind"], readonly Plug["size"][]>> = {
  TS: [undefined, "3.5 mm"],
  TRS: ["6.35 mm", "3.5 mm"],
  TRRS: ["3.5 mm"],
  XLR: [undefined],
  RCA: [undefined],
  link: [undefined],
};
const sockets: Readonly<Record<Socket["kind"], readonly Socket["size"][]>> = {
  ...plugs,
  "TRS with a deep spring": ["3.5 mm"],
  "four-pole, common on ring 2": ["3.5 mm"],
  "four-pole, common on sleeve": ["3.5 mm"],
};
const eachOf = <Kind extends string, Size>(kinds: Readonly<Record<Kind, readonly Size[]>>) =>
  (Object.keys(kinds) as Kind[]).flatMap((kind) =>
    kinds[kind].map((size) => (size === undefined ? { kind } : { kind, size })),
  );

/** What keeps a drawing from being a rig; the words look no further than at its name. */
const troubles: Readonly<Record<RigTrouble["trouble"], true>> = {
  "name taken": true,
  "a person": true,
  setting: true,
  "settings together": true,
  "no such part": true,
  "no such plug": true,
  "no such socket": true,
  "does not fit": true,
  "used twice": true,
  "nobody listens": true,
  "worn is no part": true,
  "not to be worn": true,
  "worn twice": true,
  "hangs from nothing": true,
  "goes round": true,
  "not one feed": true,
};

type Why = Refusal["refused"];
type Facts<One extends Why> = Omit<Extract<Refusal, { readonly refused: One }>, "refused">;
type Told = Omit<Facts<"cannot be">, "trouble"> & { readonly trouble: Pick<RigTrouble, "trouble"> };

const name = "sample name";
const refusals: {
  readonly [One in Why]: readonly (One extends "cannot be" ? Told : Facts<One>)[];
} = {
  "no name": [{}],
  "marks in the name": [{}],
  "name taken": [{ name }],
  "does not fit": eachOf(plugs).flatMap((plug) =>
    eachOf(sockets).map((socket) => ({ part: "sample part", plug, socket })),
  ),
  "nothing free": [{ part: "sample part" }],
  "nothing joins": [{ kind: "headphone amplifier" }],
  "last position": [{}],
  "socket in use": [
    { by: "sample part", socket: "sample socket" },
    { by: "sample part", socket: "output 2" },
  ],
  "cannot be": (Object.keys(troubles) as RigTrouble["trouble"][]).map((trouble) => ({
    trouble: { trouble },
    name,
  })),
};

const changes: { readonly [One in LevelChange["change"]]: readonly LevelChange[] } = {
  ear: [
    { change: "ear", ear: "left", by: -6 },
    { change: "ear", ear: "right", by: 1.5 },
  ],
  balance: [
    { change: "balance", ear: "right", by: -2.5 },
    { change: "balance", ear: "left", by: 3 },
  ],
  played: [
    { change: "played", by: -12 },
    { change: "played", by: 4.5 },
  ],
};

const losses: Readonly<Record<Lost["why"], true>> = {
  "not understood": true,
  "an id that is taken": true,
  "takes back what is not there": true,
};

const mark = ["sample plug", "near left", "output 2", "3"];

/** What the records of the rig and of the kept sessions are called with. */
export const rigCalls: Readonly<Record<string, readonly (readonly unknown[])[]>> = {
  "rig.plug": eachOf(plugs).map((one) => [one]),
  "rig.refused": Object.entries(refusals).flatMap(([refused, some]) =>
    some.map((facts) => [{ refused, ...facts }]),
  ),
  "rig.end": mark.map((one) => ["sample what", one, "sample part"]),
  "rig.at": mark.map((one) => [one, "sample part"]),
  "rig.before": [
    ...mark.map((one) => [one, "sample part", "sample socket"]),
    ["near", "sample part", ""],
    [undefined, "sample part", "sample socket"],
    [undefined, "sample part", ""],
  ],
  "sessions.kept": [[0], [1], [7]],
  "sessions.noted": [
    [0, 0, 0, 8],
    [1, 0, 0, 1],
    [0, 2, 0, 8],
    [5, 1, 2, 8],
  ],
  "sessions.changed": [[0], [1], [3]],
  "sessions.change": Object.values(changes).flatMap((some) => some.map((one) => [one])),
  "sessions.lost": Object.keys(losses).flatMap((why) => [
    [{ place: 3, why }],
    [{ place: 3, entry: "sample entry", why }],
  ]),
};
