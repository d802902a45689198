import { sentence } from "#core/report/phrases.ts";
import type { Sheet } from "#core/report/session-sheet.ts";
import type { Found } from "#core/report/sheet-found.ts";
import { SheetPicture } from "#ui/parts/sheet-picture.tsx";
import { onTrunk, trunkOf } from "./seat-state.ts";
import { SheetHead } from "./sheet-head.tsx";
import { SheetNoises } from "./sheet-noises.tsx";
import { SheetSeats } from "./sheet-seats.tsx";
import {
  endSaid,
  faultSaid,
  notTestedSaid,
  type SheetSayer,
  seatsSaid,
  surelySaid,
} from "./sheet-words.ts";

interface Props {
  readonly sheet: Sheet;
  readonly sayer: SheetSayer;
  /** Its rig is simulated. */
  readonly noGear: boolean;
  readonly onTitle: (title: { readonly name?: string; readonly who?: string }) => void;
}

/** A session on paper: the rig, each position, what was found and mended, and what was not tested. */
export function Paper({ sheet, sayer, noGear, onTitle }: Props) {
  return (
    <article class="sheet">
      <SheetHead sheet={sheet} sayer={sayer} noGear={noGear} onTitle={onTitle} />
      <Rig sheet={sheet} sayer={sayer} />
      <SheetSeats seats={sheet.seats} sayer={sayer} />
      <AllFound found={sheet.found} sayer={sayer} />
      <SheetNoises hunted={sheet.hunted} sayer={sayer} />
      <section class="not-tested">
        <h2>{sayer.words.sheet.notTested}</h2>
        <ul>
          {notTestedSaid(sayer, sheet).map((text) => (
            <li key={text}>{text}</li>
          ))}
        </ul>
      </section>
    </article>
  );
}

function Rig({ sheet: { seats }, sayer: { rig } }: Pick<Props, "sheet" | "sayer">) {
  return (
    <SheetPicture
      trunk={trunkOf(rig)}
      wrong={onTrunk(
        rig,
        seats.flatMap(({ wrong }) => (wrong?.shared ? [wrong] : [])),
      )}
      seats={seats.map(({ id, name, state, wrong }) => ({
        id,
        name,
        dim: state === "not heard" || state === "absent",
        well: state === "healthy" || state === "as ordered",
        ...(wrong && !wrong.shared && state !== "as ordered" ? { effect: wrong.effect } : {}),
      }))}
    />
  );
}

function AllFound({
  found,
  sayer,
}: {
  readonly found: readonly Found[];
  readonly sayer: SheetSayer;
}) {
  const { sheet } = sayer.words;
  return (
    <section class="found">
      <h2>{sheet.found}</h2>
      {found.length === 0 && <p>{sheet.foundNone}</p>}
      <ol>
        {found.map((one) => (
          <li key={`${one.fault.id} ${one.at}`}>
            <b>{seatsSaid(sayer, one.positions)}</b>
            {`: ${faultSaid(sayer, one.fault)} (${foundBy(sayer, one)}). `}
            <span class={one.end === "mended" ? "end" : "end open"}>
              {sentence(endSaid(sayer, one))}
            </span>
          </li>
        ))}
      </ol>
    </section>
  );
}

/** How sure it is, when that was, and whether only its cure told it. */
function foundBy(sayer: SheetSayer, found: Found): string {
  const sure = `${surelySaid(sayer, found)}, ${sayer.words.figures.time(found.at)}`;
  return found.named ? sure : `${sure}, ${sayer.words.sheet.told}`;
}
