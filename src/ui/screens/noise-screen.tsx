import { type Noise, noises } from "#core/checks/noise.ts";
import { seatName } from "#core/report/names.ts";
import { capital } from "#core/report/phrases.ts";
import { huntIn } from "#core/session/noises.ts";
import { Point } from "#ui/parts/complaint-point.tsx";
import { NoiseGlyph } from "#ui/parts/noise-marks.tsx";
import { Roving } from "#ui/parts/roving.tsx";
import { Tape } from "#ui/parts/tape.tsx";
import { useWords } from "#ui/words/use-words.ts";
import { Heading } from "./frame.tsx";
import { useHandOn } from "./hands.ts";
import { NoiseFound } from "./noise-found.tsx";
import { NoiseTrying } from "./noise-trying.tsx";
import type { AtPosition } from "./position-screen.tsx";
import type { Session } from "./use-session.ts";

interface Props {
  readonly held: Session;
  readonly position: string;
  readonly noise: Noise | undefined;
}

/** Where a noise comes in: one thing to try at a time, until it is sure enough or nothing left to try tells more. */
export function NoiseScreen({ held, position, noise }: Props) {
  useHandOn(held.edges.player);
  const { ready } = held;
  if (ready === undefined) return null;
  const hunt = noise && huntIn(ready.derived, position, noise);
  const key = held.page.log.length;
  const at = { held, ready, position };
  if (hunt === undefined) return <WhichNoise {...at} />;
  return hunt.next === undefined ? (
    <NoiseFound key={key} {...at} hunt={hunt} />
  ) : (
    <NoiseTrying key={key} {...at} hunt={hunt} next={hunt.next} />
  );
}

/** Which noise it is. */
function WhichNoise({ held, ready, position }: AtPosition) {
  const { language, noises: words } = useWords();
  return (
    <section class="noise">
      <Tape>{seatName(ready.derived.rig, position)}</Tape>
      <Heading>{words.which}</Heading>
      <Roving label={words.which} kind="points which-noise">
        {noises.map((noise) => (
          <Point key={noise} onPress={() => held.show({ screen: "noise", position, noise })}>
            <NoiseGlyph noise={noise} />
            <span>
              {capital(language.noises.named[noise])}
              <small>{language.noises.sounds[noise]}</small>
            </span>
          </Point>
        ))}
      </Roving>
    </section>
  );
}
