import type { Cell } from "#core/report/csv.ts";
import type { Sheet } from "#core/report/session-sheet.ts";
import type { SheetSeat } from "#core/report/sheet-seats.ts";
import { knobsSaid, noiseNamed, noiseSaid, sinceSaid } from "./sheet-gear-words.ts";
import {
  detailsSaid,
  endSaid,
  faultSaid,
  notTestedSaid,
  partSaid,
  type SheetSayer,
  seatsSaid,
  sidesOf,
  stateSaid,
} from "./sheet-words.ts";

/** One row, by the names of the columns. */
type Row = Readonly<Partial<Record<keyof SheetSayer["words"]["sheet"]["columns"], Cell>>>;

/** The sheet as one table: what a row is about stands in its first column. Numbers are numbers, times are UTC as ISO 8601 has them. */
export function rowsOf(sheet: Sheet, sayer: SheetSayer): readonly (readonly Cell[])[] {
  const { columns } = sayer.words.sheet;
  const order = Object.keys(columns) as (keyof typeof columns)[];
  const all = [aboutIt, seatRows, foundRows, noiseRows, notTestedRows].flatMap((rows) =>
    rows(sheet, sayer),
  );
  return [
    order.map((name) => columns[name]),
    ...all.map((row: Row) => order.map((name) => row[name])),
  ];
}

const utc = (at: number): string => new Date(at).toISOString();

const hundredth = (probability: number): number => Math.round(probability * 100);

const tenth = (value: number | undefined): number | undefined =>
  value === undefined ? undefined : Math.round(value * 10) / 10;

const aboutIt = (
  { name, who, begun, ended, rig }: Sheet,
  { words }: SheetSayer,
): readonly Row[] => [
  { kind: words.sheet.kinds.session, name, detail: who, time: utc(begun) },
  { kind: words.sheet.kinds.session, name: rig.name, time: utc(ended) },
];

const seatRows = ({ seats }: Sheet, sayer: SheetSayer): readonly Row[] =>
  seats.map((seat) => ({
    kind: sayer.words.sheet.kinds.position,
    name: seat.name,
    worn: partSaid(sayer, seat.wears),
    result: stateSaid(sayer, seat),
    detail: detailsSaid(sayer, seat),
    sure: seat.wrong && hundredth(seat.wrong.probability),
    level: tenth(seat.level),
    balance: seat.balance === "never" ? undefined : tenth(seat.balance),
    ...measuredCells(seat),
    ...levelCells(sayer, seat),
  }));

function measuredCells({ measured }: SheetSeat): Row {
  if (measured === undefined) return {};
  const [left, right] = sidesOf(measured).map((one) =>
    Number.isFinite(one) ? tenth(one) : undefined,
  );
  return { left, right };
}

const foundRows = ({ found }: Sheet, sayer: SheetSayer): readonly Row[] =>
  found.map((one) => ({
    kind: sayer.words.sheet.kinds.fault,
    name: seatsSaid(sayer, one.positions),
    result: sayer.words.sheet.ends[one.end],
    detail: faultSaid(sayer, one.fault),
    sure: hundredth(one.probability),
    time: utc(one.mended?.at ?? one.at),
    mended: one.mended && endSaid(sayer, one),
  }));

function levelCells(sayer: SheetSayer, { knobs, ear }: SheetSeat): Row {
  const said = knobs.length === 0 ? undefined : knobsSaid(sayer, knobs);
  if (ear === undefined) return { knobs: said };
  return { knobs: said, ear: tenth(ear.value), earLow: tenth(ear.low), earHigh: tenth(ear.high) };
}

const noiseRows = ({ hunted }: Sheet, sayer: SheetSayer): readonly Row[] =>
  hunted.map((one) => ({
    kind: sayer.words.sheet.kinds.noise,
    name: seatsSaid(sayer, [one.position]),
    result: noiseNamed(sayer, one),
    detail: [noiseSaid(sayer, one), sinceSaid(sayer, one)].filter(Boolean).join("; "),
    sure: one.from && hundredth(one.from.probability),
    time: utc(one.at),
  }));

/** On paper the faults that cannot be heard are counted; here each has its row. */
function notTestedRows(sheet: Sheet, sayer: SheetSayer): readonly Row[] {
  const kind = sayer.words.sheet.kinds.notTested;
  const some = notTestedSaid(sayer, { ...sheet, unheard: [] });
  const unheard = sheet.unheard.flatMap(({ part, faults }) =>
    [...new Set(faults.map((fault) => faultSaid(sayer, fault)))].map((detail) => ({
      kind,
      name: partSaid(sayer, part),
      detail,
    })),
  );
  return [...some.map((detail) => ({ kind, detail })), ...unheard];
}
