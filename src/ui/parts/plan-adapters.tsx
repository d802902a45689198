import type { PlanShape, Point } from "./plan-shape.ts";
import type { Scene, SeenPlug } from "./scene.ts";

interface Props {
  readonly shape: PlanShape;
  readonly scene: Scene;
}

/** Adapters between a plug at a box and the lead: each a block with a socket in its far end, and in that the plug of what comes next. */
export const Adapters = ({ shape, scene }: Props) => (
  <>
    {scene.nearAdapters.map(({ id }, index) => (
      <Adapter
        key={id}
        wide={shape.wide}
        at={along(shape, shape.from.sockets, scene.nearPlugs, index, "west")}
        away={1}
      />
    ))}
    {scene.farAdapters.map(({ id }, index) => (
      <Adapter
        key={id}
        wide={shape.wide}
        at={along(shape, shape.into?.sockets ?? [], scene.farPlugs, index, "east")}
        away={-1}
      />
    ))}
  </>
);

/** Where an adapter begins: at the boot of the plug that it is, or of the adapter before it; on a narrow screen, where the cable turns. */
function along(
  { wide, adapters, plugAt, scale }: PlanShape,
  sockets: readonly Point[],
  plugs: readonly SeenPlug[],
  index: number,
  facing: "west" | "east",
): Point {
  const away = facing === "west" ? 1 : -1;
  if (!wide) {
    const [x, y] = facing === "west" ? adapters.near : adapters.far;
    return [x, y - away * index * adapters.step];
  }
  const [x, y] = plugAt(sockets[plugs[0]?.row ?? 0] ?? [0, 0], facing).end;
  return [x + away * (index * adapters.step - 14 * scale), y];
}

interface AdapterProps {
  readonly wide: boolean;
  readonly at: Point;
  readonly away: 1 | -1;
}

function Adapter({ wide, at: [x, y], away }: AdapterProps) {
  if (!wide) return <rect class="barrel" x={x - 24} y={y - 18} width="48" height="36" rx="5" />;
  return (
    <g transform={`translate(${x} ${y}) scale(${away} 1)`}>
      <path class="barrel" d="M62 -13H92V13H62ZM90 -7L108 -5V5L90 7Z" />
      <rect class="barrel" x="0" y="-20" width="64" height="40" rx="5" />
    </g>
  );
}
