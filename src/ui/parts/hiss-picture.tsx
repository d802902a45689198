import type { Decibels, Seconds } from "#core/units/units.ts";

interface Props {
  readonly below: Decibels;
  readonly playing: boolean;
  readonly lasts: Readonly<Record<"programme" | "between" | "hiss", Seconds>>;
}

const [width, height] = [300, 110];
/** So much lower is at the bottom. */
const deep: Decibels = 100;
const downOf = (below: Decibels): number => 8 + (Math.min(deep, Math.max(0, below)) / deep) * 92;

/** What is heard one after the other, each as high as it is loud: the programme, then the hiss alone. A mark goes along as it plays. */
export function HissPicture({ below, playing, lasts }: Props) {
  const { programme, between, hiss } = lasts;
  const per = width / (programme + between + hiss);
  const [end, from] = [programme * per, (programme + between) * per];
  const low = downOf(below);
  return (
    <svg class="hiss-picture" viewBox={`0 0 ${width} ${height}`} aria-hidden="true">
      <path class="programme" d={`M0 8H${end}`} />
      <path class="fall" d={`M${end} 8V${low}`} />
      <path class="noise" d={rough(from, width, low)} />
      <path class="ground" d={`M0 ${height - 2}H${width}`} />
      {playing && (
        <path
          class="now"
          style={{ animationDuration: `${programme + between + hiss}s` }}
          d={`M0 2V${height - 2}`}
        />
      )}
    </svg>
  );
}

const rough = (from: number, to: number, y: number): string => {
  const count = Math.round((to - from) / 3);
  const points = Array.from(
    { length: count },
    (_, at) => `${from + at * 3} ${y + (at % 2 === 0 ? 3 : -3)}`,
  );
  return `M${points.join("L")}`;
};
