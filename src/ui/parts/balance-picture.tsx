import type { Decibels } from "#core/units/units.ts";

interface Props {
  /** By how much the right is louder than the left. */
  readonly balance: Decibels;
  readonly farthest: Decibels;
}

/** A head from above between its cups; as the sound is pushed to one side, the cup there grows and the other shrinks. */
export function BalancePicture({ balance, farthest }: Props) {
  const push = balance / farthest;
  const size = (side: number) => 26 + 12 * Math.max(-1, Math.min(1, side * push));
  return (
    <svg class="balance-picture" viewBox="0 0 320 176" aria-hidden="true">
      <path class="skull" d="M150 22q10 -18 20 0a58 62 0 1 1 -20 0" />
      {([-1, 1] as const).map((side) => (
        <g key={side}>
          <rect
            class={side < 0 ? "cup left" : "cup right"}
            x={side < 0 ? 98 - size(side) : 222}
            y={84 - size(side)}
            width={size(side)}
            height={2 * size(side)}
            rx="10"
          />
          <text class="letter" x={160 + side * 140} y="90">
            {side < 0 ? "L" : "R"}
          </text>
        </g>
      ))}
      <path class="aim" d="M160 60V108" />
      <text class="reading" x="160" y="172">
        {balance === 0 ? "0 dB" : `${balance > 0 ? "R" : "L"} +${Math.abs(balance)} dB`}
      </text>
    </svg>
  );
}
