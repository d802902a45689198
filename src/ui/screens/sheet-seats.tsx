import type { SheetSeat } from "#core/report/sheet-seats.ts";
import { Tick } from "#ui/parts/marks.tsx";
import { earSaid, knobsSaid, ownKnobsSaid, sharedKnobs } from "./sheet-gear-words.ts";
import { detailsSaid, partSaid, type SheetSayer, stateSaid } from "./sheet-words.ts";

interface Props {
  readonly seats: readonly SheetSeat[];
  readonly sayer: SheetSayer;
}

/** Every position in a row. On paper the names of the columns stand on every page. */
export function SheetSeats({ seats, sayer }: Props) {
  const { sheet } = sayer.words;
  const shared = sharedKnobs(seats);
  const ears = seats.some(({ ear }) => ear !== undefined);
  return (
    <>
      <table>
        <caption>{sheet.positions}</caption>
        <thead>
          <tr>
            <th scope="col">{sheet.position}</th>
            <th scope="col">{sheet.result}</th>
            <th scope="col" class="worn">
              {sheet.worn}
            </th>
            {ears && (
              <th scope="col" class="ear">
                {sheet.atEar}
              </th>
            )}
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
                <Result seat={seat} sayer={sayer} knobs={ownKnobsSaid(sayer, seat, shared)} />
              </td>
              <td class="worn">{unbroken(partSaid(sayer, seat.wears))}</td>
              {ears && <td class="ear">{earSaid(sayer, seat)}</td>}
              <td class="figure">{playedSaid(sayer, seat)}</td>
            </tr>
          ))}
        </tbody>
      </table>
      {shared.length > 0 && <p>{sheet.onEveryWay(knobsSaid(sayer, shared))}</p>}
    </>
  );
}

/** A name whose number stays in its line. */
const unbroken = (name: string): string => name.replace(/ (?=\d+$)/, "\u00A0");

const playedSaid = ({ words: { figures } }: SheetSayer, { level }: SheetSeat): string =>
  level === undefined ? "–" : figures.dbfs(level);

interface ResultProps {
  readonly seat: SheetSeat;
  readonly sayer: SheetSayer;
  /** How those stand that it has alone. */
  readonly knobs: string;
}

function Result({ seat, sayer, knobs }: ResultProps) {
  const details = detailsSaid(sayer, seat);
  return (
    <>
      <span class={`stands ${seat.state.replaceAll(" ", "-")}`}>
        {seat.state === "healthy" && <Tick />}
        {stateSaid(sayer, seat)}
      </span>
      {knobs && <span class="knobs">{knobs}</span>}
      {details && <span class="detail">{details}</span>}
    </>
  );
}
