import type { PlugKind } from "#core/parts/plugs.ts";
import { contactsOf } from "#core/parts/plugs.ts";
import { english } from "#core/words/english.ts";
import { isSignal } from "#ui/parts/content.ts";
import { LoadBoxPicture } from "#ui/parts/load-box-picture.tsx";

interface Props {
  /** The plug that goes into the box, and how many of them. */
  readonly plug: PlugKind;
  readonly count: number;
}

/** What a load box is, what to solder, and what to mind. */
export const LoadBox = ({ plug, count }: Props) => (
  <div class="load-box">
    <LoadBoxPicture plug={plug} />
    <ul class="hook-up">
      {steps(plug, count).map((text) => (
        <li key={text}>{text}</li>
      ))}
    </ul>
    <p class="hint">
      An interface that feeds its own inputs has joined their grounds: without the box a lead whose
      return is lost measures as whole. With it the return is the only way back.
    </p>
    <ul class="cautions">
      <li>Solder it out of everything, in fresh air, with something before your eyes.</li>
      <li>Phantom power off at both inputs before anything is plugged in.</li>
      <li>Never at a loudspeaker's output: the resistors burn.</li>
    </ul>
  </div>
);

/** What to solder, a line for each joint that matters. */
function steps(plug: PlugKind, count: number): readonly string[] {
  const name = (contact: Parameters<typeof isSignal>[0]) => english.patching.contact(contact, plug);
  const signals = contactsOf(plug).filter(isSignal).map(name);
  const back = contactsOf(plug)
    .filter((contact) => !isSignal(contact))
    .map(name)[0];
  const both = signals.length > 1;
  return [
    `${count > 1 ? "Two sockets, each with: a" : "A"} resistor of 33 Ω, 1 %, from the ${signals[0]} to a point${both ? `; another from the ${signals[1]} to the same point` : ""}.`,
    `That point on the ${back} of the socket and on nothing else: no case, no ground of an input.`,
    `Each resistor on a balanced input of its own: hot on the ${signals.join(" or the ")}, cold on the point. The input's own ground stays on nothing.`,
  ];
}
