import { sentence } from "#core/report/phrases.ts";
import type { HuntedNoise } from "#core/report/sheet-noises.ts";
import { noiseNamed, noiseSaid, sinceSaid } from "./sheet-gear-words.ts";
import { type SheetSayer, seatsSaid } from "./sheet-words.ts";

interface Props {
  readonly hunted: readonly HuntedNoise[];
  readonly sayer: SheetSayer;
}

/** Noises that were looked for or complained of; nothing where nobody did, which stands under what was not tested. */
export function SheetNoises({ hunted, sayer }: Props) {
  if (hunted.length === 0) return null;
  return (
    <section class="found">
      <h2>{sayer.words.sheet.noises}</h2>
      <ol>
        {hunted.map((one) => (
          <li key={`${one.position} ${one.noise} ${one.at}`}>
            <b>{seatsSaid(sayer, [one.position])}</b>
            {`, ${noiseNamed(sayer, one)}: ${noiseSaid(sayer, one)}. `}
            {one.since.length > 0 && (
              <span class={one.again ? "end" : "end open"}>{sentence(sinceSaid(sayer, one))}</span>
            )}
          </li>
        ))}
      </ol>
    </section>
  );
}
