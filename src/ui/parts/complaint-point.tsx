import type { ComponentChildren } from "preact";

interface Props {
  readonly onPress: () => void;
  readonly children: ComponentChildren;
}

/** One thing to point at: a drawing with its words. */
export const Point = ({ onPress, children }: Props) => (
  <button type="button" class="point" onClick={onPress}>
    {children}
  </button>
);
