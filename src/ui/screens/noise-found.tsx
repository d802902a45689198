import type { Cause } from "#core/noises/cause.ts";
import type { Hunt } from "#core/noises/hunt.ts";
import { cautionsFor, mendingMoves, remediesFor } from "#core/noises/remedy.ts";
import { soundsAs } from "#core/noises/sounds-as.ts";
import { faultWords } from "#core/report/fault-words.ts";
import { seatName } from "#core/report/names.ts";
import { causeWords, noticedWords } from "#core/report/noise-words.ts";
import { howSure, inHundred, sentence } from "#core/report/phrases.ts";
import { noticedAt, rigNow } from "#core/session/noises.ts";
import { Tape } from "#ui/parts/tape.tsx";
import { useWords } from "#ui/words/use-words.ts";
import { Heading } from "./frame.tsx";
import { LastAnswer } from "./last-answer.tsx";
import { NoiseSuspects } from "./noise-suspects.tsx";
import { NoiseWay } from "./noise-way.tsx";
import type { AtPosition } from "./position-screen.tsx";
import { ToLevels } from "./to-levels.tsx";

type Props = AtPosition & { readonly hunt: Hunt };

/** Where it comes in: drawn, said, how sure, what helps, and what keeps one safe meanwhile. */
export function NoiseFound({ held, ready, position, hunt }: Props) {
  const { language, noises, verdict } = useWords();
  const { rig } = ready.derived;
  const [first] = hunt.suspects;
  const [cause] = first?.causes ?? [];
  if (first === undefined || cause === undefined) return null;
  const words = language.report.or(
    first.causes.map((one) => causeWords(language, rig, one, hunt.noise)),
  );
  const odds = inHundred(language, first.probability);
  return (
    <section class="noise found">
      <Tape yellow>{seatName(rig, position)}</Tape>
      <Heading>{hunt.sure ? sentence(words) : verdict.notSure}</Heading>
      <p class="sure">
        {hunt.sure
          ? sentence(noises.sure(howSure(language, first.probability), odds))
          : noises.likeliest(words, odds)}
      </p>
      <NoiseWay ready={ready} hunt={hunt} />
      <div class="columns">
        <Helping held={held} ready={ready} position={position} causes={first.causes} />
        <div class="beside">
          <h2>{noises.what}</h2>
          {first.causes.map((one) => (
            <p key={one.cause}>{language.noises.means[one.cause]}</p>
          ))}
          <NoiseSuspects ready={ready} hunt={hunt} heading={verdict.notRuledOut} after={1} />
          <AlsoByEar ready={ready} hunt={hunt} />
          <Noticed ready={ready} hunt={hunt} />
          {(hunt.noise === "hiss" || hunt.noise === "distortion") && (
            <ToLevels held={held} position={position} />
          )}
        </div>
      </div>
      <LastAnswer held={held} />
    </section>
  );
}

type HelpingProps = AtPosition & { readonly causes: readonly Cause[] };

/** What helps, what costs least first, with the cautions above it; and the way on. */
function Helping({ held, ready, position, causes }: HelpingProps) {
  const { language, noises } = useWords();
  const { remedies, cautions } = language.noises;
  const moves = causes.flatMap((one) => mendingMoves(rigNow(ready.derived), one));
  const ways = [...new Set(causes.flatMap(remediesFor))];
  const byEar = { screen: "position", position } as const;
  return (
    <div class="next-move">
      {ways.length > 0 && <h2>{noises.helps}</h2>}
      <ul class="noise-cautions">
        {[...new Set(causes.flatMap(cautionsFor))].map((one) => (
          <li key={one}>{cautions[one]}</li>
        ))}
      </ul>
      <ol class="noise-remedies">
        {ways.map((one) => (
          <li key={one}>{remedies[one]}</li>
        ))}
      </ol>
      <div class="foot">
        {moves.length > 0 && (
          <button
            type="button"
            class="main"
            onClick={() => held.enter(...moves.map((move) => ({ entry: "move", move }) as const))}
          >
            {noises.mended}
          </button>
        )}
        <button type="button" class="say" onClick={() => held.show(byEar)}>
          {noises.byEar}
        </button>
        <button type="button" class="say" onClick={() => held.show({ screen: "noise", position })}>
          {noises.other}
        </button>
      </div>
    </div>
  );
}

/** Faults of left and right that bring this noise along. */
function AlsoByEar({ ready: { derived }, hunt }: Pick<Props, "ready" | "hunt">) {
  const { language } = useWords();
  const faults = soundsAs(rigNow(derived), hunt.position, hunt.noise);
  if (faults.length === 0) return null;
  return (
    <p class="dim">
      {language.noises.alsoByEar(faults.map((one) => faultWords(language, derived.model, one)))}
    </p>
  );
}

/** On demand: everything that was tried, and what was noticed. */
function Noticed({ ready: { derived }, hunt }: Pick<Props, "ready" | "hunt">) {
  const { language, noises } = useWords();
  const findings = noticedAt(derived, hunt.position, hunt.noise);
  return (
    <details>
      <summary>{noises.noticed}</summary>
      <ul class="reasons">
        {findings.map((finding, at) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: the same may be noticed twice
          <li key={at}>{noticedWords(language, derived.rig, finding)}</li>
        ))}
      </ul>
    </details>
  );
}
