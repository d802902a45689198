import type { LeadEnd } from "#core/proving/ends.ts";
import { endPins } from "./lead-pins.ts";
import { EndPicture } from "./pin-ends.tsx";

/** One end of a lead as it lies in a hand, and the cord that leads away from it. */
export function LeadEndPicture({ end }: { readonly end: LeadEnd }) {
  const ends = endPins(end);
  const y = (at: number) => (ends.length === 1 ? 46 : 24 + at * 44);
  return (
    <svg class="end-picture" viewBox="0 0 180 92" aria-hidden="true">
      {ends.map(({ name }, at) => (
        <path key={name} class="cord" d={`M66 ${y(at)}H100C130 ${y(at)} 130 46 180 46`} />
      ))}
      {ends.map((one, at) => (
        <EndPicture key={one.name} end={one} tip={[4, y(at)]} facing="west" scale={1} />
      ))}
    </svg>
  );
}
