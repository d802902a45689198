import { useState } from "preact/hooks";
import { CupAtMicrophone } from "#ui/parts/cup-at-microphone.tsx";
import { HookUpPicture } from "#ui/parts/hook-up-picture.tsx";
import { Roving } from "#ui/parts/roving.tsx";
import { useWords } from "#ui/words/use-words.ts";
import { CupMeasure } from "./cup-measure.tsx";
import { Heading } from "./frame.tsx";
import { FileDrop, Recording, useReading } from "./measure-recording.tsx";
import { ReturnMeasure } from "./return-measure.tsx";
import { useInstruments } from "./use-instruments.ts";
import type { Held } from "./use-page.ts";

/** Measured with this computer's own output and input; or out of a recording that was made elsewhere. */
export function MeasureScreen({ held }: { readonly held: Held }) {
  const { where } = useWords().measure;
  const [here, setHere] = useState<"lead" | "cups">();
  const instruments = useInstruments(held);
  const reading = useReading(instruments, held.silence);
  if (here === "cups") return <CupMeasure held={held} />;
  if (here === "lead")
    return (
      <section class="measuring">
        <ReturnMeasure held={held} onMatrix={() => {}} />
      </section>
    );
  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: a file that misses the button would be opened in place of the page
    <section
      class="measure droppable"
      onDragOver={(event) => event.preventDefault()}
      onDrop={(event) => {
        event.preventDefault();
        void reading.take(event.dataTransfer?.files[0]);
      }}
    >
      {reading.state.at === "rest" ? (
        <>
          <Heading key="where">{where.title}</Heading>
          <Roving label={where.label} kind="points where">
            <button type="button" class="point" onClick={() => setHere("lead")}>
              <HookUpPicture first={0} returns="joined" silent />
              <span>
                {where.here}
                <small>{where.hereNote}</small>
              </span>
            </button>
            <button type="button" class="point" onClick={() => setHere("cups")}>
              <CupAtMicrophone held="left" silent />
              <span>
                {where.cups}
                <small>{where.cupsNote}</small>
              </span>
            </button>
          </Roving>
          {instruments && <FileDrop onFile={reading.take} />}
        </>
      ) : (
        <Recording reading={reading} />
      )}
    </section>
  );
}
