import type { Want } from "#core/patching/wants.ts";
import type { Carries } from "./effect-lanes.ts";
import { Lane } from "./lane.tsx";

/** What each ear's lane carries. */
const ears: Readonly<Record<Want, readonly [Carries, Carries]>> = {
  stereo: ["left", "right"],
  "mono in both ears": ["both", "both"],
  "an own mix": ["both", "both"],
  "left ear only": ["left", "nothing"],
  "right ear only": ["nothing", "right"],
};

/** Two short lanes to two ears; for a mix of one's own with a knob on the way. */
export const WantPicture = ({ want }: { readonly want: Want }) => (
  <svg class="want-picture" viewBox="0 0 96 48" aria-hidden="true">
    {[14, 34].map((y, ear) => (
      <g key={y}>
        <Lane carries={ears[want][ear === 0 ? 0 : 1]} d={`M4 ${y}H72`} />
        <circle class={ear === 0 ? "cup left" : "cup right"} cx="83" cy={y} r="8" />
      </g>
    ))}
    {want === "an own mix" && (
      <>
        <circle class="knob" cx="34" cy="24" r="15" />
        <path class="sign" d="M34 24L42 14" />
      </>
    )}
  </svg>
);
