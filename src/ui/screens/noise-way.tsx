import type { Trial } from "#core/checks/noise.ts";
import type { Cause } from "#core/noises/cause.ts";
import type { Hunt } from "#core/noises/hunt.ts";
import { placeName } from "#core/report/names.ts";
import { chainTo, type Link } from "#core/rig/chain.ts";
import { rigNow } from "#core/session/noises.ts";
import { ChainPicture } from "#ui/parts/chain-picture.tsx";
import { type NoiseMark, NoiseMarks } from "#ui/parts/noise-marks.tsx";
import { useWords } from "#ui/words/use-words.ts";
import type { Ready } from "./ready.ts";

interface Props {
  readonly ready: Ready;
  readonly hunt: Hunt;
  /** What a hand is at. */
  readonly trial?: Trial | undefined;
}

/** The programme stands before everything, as something that may bring a noise along. */
const programme: Link = { part: "", kind: "laptop", family: "lead" };

/** The way to a position with the noise drawn where it may come in, the larger the likelier, and a flag where the hand goes. */
export function NoiseWay({ ready: { derived }, hunt, trial }: Props) {
  const { language, noises } = useWords();
  const rig = rigNow(derived);
  const links = [programme, ...chainTo(rig, hunt.position)];
  const hand = trial && "part" in trial ? indexOf(links, trial.part) : undefined;
  const nameOf = ({ part, kind }: Link) => {
    if (part === "") return noises.programme;
    return kind === "listener" ? placeName(language, rig, part) : language.names.alone(part);
  };
  return (
    <figure class="way noise-way">
      <ChainPicture
        links={links}
        nameOf={nameOf}
        {...(hand !== undefined && { wrong: { effect: "straight", along: hand } })}
        over={(shape) => (
          <NoiseMarks noise={hunt.noise} shape={shape} marks={marksOf(links, hunt)} />
        )}
      />
    </figure>
  );
}

const indexOf = (links: readonly Link[], part: string): number | undefined => {
  const at = links.findIndex((link) => link.part === part);
  return at < 0 ? undefined : at + 0.5;
};

/** One mark for each part that may bring it, causes that nothing tells apart in equal shares. */
function marksOf(links: readonly Link[], { suspects }: Hunt): readonly NoiseMark[] {
  const shares = suspects.flatMap(({ causes, probability }) =>
    causes.map((cause) => ({ along: placeOf(links, cause), share: probability / causes.length })),
  );
  const places = new Set(shares.flatMap(({ along }) => (along === undefined ? [] : [along])));
  return [...places].map((along) => ({
    along,
    probability: shares.reduce((sum, one) => sum + (one.along === along ? one.share : 0), 0),
  }));
}

const placeOf = (links: readonly Link[], cause: Cause): number | undefined =>
  cause.cause === "something else" ? undefined : indexOf(links, "part" in cause ? cause.part : "");
