import type { Advice } from "#core/diagnosis/advice.ts";
import { Ask } from "./ask.tsx";
import { Healthy } from "./healthy.tsx";
import { LastAnswer } from "./last-answer.tsx";
import { LookScreen } from "./look-screen.tsx";
import type { Ready } from "./ready.ts";
import type { Session } from "./use-session.ts";
import { Verdict } from "./verdict.tsx";

export interface AtPosition {
  readonly held: Session;
  readonly ready: Ready;
  /** The position in hand. */
  readonly position: string;
}

/** What a position needs now: a sound and a question, a look, a repair, or nothing. */
export function PositionScreen(props: AtPosition) {
  const { advice } = props.ready.derived.standing(props.position);
  return (
    <>
      <Needed key={props.held.page.log.length} advice={advice} {...props} />
      <LastAnswer held={props.held} />
    </>
  );
}

function Needed({ advice, ...props }: AtPosition & { readonly advice: Advice }) {
  switch (advice.advice) {
    case "healthy":
      return <Healthy {...props} />;
    case "verdict":
      return <Verdict {...props} verdict={advice} />;
    case "ask": {
      const { asked } = advice.option;
      if (asked.check === "look") return <LookScreen {...props} place={asked.place} />;
      return "position" in asked && asked.check !== "complaint" ? (
        <Ask {...props} asked={asked} />
      ) : null;
    }
  }
}
