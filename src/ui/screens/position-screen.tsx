import type { Advice } from "#core/diagnosis/advice.ts";
import type { Option } from "#core/diagnosis/options.ts";
import { useWords } from "#ui/words/use-words.ts";
import { Ask } from "./ask.tsx";
import { BalanceScreen } from "./balance-screen.tsx";
import { CameFrom } from "./came-from.tsx";
import { DidElse } from "./did-else.tsx";
import { DoScreen } from "./do-screen.tsx";
import { Healthy } from "./healthy.tsx";
import { LastAnswer } from "./last-answer.tsx";
import { LookScreen } from "./look-screen.tsx";
import { NoiseLink } from "./noise-link.tsx";
import { NumbersHere } from "./numbers-here.tsx";
import type { Ready } from "./ready.ts";
import { Absent, SeatOptions, WantedSo } from "./seat-options.tsx";
import { seatAsked } from "./seat-state.ts";
import { ToLevels } from "./to-levels.tsx";
import { TwistScreen } from "./twist-screen.tsx";
import type { Session } from "./use-session.ts";
import { Verdict } from "./verdict.tsx";
import { WhyNext } from "./why-next.tsx";

export interface AtPosition {
  readonly held: Session;
  readonly ready: Ready;
  /** The position in hand. */
  readonly position: string;
}

/** What a position needs now: a sound and a question, a look, a plug to twist, a move, a repair, or nothing. */
export function PositionScreen(props: AtPosition) {
  const { derived } = props.ready;
  const { advice, choice } = derived.standing(props.position);
  const { view } = props.held.page;
  const here = seatAsked(advice) ?? props.position;
  if (derived.state(props.position) === "absent")
    return <Absent held={props.held} position={props.position} />;
  return (
    <>
      <CameFrom
        held={props.held}
        derived={derived}
        came={view.screen === "position" ? view.came : undefined}
      />
      <WantedSo held={props.held} position={here} />
      <Needed key={props.held.page.log.length} advice={advice} {...props} />
      <ByMicrophone advice={advice} {...props} />
      <NoiseLink {...props} position={here} />
      <WhyNext derived={derived} choice={choice} />
      <SeatOptions key={here} {...props} here={here} />
      <DidElse key={`done ${props.held.page.log.length}`} {...props} />
      <LastAnswer held={props.held} />
      <ToLevels held={props.held} position={here} />
      <NumbersHere held={props.held} derived={derived} position={props.position} />
    </>
  );
}

/** Where the next question is of the left, the right or the pair, a microphone may hear it instead; a simulated rig has no cups to hold. */
function ByMicrophone({ advice, held, ready, position }: AtPosition & { readonly advice: Advice }) {
  const { asking } = useWords();
  if (ready.bench || advice.advice !== "ask") return null;
  const { asked } = advice.option;
  if (asked.check !== "left" && asked.check !== "right" && asked.check !== "pair") return null;
  const microphone = asked.position;
  return (
    <p class="by-microphone">
      <button
        type="button"
        class="quiet"
        onClick={() => held.show({ screen: "position", position, microphone })}
      >
        {asking.byMicrophone}
      </button>
      {asking.byMicrophoneHow}
    </p>
  );
}

/** The one thing to do now. */
export function Needed({ advice, ...props }: AtPosition & { readonly advice: Advice }) {
  switch (advice.advice) {
    case "healthy":
      return <Healthy {...props} />;
    case "verdict":
      return <Verdict {...props} verdict={advice} />;
    case "do":
      return <DoScreen {...props} doing={advice} />;
    case "ask":
      return <Asking {...props} asked={advice.option.asked} />;
  }
}

function Asking({ asked, ...props }: AtPosition & { readonly asked: Option["asked"] }) {
  switch (asked.check) {
    case "look":
      return <LookScreen {...props} place={asked.place} />;
    case "twist":
      return <TwistScreen {...props} asked={asked} />;
    case "balance":
      return <BalanceScreen {...props} asked={asked} />;
    case "complaint":
    case "matrix":
      return null;
    default:
      return <Ask {...props} asked={asked} />;
  }
}
