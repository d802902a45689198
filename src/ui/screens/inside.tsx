import type { VNode } from "preact";
import type { Answered } from "#core/checks/finding.ts";
import { seatName } from "#core/report/names.ts";
import { Board } from "./board.tsx";
import { ComplaintScreen } from "./complaint.tsx";
import { Curtain } from "./curtain.tsx";
import { HandsUp } from "./hands-up.tsx";
import { Listen } from "./listen.tsx";
import type { NoiseView } from "./noise-view.ts";
import type { View } from "./page.ts";
import type { Plan } from "./plan.ts";
import { rigFor } from "./plan-foresee.ts";
import { PlanScreen } from "./plan-screen.tsx";
import { PositionScreen } from "./position-screen.tsx";
import { ProveChoice } from "./prove-choice.tsx";
import { ProveWork } from "./prove-work.tsx";
import type { Ready } from "./ready.ts";
import { SessionsScreen } from "./sessions.tsx";
import { SoundOut } from "./sound-out.tsx";
import { Sounds } from "./sounds.tsx";
import { Training } from "./training.tsx";
import { useFetched } from "./use-fetched.ts";
import type { Held } from "./use-page.ts";
import { type Session, useSession } from "./use-session.ts";

/** Everything behind the first screen. */
export function Inside({ held }: { readonly held: Held }) {
  const { view } = held.page;
  switch (view.screen) {
    case "plan":
      return <PlanScreen held={held} plan={view.plan} hear={hearPlan(held)} />;
    case "listen":
      return <Listen held={held} view={view} />;
    case "training":
      return <Training held={held} />;
    case "sound out":
      return <SoundOut held={held} />;
    case "sounds":
      return <Sounds held={held} />;
    case "flex":
    case "measure":
      return <Measuring held={held} />;
    case "words":
      return (
        <Fetched key="words" held={held} from={() => import("./words-screen.tsx")}>
          {({ WordsScreen }) => <WordsScreen held={held} word={view.word} />}
        </Fetched>
      );
    case "rig":
      return (
        <Fetched key="rig" held={held} from={() => import("./rig-screen.tsx")}>
          {({ RigScreen }) => <RigScreen held={held} />}
        </Fetched>
      );
    case "levels":
      return (
        <Fetched key="levels" held={held} from={() => import("./levels-screen.tsx")}>
          {({ LevelsScreen }) => <LevelsScreen held={held} view={view} />}
        </Fetched>
      );
    case "sessions":
      return <SessionsScreen held={held} view={view} />;
    case "complaint":
      return <ComplaintScreen held={held} told={view.told} />;
    case "prove":
      return view.lead.by === undefined ? (
        <ProveChoice held={held} lead={view.lead} />
      ) : (
        <InSession held={held} />
      );
    default:
      return <InSession held={held} />;
  }
}

interface FetchedProps<Part> {
  readonly held: Held;
  readonly from: () => Promise<Part>;
  readonly children: (part: Part) => VNode;
}

/** A screen that is fetched when it is wanted. */
function Fetched<Part>({ held, from, children }: FetchedProps<Part>) {
  const part = useFetched(true, from, held.change);
  return part === undefined ? null : children(part);
}

type MeasuringProps = Parameters<typeof import("./measuring-screens.tsx")["MeasuringScreens"]>[0];

const Measuring = (props: Pick<MeasuringProps, "held" | "cups">) => (
  <Fetched key="measuring" held={props.held} from={() => import("./measuring-screens.tsx")}>
    {({ MeasuringScreens }) => <MeasuringScreens {...props} />}
  </Fetched>
);

interface AtMicrophone {
  readonly session: Session;
  readonly ready: Ready;
  readonly position: string;
  /** The position whose cups are held to it. */
  readonly heard: string;
}

/** The cups of a position at a microphone, and back to the position with what it heard. */
function Microphone({ session, ready, position, heard }: AtMicrophone) {
  const onBack = () => session.show({ screen: "position", position });
  const onEnter = (answered: readonly Answered[]) => {
    session.enter(...answered.map((finding) => ({ entry: "finding", finding }) as const));
    onBack();
  };
  const name = seatName(ready.derived.rig, heard);
  return <Measuring held={session} cups={{ position: heard, name, onEnter, onBack }} />;
}

const hearPlan =
  ({ show }: Held) =>
  (plan: Plan) => {
    const rig = rigFor(plan);
    if (rig !== undefined) show({ screen: "listen", rig, plan });
  };

interface AtPositionProps extends Pick<AtMicrophone, "session" | "ready"> {
  readonly view: Extract<View, { screen: "position" }>;
}

/** What a position needs, by ear or with its cups at a microphone. */
const AtPosition = ({ view: { position, microphone }, ...props }: AtPositionProps) =>
  microphone === undefined ? (
    <PositionScreen key={position} held={props.session} ready={props.ready} position={position} />
  ) : (
    <Microphone {...props} position={position} heard={microphone} />
  );

interface NoiseAtProps {
  readonly held: Session;
  readonly view: NoiseView;
}

/** Where a noise comes in. */
const NoiseAt = ({ held, view: { position, noise } }: NoiseAtProps) => (
  <Fetched key="noise" held={held} from={() => import("./noise-screen.tsx")}>
    {({ NoiseScreen }) => <NoiseScreen held={held} position={position} noise={noise} />}
  </Fetched>
);

/** What follows from the log. */
function InSession({ held }: { readonly held: Held }) {
  const session = useSession(held);
  const { page, ready } = session;
  const { view } = page;
  switch (view.screen) {
    case "start":
    case "plan":
    case "listen":
    case "training":
    case "rig":
    case "levels":
    case "complaint":
    case "sound out":
    case "sounds":
    case "flex":
    case "measure":
    case "words":
    case "sessions":
      return null;
    case "sheet":
      return (
        <Fetched key="sheet" held={session} from={() => import("./sheet-screen.tsx")}>
          {({ SheetScreen }) => <SheetScreen held={session} view={view} />}
        </Fetched>
      );
    case "noise":
      return <NoiseAt held={session} view={view} />;
    case "board":
      return <Board held={session} />;
    case "position":
      return ready ? <AtPosition session={session} ready={ready} view={view} /> : null;
    case "prove":
      return ready ? <ProveWork held={session} ready={ready} /> : null;
    case "hands up":
      return ready ? <HandsUp held={session} ready={ready} /> : null;
    case "curtain":
      return ready?.bench ? (
        <Curtain held={session} derived={ready.derived} bench={ready.bench} />
      ) : null;
  }
}
