import type { PartKind } from "#core/parts/catalogue.ts";
import { useWords } from "#ui/words/use-words.ts";
import { KindPicture } from "./kind-picture.tsx";
import { keyOf } from "./rig-keys.ts";

interface Props {
  readonly kind: PartKind;
  /** Left out where a press takes the kind into the hand, to be dragged or put somewhere. */
  readonly onPress?: () => void;
}

/** A kind of thing: its picture over its name. */
export function KindButton({ kind, onPress }: Props) {
  const { name, note } = useWords().language.patching.kinds[kind];
  const taken = onPress === undefined ? { "data-thing": keyOf({ kind }), title: note } : {};
  return (
    <button type="button" class="kind" onClick={onPress} {...taken}>
      <KindPicture kind={kind} />
      <span>{name}</span>
    </button>
  );
}
