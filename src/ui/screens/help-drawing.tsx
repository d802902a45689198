import type { VNode } from "preact";
import type { Effect } from "#core/rig/effect.ts";
import { signals } from "#core/signals/catalogue.ts";
import { BalancePicture } from "#ui/parts/balance-picture.tsx";
import { ComplaintPicture } from "#ui/parts/complaint-picture.tsx";
import { CupAtMicrophone } from "#ui/parts/cup-at-microphone.tsx";
import { EffectGlyph } from "#ui/parts/effect-glyph.tsx";
import { LeadEndPicture } from "#ui/parts/end-picture.tsx";
import { HissPicture } from "#ui/parts/hiss-picture.tsx";
import { HookUpPicture } from "#ui/parts/hook-up-picture.tsx";
import { KindPicture } from "#ui/parts/kind-picture.tsx";
import { SeatHead } from "#ui/parts/seat-head.tsx";
import { SheetPicture } from "#ui/parts/sheet-picture.tsx";
import { SignalPicture } from "#ui/parts/signal-picture.tsx";
import { TwistPicture } from "#ui/parts/twist-picture.tsx";
import type { HelpName } from "#ui/words/help-names.ts";

const lanes = (effect: Effect) => () => <EffectGlyph effect={effect} />;
const head = (heard: string) => () => <SeatHead looks="up" heard={heard} />;

const boardSeats = ["1", "2", "3"].map((name, at) => ({
  id: name,
  name,
  dim: at === 2,
  well: at === 0,
  ...(at === 1 ? { effect: "swapped" as const } : {}),
}));

const threeHeads = () => (
  <span class="heads">
    {["1", "2", "3"].map((seat) => (
      <SeatHead key={seat} looks="down" heard={seat === "2" ? "left ear" : "middle"} />
    ))}
  </span>
);

/** What each screen is about, in a drawing that the program has anyway. */
const drawings: Readonly<Record<HelpName, () => VNode>> = {
  start: lanes("swapped"),
  board: () => <SheetPicture trunk={[]} wrong={undefined} seats={boardSeats} />,
  "hands up": threeHeads,
  curtain: lanes("difference"),
  rig: () => <KindPicture kind="headphone amplifier" />,
  levels: () => (
    <HissPicture below={45} playing={false} lasts={{ programme: 3, between: 0.5, hiss: 4 }} />
  ),
  sessions: () => <SheetPicture trunk={[]} wrong={undefined} seats={boardSeats} />,
  plan: () => <KindPicture kind="mixer" />,
  listen: lanes("mono"),
  sheet: () => <SheetPicture trunk={[]} wrong={undefined} seats={boardSeats} />,
  words: () => <LeadEndPicture end="TRS" />,
  complaint: lanes("left gone"),
  noise: () => <ComplaintPicture complaint="hum" />,
  "sound out": () => <KindPicture kind="laptop" />,
  prove: () => <LeadEndPicture end="two TS" />,
  "prove reading": () => <LeadEndPicture end="TRS" />,
  sounds: () => <SignalPicture signal={signals["stereo-ident"]} />,
  flex: () => <TwistPicture steady={false} />,
  measure: () => <HookUpPicture first={0} returns="joined" silent />,
  training: lanes("one side inverted"),
  asked: head("left ear"),
  absent: head(""),
  balance: () => <BalancePicture balance={4} farthest={12} />,
  look: () => <KindPicture kind="headphone amplifier" />,
  twist: () => <TwistPicture steady={false} />,
  do: () => <LeadEndPicture end="TRS" />,
  verdict: lanes("difference"),
  healthy: lanes("straight"),
  cups: () => <CupAtMicrophone held="left" silent />,
};

/** The drawing of a screen, beside its answer. */
export function HelpDrawing({ name }: { readonly name: HelpName }) {
  return <div class="help-drawing">{drawings[name]()}</div>;
}
