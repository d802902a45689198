import { type Circuit, open } from "#core/circuit/circuit.ts";
import type { Ohms } from "#core/units/units.ts";
import { resistor, sleeve } from "./boxes.ts";
import type { FaultName } from "./fault-names.ts";
import { kindOf } from "./kind.ts";
import type { Fault, Normal, Socket } from "./part.ts";
import { point } from "./part.ts";
import type { Contact } from "./plugs.ts";
import { wireFault } from "./wire-faults.ts";

/** From a jack at the front to the one behind it, and a normal's contact. Common practice, no source. */
const strip: Ohms = 0.05;

const rows = ["above", "below"] as const;
const legs = ["tip", "ring"] as const;

/** What breaks a pair's normals: a plug in either front socket, a plug in the lower one alone, or there are none. */
const normallings = ["half-normalled", "normalled", "not normalled"] as const;
type Normalling = (typeof normallings)[number];

const behind = (row: string, pair: number): string => `behind ${row} ${pair}`;
const front = (row: string, pair: number): string => `${row} ${pair}`;

/** The other one of a left and a right pair: 1 with 2, 3 with 4, as patchbays are filled (common practice, no source). */
const mate = (pair: number): number => (pair % 2 === 1 ? pair + 1 : pair - 1);

/** Into the other row, or into the next socket of its own. Odds: common practice, no source. */
function mistakes(name: Named, row: string, pair: number, pairs: number): Record<string, number> {
  const beside = [pair - 1, pair + 1].filter((one) => one >= 1 && one <= pairs);
  const across = rows.filter((one) => one !== row);
  return Object.fromEntries([
    ...across.map((one) => [name(one, pair), 20] as const),
    ...beside.map((one) => [name(row, one), 15] as const),
  ]);
}

type Named = (row: string, pair: number) => string;

const socketOf = (name: Named, row: string, pair: number, pairs: number): Socket => ({
  name: name(row, pair),
  kind: "TRS",
  side: "through",
  mistakenFor: mistakes(name, row, pair, pairs),
  ...(mate(pair) <= pairs ? { partner: name(row, mate(pair)) } : {}),
  circuit: [sleeve(name(row, pair))],
});

/** Straight from behind to the front, and what holds the springs in their places. */
const strips = (row: string, pair: number): Circuit =>
  legs.flatMap((leg) => [
    resistor(
      `${front(row, pair)} ${leg}`,
      point(behind(row, pair), leg),
      point(front(row, pair), leg),
      strip,
    ),
    resistor(
      `${front(row, pair)} ${leg} insulation`,
      point(front(row, pair), leg),
      point(front(row, pair), "sleeve"),
      open,
    ),
  ]);

const normalName = (pair: number, leg: Contact): string => `normal ${pair} ${leg}`;

function normalOf(pair: number, by: Normalling): readonly Normal[] {
  if (by === "not normalled") return [];
  const [above, below] = [front("above", pair), front("below", pair)];
  return [
    {
      whileEmpty: by === "normalled" ? [above, below] : [below],
      circuit: legs.map((leg) =>
        resistor(normalName(pair, leg), point(above, leg), point(below, leg), strip),
      ),
    },
  ];
}

const oxide: readonly (readonly [FaultName, Contact, Ohms])[] = [
  ["normal's tip open", "tip", open],
  ["normal's ring open", "ring", open],
  ["normal's tip of 10 kilohms", "tip", 10_000],
  ["normal's ring of 10 kilohms", "ring", 10_000],
];

/** Oxidised normals: plugging in and out five times cures them, 10 s (handbook, sections 5 and 8). Odds: common practice, no source. */
const oxidised = (pair: number, by: Normalling): readonly Fault[] =>
  by === "not normalled"
    ? []
    : oxide.map(([name, leg, ohms]) => ({
        name,
        at: front("below", pair),
        edits: [{ edit: "ohms", element: normalName(pair, leg), ohms }],
        weight: 8,
        slot: normalName(pair, leg),
        seen: false,
        repair: 10,
      }));

/** A joint that came off behind, and legs crossed there: what is soldered once and for good. */
function behindFaults(row: string, pair: number): readonly Fault[] {
  const at = behind(row, pair);
  const element = (leg: Contact) => `${front(row, pair)} ${leg}`;
  return [
    ...(["tip", "ring"] as const).map((leg) =>
      wireFault(`${leg} open`, at, `${at} ${leg}`, 2, [
        { edit: "ohms", element: element(leg), ohms: open },
      ]),
    ),
    wireFault("tip and ring exchanged", at, `${at} order`, 2, [
      { edit: "rewire", element: element("tip"), a: point(at, "ring") },
      { edit: "rewire", element: element("ring"), a: point(at, "tip") },
    ]),
  ];
}

/**
 * A patchbay of balanced jacks: outputs come in behind the row above, inputs hang behind the row below, and each front socket is joined to the
 * one behind it. All sleeves are on its metal. `microphones` may carry phantom power.
 */
export const patchbay = kindOf(
  "adapter",
  {
    pairs: { unit: "sets", typical: 2, least: 1, most: 12 },
    normalling: { choices: normallings, typical: "half-normalled" },
    carries: { choices: ["line", "microphones"], typical: "line" },
  },
  ({ pairs, normalling, carries }) => {
    const numbers = Array.from({ length: pairs }, (_, index) => index + 1);
    const each = numbers.flatMap((pair) => rows.map((row) => ({ pair, row })));
    const harms = carries === "line" ? {} : ({ harms: "phantom power" } as const);
    return {
      plugs: [],
      sockets: each.flatMap(({ row, pair }) =>
        [front, behind].map((name) => ({ ...socketOf(name, row, pair, pairs), ...harms })),
      ),
      body: each.flatMap(({ row, pair }) => strips(row, pair)),
      normals: numbers.flatMap((pair) => normalOf(pair, normalling)),
      takes: [],
      controls: {},
      faults: [
        ...numbers.flatMap((pair) => oxidised(pair, normalling)),
        ...each.flatMap(({ row, pair }) => behindFaults(row, pair)),
      ],
      look: 15,
    };
  },
);
