import { shown } from "./content.ts";
import { eastward, straightOn } from "./direction.ts";
import { Lane } from "./lane.tsx";
import type { BoxShape, PlanShape, Point } from "./plan-shape.ts";
import type { Scene, SeenOutput, SeenPlug } from "./scene.ts";
import { SocketPicture } from "./socket-picture.tsx";

interface Props {
  readonly shape: PlanShape;
  readonly scene: Scene;
}

const Case = ({ box: { x, y, width, height } }: { readonly box: BoxShape }) => (
  <rect class="box" x={x} y={y} width={width} height={height} rx="7" />
);

const isUsed = (plugs: readonly SeenPlug[], row: number): boolean =>
  plugs.some((plug) => plug.row === row);

/** What somebody has, its outputs down one edge, and at each what is on its contacts. */
export function FromBox({ shape: { from, scale }, scene }: Props) {
  return (
    <>
      <Case box={from} />
      {scene.outputs.map((output, row) => {
        const at = from.sockets[row] ?? [0, 0];
        const used = isUsed(scene.nearPlugs, row);
        return (
          <g key={output.socket.name} class={used ? "output" : "output spare"}>
            <Carries output={output} at={at} scale={scale} />
            <SocketPicture
              kind={output.socket.kind}
              size={output.socket.size}
              at={at}
              scale={scale === 1 ? 1 : 0.85}
              used={used}
            />
          </g>
        );
      })}
    </>
  );
}

interface CarriesProps {
  readonly output: SeenOutput;
  readonly at: Point;
  readonly scale: number;
}

/** A short lane for each contact, so that a socket is chosen by what it sends. */
function Carries({ output: { carried }, at: [x, y], scale }: CarriesProps) {
  const length = scale === 1 ? 40 : 26;
  return carried.map(({ contact, content }, index) => {
    const level = y + (carried.length < 2 ? 0 : (2 * index - 1) * 6);
    const seen = shown(content);
    return (
      <g key={contact} class="carries">
        <Lane carries={seen.carries} d={straightOn(eastward(x, level), -length - 20, -20, 0)} />
        {seen.inverted && <path class="sign" d={`M${x - length - 30} ${level}h8`} />}
      </g>
    );
  });
}

/** What it goes into, its inputs down the near edge. */
export function IntoBox({ shape: { into, scale }, scene }: Props) {
  if (into === undefined) return null;
  return (
    <>
      <Case box={into} />
      {scene.inputs.map(({ name, kind, size }, row) => (
        <SocketPicture
          key={name}
          kind={kind}
          size={size}
          at={into.sockets[row] ?? [0, 0]}
          scale={scale === 1 ? 1 : 0.85}
          used={isUsed(scene.farPlugs, row)}
        />
      ))}
    </>
  );
}
