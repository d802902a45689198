import type { VNode } from "preact";
import type { Effect } from "#core/rig/effect.ts";
import { EffectGlyph } from "#ui/parts/effect-glyph.tsx";
import { LeadEndPicture } from "#ui/parts/end-picture.tsx";
import { KindPicture } from "#ui/parts/kind-picture.tsx";
import { TwistPicture } from "#ui/parts/twist-picture.tsx";
import type { TermName } from "#ui/words/term-names.ts";

const lanes = (effect: Effect) => () => <EffectGlyph effect={effect} />;

/** Words that a drawing of the program's own shows better than a sentence. */
const drawings: Readonly<Partial<Record<TermName, () => VNode>>> = {
  tip: () => <LeadEndPicture end="TRS" />,
  ring: () => <LeadEndPicture end="TRS" />,
  sleeve: () => <LeadEndPicture end="TRS" />,
  TRS: () => <LeadEndPicture end="TRS" />,
  TS: () => <LeadEndPicture end="TS" />,
  XLR: () => <LeadEndPicture end="XLR" />,
  "insert Y": () => <LeadEndPicture end="two TS" />,
  contact: () => <TwistPicture steady={false} />,
  difference: lanes("difference"),
  return: lanes("difference"),
  "mono sum": lanes("mono"),
  swapped: lanes("swapped"),
  polarity: lanes("one side inverted"),
  side: lanes("straight"),
  "impedance-balanced": lanes("right gone"),
  normalled: lanes("left in both"),
  "headphone amplifier": () => <KindPicture kind="headphone amplifier" />,
  "belt pack": () => <KindPicture kind="belt pack" />,
};

/** The drawing of a word, where there is one. */
export function WordDrawing({ name }: { readonly name: TermName }) {
  const drawing = drawings[name];
  return drawing ? <span class="word-drawing">{drawing()}</span> : null;
}
