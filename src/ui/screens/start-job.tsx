import type { ComponentChildren } from "preact";

interface JobProps {
  readonly picture: ComponentChildren;
  readonly tape: ComponentChildren;
  readonly children: ComponentChildren;
}

/** One job: a strip of tape over the lanes that show it. */
export const Job = ({ picture, tape, children }: JobProps) => (
  <section class="job">
    <div class="over">{tape}</div>
    {picture}
    {children}
  </section>
);
