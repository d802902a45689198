import type { PlugKind } from "#core/parts/plugs.ts";
import { contactsOf } from "#core/parts/plugs.ts";
import { isSignal } from "#ui/parts/content.ts";
import { LoadBoxPicture } from "#ui/parts/load-box-picture.tsx";
import { useWords, type Words } from "#ui/words/use-words.ts";

interface Props {
  /** The plug that goes into the box, and how many of them. */
  readonly plug: PlugKind;
  readonly count: number;
}

/** What a load box is, what to solder, and what to mind. */
export function LoadBox({ plug, count }: Props) {
  const words = useWords();
  const { why, cautions } = words.proveBench.loadBox;
  return (
    <div class="load-box">
      <LoadBoxPicture plug={plug} />
      <ul class="hook-up">
        {steps(words, plug, count).map((text) => (
          <li key={text}>{text}</li>
        ))}
      </ul>
      <p class="hint">{why}</p>
      <ul class="cautions">
        {cautions.map((text) => (
          <li key={text}>{text}</li>
        ))}
      </ul>
    </div>
  );
}

/** What to solder, a line for each joint that matters. */
function steps({ language, proveBench }: Words, plug: PlugKind, count: number): readonly string[] {
  const { resistors, point, inputs } = proveBench.loadBox;
  const name = (contact: Parameters<typeof isSignal>[0]) =>
    language.patching.contact(contact, plug);
  const signals = contactsOf(plug).filter(isSignal).map(name);
  const [back = ""] = contactsOf(plug)
    .filter((contact) => !isSignal(contact))
    .map(name);
  return [resistors(signals, count), point(back), inputs(signals)];
}
