import type { Contact } from "#core/parts/plugs.ts";
import { Cable } from "./cable.tsx";
import { type CableLanes, cableLanes, type MouthLane, type StartLane } from "./cable-lanes.ts";
import { tieOf } from "./cable-tie.ts";
import { type Carried, nothing, type Shown, shown } from "./content.ts";
import { straightOn } from "./direction.ts";
import { Ears } from "./ears-picture.tsx";
import { Adapters } from "./plan-adapters.tsx";
import { FromBox, IntoBox } from "./plan-box-pictures.tsx";
import type { PlanShape, Point } from "./plan-shape.ts";
import { PlugPicture } from "./plug-picture.tsx";
import type { Scene, SeenPlug } from "./scene.ts";

interface Props {
  readonly shape: PlanShape;
  readonly scene: Scene;
  /** The plug in the hand. */
  readonly inHand?: string | undefined;
  /** Something else arrives than is wanted. */
  readonly flagged: boolean;
}

/** Of each lane from the middle between two. */
const gapOf = ({ wide }: PlanShape): number => (wide ? 13 : 10);

/** What somebody has, what is between, what it goes into, and the ears: with the lanes of the programme all the way. */
export function PlanPicture({ shape, scene, inHand, flagged }: Props) {
  const gap = gapOf(shape);
  const lanes = cableLanes(scene.wired, gap);
  const tie = tieOf(lanes.mouths, scene.ears, scene.effect);
  const aside = gap * 0.5;
  const rowOf = (plugs: readonly SeenPlug[], socket?: string) =>
    plugs.find(({ end }) => end.socket === socket)?.row ?? plugs[0]?.row ?? 0;
  const beside = (index: number, count: number) => (count < 2 ? 0 : (2 * index - 1) * aside);
  const startAt = (lane: StartLane): Point => {
    const same = lanes.starts.filter(({ start }) => start.socket === lane.start.socket);
    const socket = shape.from.sockets[rowOf(scene.nearPlugs, lane.start.socket)] ?? [0, 0];
    const [x, y] = shape.plugAt(socket, "west").end;
    return [x, y + beside(same.indexOf(lane), same.length)];
  };
  const mouthAt = (lane: MouthLane): Point => {
    if (shape.into === undefined) return cupAt(shape, lane);
    const same = lanes.mouths.filter(({ mouth }) => mouth.at?.socket === lane.mouth.at?.socket);
    const socket = shape.into.sockets[rowOf(scene.farPlugs, lane.mouth.at?.socket)] ?? [0, 0];
    const [x, y] = shape.plugAt(socket, "east").end;
    return [x, y + beside(same.indexOf(lane), same.length)];
  };
  return (
    <svg
      class={
        scene.nearPlugs.some(({ plug }) => plug.kind !== "link")
          ? "plan-picture"
          : "plan-picture bare"
      }
      viewBox={`0 0 ${shape.width} ${shape.height}`}
      aria-hidden="true"
    >
      <Jackets shape={shape} scene={scene} />
      <Cable
        shape={shape}
        lanes={lanes}
        ears={scene.ears}
        tie={tie}
        startAt={startAt}
        mouthAt={mouthAt}
      />
      {flagged && tie === undefined && <Flag shape={shape} reach={gap + 12} />}
      <Adapters shape={shape} scene={scene} />
      <FromBox shape={shape} scene={scene} />
      <IntoBox shape={shape} scene={scene} />
      <Plugs shape={shape} scene={scene} lanes={lanes} inHand={inHand} />
      <Ears shape={shape} ears={scene.ears} />
    </svg>
  );
}

/** Headphones that go straight in: the lane ends at their cup. */
function cupAt({ cups, wide }: PlanShape, { mouth }: MouthLane): Point {
  const [x, y] = cups[mouth.ears[0]?.ear === 1 ? 1 : 0];
  return [x - (wide ? 26 : 22), y];
}

/** The jacket of a cable, round its lanes; radio has none. */
function Jackets({ shape, scene }: Pick<Props, "shape" | "scene">) {
  const real = scene.nearPlugs.filter(({ plug }) => plug.kind !== "link");
  if (real.length === 0) return null;
  const at = (sockets: readonly Point[], row: number): Point => sockets[row] ?? [0, 0];
  const { middle, near, far, plugAt } = shape;
  return (
    <g class="jacket">
      {real.map(({ row, end }) => (
        <path
          key={`${end.part} ${end.plug}`}
          d={near(plugAt(at(shape.from.sockets, row), "west").end, 0)}
        />
      ))}
      <path class="straight" d={straightOn(middle.at, 0, middle.length, 0)} />
      {scene.farPlugs.map(({ row, end }) => (
        <path
          key={`${end.part} ${end.plug}`}
          d={far(plugAt(at(shape.into?.sockets ?? [], row), "east").end, 0)}
        />
      ))}
    </g>
  );
}

/** Yellow tape round the cable: look here. */
function Flag({ shape: { middle }, reach }: { readonly shape: PlanShape; readonly reach: number }) {
  const at = (along: number, across: number) => middle.at(middle.length * 0.46 + along, across);
  const corners = [at(-9, -reach), at(8, -reach + 4), at(6, reach), at(-7, reach - 3)];
  return <path class="flag" d={`M${corners.join(" L")} Z`} />;
}

interface PlugsProps extends Pick<Props, "shape" | "scene" | "inHand"> {
  readonly lanes: CableLanes;
}

/** The plugs at both ends, each contact with what it carries. */
function Plugs({ shape, scene, lanes, inHand }: PlugsProps) {
  const near =
    ({ row, end: { socket } }: SeenPlug) =>
    (contact: Contact): Shown | undefined =>
      lanes.starts.find(({ start }) => start.socket === socket && start.contact === contact)
        ?.shown ?? found(scene.outputs[row]?.carried ?? [], contact);
  const far =
    (socket: string) =>
    (contact: Contact): Shown | undefined =>
      lanes.mouths.find(({ mouth }) => mouth.at?.socket === socket && mouth.at.contact === contact)
        ?.shown;
  const both = [
    ...scene.nearPlugs.map(
      (seen) => ({ seen, facing: "west", on: near(seen), sockets: shape.from.sockets }) as const,
    ),
    ...scene.farPlugs.map(
      (seen) =>
        ({
          seen,
          facing: "east",
          on: far(seen.end.socket),
          sockets: shape.into?.sockets ?? [],
        }) as const,
    ),
  ];
  return both.map(({ seen: { end, plug, row }, facing, on, sockets }) => (
    <PlugPicture
      key={`${end.part} ${end.plug}`}
      kind={plug.kind}
      size={plug.size}
      tip={shape.plugAt(sockets[row] ?? [0, 0], facing).tip}
      facing={facing}
      scale={shape.scale}
      on={on}
      inHand={inHand === `${end.part} ${end.plug}`}
    />
  ));
}

const found = (carried: readonly Carried[], contact: Contact): Shown => {
  const one = carried.find((each) => each.contact === contact);
  return one === undefined ? nothing : shown(one.content);
};
