import type { ComponentChildren } from "preact";

/** A strip of artist's tape with a name on it; yellow means look here. */
export const Tape = ({
  children,
  yellow = false,
}: {
  readonly children: ComponentChildren;
  readonly yellow?: boolean;
}) => <span class={yellow ? "tape yellow" : "tape"}>{children}</span>;
