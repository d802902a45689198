import { sentence } from "#core/report/phrases.ts";
import type { Sheet } from "#core/report/session-sheet.ts";
import type { Found } from "#core/report/sheet-found.ts";
import type { SheetSeat } from "#core/report/sheet-seats.ts";
import { Tick } from "#ui/parts/marks.tsx";
import { SheetPicture } from "#ui/parts/sheet-picture.tsx";
import { onTrunk, trunkOf } from "./seat-state.ts";
import { SheetHead } from "./sheet-head.tsx";
import {
  detailsSaid,
  endSaid,
  faultSaid,
  notTestedSaid,
  partSaid,
  type SheetSayer,
  seatsSaid,
  stateSaid,
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
      <Seats seats={sheet.seats} sayer={sayer} />
      <AllFound found={sheet.found} sayer={sayer} />
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

/** Every position in a row. On paper the names of the columns stand on every page. */
function Seats({
  seats,
  sayer,
}: {
  readonly seats: readonly SheetSeat[];
  readonly sayer: SheetSayer;
}) {
  const { sheet } = sayer.words;
  return (
    <table>
      <caption>{sheet.positions}</caption>
      <thead>
        <tr>
          <th scope="col">{sheet.position}</th>
          <th scope="col">{sheet.result}</th>
          <th scope="col" class="worn">
            {sheet.worn}
          </th>
          <th scope="col" class="figure">
            {sheet.level}
          </th>
        </tr>
      </thead>
      <tbody>
        {seats.map((seat) => (
          <tr key={seat.id}>
            <th scope="row">{seat.name}</th>
            <td>
              <Result seat={seat} sayer={sayer} />
            </td>
            <td class="worn">{partSaid(sayer, seat.wears)}</td>
            <td class="figure">
              {seat.level === undefined ? "–" : sayer.words.figures.dbfs(seat.level)}
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

function Result({ seat, sayer }: { readonly seat: SheetSeat; readonly sayer: SheetSayer }) {
  const details = detailsSaid(sayer, seat);
  return (
    <>
      <span class={`stands ${seat.state.replaceAll(" ", "-")}`}>
        {seat.state === "healthy" && <Tick />}
        {stateSaid(sayer, seat)}
      </span>
      {details && <span class="detail">{details}</span>}
    </>
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
