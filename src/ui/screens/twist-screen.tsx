import type { World } from "#audio/world.ts";
import type { Asked } from "#core/checks/finding.ts";
import { twistAnswers } from "#core/checks/twist.ts";
import { placeName, seatName } from "#core/report/names.ts";
import { build } from "#core/rig/rig.ts";
import { answerText } from "#core/words/answer-text.ts";
import { Point } from "#ui/parts/complaint-point.tsx";
import { Roving } from "#ui/parts/roving.tsx";
import { Tape } from "#ui/parts/tape.tsx";
import { TwistPicture } from "#ui/parts/twist-picture.tsx";
import { useWords, type Words } from "#ui/words/use-words.ts";
import { benchEars } from "./bench-ears.ts";
import { Heading } from "./frame.tsx";
import { useHandOn } from "./hands.ts";
import { mutedWords, PlaySign } from "./play.tsx";
import type { AtPosition } from "./position-screen.tsx";
import type { Ready } from "./ready.ts";
import { WayPicture } from "./way-picture.tsx";

type Twist = Extract<Asked, { check: "twist" }>;
type Props = AtPosition & { readonly asked: Twist };

/** As long as a plug of the bench is twisted: three rounds of the rotation, so often. */
const benchPlayings = 4;

/** A plug is twisted in its socket, not pulled, while left, right and middle go round, quietly. */
export function TwistScreen(props: Props) {
  const { held, ready, position, asked } = props;
  const words = useWords();
  const { language, asking } = words;
  const { twist } = asking;
  useHandOn(held.edges.player);
  const { evidence, rig } = ready.derived;
  const now = build(evidence.era.course.state.rig);
  const answer = (given: readonly string[]) => {
    held.enter({ entry: "finding", finding: { asked, results: [given] } });
  };
  return (
    <section class="look twist">
      <Tape>{seatName(rig, position)}</Tape>
      <Heading>{twist.what(placeName(language, now, asked.part))}</Heading>
      <p class="hint">{twist.hint}</p>
      <WayPicture rig={now} position={position} place={asked.part} />
      <p class="twist-sound">
        <button type="button" class="play again" onClick={() => press(props)}>
          {!held.world.turnedUp && <PlaySign />}
          {pressWords(words, held.world)}
        </button>
        <span class="dim">{twist.sound}</span>
      </p>
      {ready.bench && (
        <p class="you-see">{twist.bench(answerText(language, noticed(ready, asked)))}</p>
      )}
      <Roving label={twist.question} kind="points two">
        {twistAnswers.map((one) => (
          <Point key={one} onPress={() => answer([one])}>
            <TwistPicture steady={one === "nothing changes"} />
            <span>{answerText(language, one)}</span>
          </Point>
        ))}
        <Point onPress={() => answer(twistAnswers)}>
          <span>{asking.cannotTell}</span>
        </Point>
      </Roving>
    </section>
  );
}

const pressWords = ({ sounding, asking }: Words, { playing, turnedUp }: World): string => {
  if (turnedUp) return mutedWords(sounding, true);
  return playing ? sounding.stop : asking.twist.play;
};

/** Sound, or none; where the volume may still be up, first that it is down. */
function press(props: Props): void {
  const { player } = props.held.edges;
  const { playing, turnedUp } = props.held.world;
  if (playing) player.silence();
  else if (turnedUp) player.handOff();
  else void playOn(props);
}

/** Plays left, right and middle over and over; it ends with the screen or with Silence. */
async function playOn({ held, ready: { bench, derived }, position }: Props): Promise<void> {
  const { player } = held.edges;
  if (held.world.muted) player.handOff();
  held.change((one) => ({ ...one, sounded: true }));
  if (bench === undefined) {
    await player.play("rotation", 0, { loop: true });
    return;
  }
  // What comes and goes in the bench's rig is drawn anew each time.
  for (let at = 0; at < benchPlayings; at++) {
    const through = benchEars(bench, derived, position, held.page.log.length + at);
    const { ended } = await player.play("rotation", 0, { through });
    if (ended !== "played") return;
  }
}

/** What a player of the bench would notice. */
function noticed({ bench, derived }: Ready, { part, plug }: Twist): string {
  const hidden = bench?.hidden;
  const here = hidden?.part === part && (hidden.at === plug || hidden.at === "body");
  const moves = hidden?.comesAndGoes || hidden?.cleans;
  const [nothing, comes] = twistAnswers;
  return here && moves && bench?.there(derived.evidence.era.course.moves) ? comes : nothing;
}
