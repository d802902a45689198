import type { MeasuredGains } from "#core/checks/finding.ts";
import { isUnlisted } from "#core/diagnosis/fault-sets.ts";
import { neverTestedAt } from "#core/report/never-tested.ts";
import { capital, inHundred } from "#core/report/phrases.ts";
import type { Sheet } from "#core/report/session-sheet.ts";
import type { Found } from "#core/report/sheet-found.ts";
import type { SheetSeat, Wrong } from "#core/report/sheet-seats.ts";
import { standInFor } from "#core/rig/arranged.ts";
import { type BuiltRig, build } from "#core/rig/rig.ts";
import type { RigFault } from "#core/rig/rig-faults.ts";
import { toDecibels } from "#core/units/decibels.ts";
import type { Decibels } from "#core/units/units.ts";
import { faultText } from "#core/words/fault-text.ts";
import { movedText } from "#core/words/move-text.ts";
import type { Words } from "#ui/words/use-words.ts";

/** What a sheet says, in one language: for paper and for a file alike. */
export interface SheetSayer {
  readonly words: Words;
  readonly rig: BuiltRig;
}

export const sayerOf = (sheet: Sheet, words: Words): SheetSayer => ({
  words,
  rig: build(sheet.rig),
});

/** A fault as a sentence without its full stop; what is not on the list with the stretch it is in. */
export function faultSaid({ words: { language }, rig }: SheetSayer, fault: RigFault): string {
  const text = faultText(language, rig, fault);
  if (!isUnlisted(fault) || rig.positions.length === 1) return text;
  const seat = rig.positions.find(({ id }) => id === fault.part);
  const { inShared, inOwn } = language.report;
  return seat === undefined ? inShared(text) : inOwn(text, seat.name);
}

/** A part by its name alone; of one that stands in for another, that one's, and that it is known to be good. */
export function partSaid({ words }: SheetSayer, id: string): string {
  const { alone } = words.language.names;
  const good = standInFor("");
  return id.startsWith(good) ? words.verdict.good(alone(id.slice(good.length))) : alone(id);
}

/** How a position stands, in a word or two. */
export const stateSaid = ({ words }: SheetSayer, { state }: SheetSeat): string =>
  capital(words.sheet.states[state]);

/** What is wrong at a position, and how sure that is. */
function wrongSaid(sayer: SheetSayer, { state, wrong }: SheetSeat): string | undefined {
  if (wrong === undefined) return undefined;
  const { sheet } = sayer.words;
  const fault = faultSaid(sayer, wrong.fault);
  if (state === "as ordered") return fault;
  const said = state === "unsure" ? sheet.unsure(fault) : fault;
  return `${said} (${surelySaid(sayer, wrong)})`;
}

/** All that is said of a position beside its state: what is wanted there, what is wrong, what was found of its two sides. */
export const detailsSaid = (sayer: SheetSayer, seat: SheetSeat): string =>
  [wantsSaid(sayer, seat), wrongSaid(sayer, seat), earsSaid(sayer, seat)]
    .filter(Boolean)
    .join("; ");

const wantsSaid = ({ words: { round, sheet } }: SheetSayer, { wants }: SheetSeat) =>
  wants && sheet.wanted(round.feeds[wants]);

/** How sure, and how many are alike. */
export function surelySaid(
  { words: { sheet, language } }: SheetSayer,
  { alike, probability }: Pick<Wrong, "alike" | "probability">,
): string {
  const sure = inHundred(language, probability);
  return alike === 0 ? sure : `${sure}, ${sheet.alike(alike)}`;
}

/** What the ears, or an instrument, found of the two sides. */
export function earsSaid(
  { words: { figures, sheet } }: SheetSayer,
  { balance, measured }: SheetSeat,
): string {
  const said = [
    ...(balance === undefined ? [] : [balanceSaid(sheet, figures, balance)]),
    ...(measured === undefined
      ? []
      : [
          sheet.measured(
            ...(sidesOf(measured).map((one) => soundsOr(figures, one)) as [string, string]),
          ),
        ]),
  ];
  return said.join("; ");
}

function balanceSaid(
  sheet: Words["sheet"],
  { decibels }: Words["figures"],
  balance: Exclude<SheetSeat["balance"], undefined>,
): string {
  if (balance === "never") return sheet.neverCentred;
  if (balance === 0) return sheet.centred;
  return balance > 0 ? sheet.rightUp(decibels(balance)) : sheet.leftUp(decibels(-balance));
}

/** Each ear's own side, against a sound chain. */
export const sidesOf = ([ll, , , rr]: MeasuredGains): readonly [Decibels, Decibels] => [
  toDecibels(Math.hypot(...ll)),
  toDecibels(Math.hypot(...rr)),
];

/** Under this it is nothing, however the noise is called. */
const nothing: Decibels = -60;

const soundsOr = ({ decibels }: Words["figures"], level: Decibels): string =>
  level < nothing ? `< ${decibels(nothing)}` : decibels(level);

/** What became of a fault. */
export function endSaid(sayer: SheetSayer, { end, mended }: Found): string {
  const { sheet, language } = sayer.words;
  const moves = (mended?.moves ?? []).map((move) => movedText(language, sayer.rig, move));
  return moves.length === 0 ? sheet.ends[end] : `${sheet.ends[end]} ${sheet.by(moves.join("; "))}`;
}

/** Where a fault was heard. */
export const seatsSaid = ({ rig }: SheetSayer, positions: readonly string[]): string =>
  positions.map((id) => rig.positions.find((one) => one.id === id)?.name ?? id).join(", ");

/** Parts in a row that are of one kind and have as many such faults are said at once. */
function alikeIn(rig: BuiltRig, unheard: Sheet["unheard"]) {
  const kinds: { readonly kind: string; readonly faults: number; readonly parts: string[] }[] = [];
  for (const { part, faults } of unheard) {
    const kind = rig.parts.find(({ id }) => id === part)?.kind ?? part;
    const last = kinds.at(-1);
    if (last?.kind === kind && last.faults === faults.length) last.parts.push(part);
    else kinds.push({ kind, faults: faults.length, parts: [part] });
  }
  return kinds;
}

/** All that was not tested: positions, what cannot be told here, and what no check can tell. */
export function notTestedSaid(
  sayer: SheetSayer,
  { seats, unheard, asked }: Sheet,
): readonly string[] {
  const { sheet, language } = sayer.words;
  const named = (...states: readonly SheetSeat["state"][]) =>
    seats.filter(({ state }) => states.includes(state)).map(({ name }) => name);
  const [silent, begun] = [named("not heard", "absent"), named("begun")];
  const parts = alikeIn(sayer.rig, unheard).map(({ parts: [first = "", ...more], faults }) =>
    more.length === 0
      ? sheet.unheardIn(partSaid(sayer, first), faults)
      : sheet.unheardInEach(partSaid(sayer, first), partSaid(sayer, more.at(-1) ?? ""), faults),
  );
  return [
    ...(silent.length > 0 ? [sheet.notHeard(silent.join(", "))] : []),
    ...(begun.length > 0 ? [sheet.unfinished(begun.join(", "))] : []),
    ...(parts.length > 0 ? [sheet.unheard(parts.join(", "))] : []),
    ...neverTestedAt(language, seats, asked).map(capital),
  ];
}
