import type { Socket } from "#core/parts/part.ts";
import { gives } from "#core/patching/wants.ts";
import { PlanPicture } from "#ui/parts/plan-picture.tsx";
import { type PlanShape, type Point, planShape } from "#ui/parts/plan-shape.ts";
import { Roving } from "#ui/parts/roving.tsx";
import { countsOf, type Scene, type SeenPlug, sceneOf } from "#ui/parts/scene.ts";
import { useWide } from "#ui/parts/use-wide.ts";
import { useWords } from "#ui/words/use-words.ts";
import { closed, type Opened, opened, type Plan } from "./plan.ts";
import type { Foreseen, Outcome } from "./plan-foresee.ts";
import { outputLabel, plugLabel } from "./plan-labels.ts";
import { enterBy, isInHand, leaveBy, takeInHand, takesIt } from "./plan-moves.ts";
import { nameOf, patchName } from "./plan-words.ts";

export interface AtPlan {
  readonly plan: Plan;
  readonly foreseen: Foreseen | undefined;
  /** What comes of each output stage it may have; none where that is known. */
  readonly outcomes: readonly Outcome[];
  readonly go: (how: (plan: Plan) => Plan) => void;
}

/** The picture, and on it what can be pointed at: names, sockets and plugs. */
export function PlanStage({ plan, foreseen, go }: AtPlan) {
  const words = useWords();
  const wide = useWide(62);
  const scene = sceneOf(plan, foreseen?.rig, foreseen?.prediction);
  const shape = planShape(wide, countsOf(scene));
  const { inHand } = plan;
  const at = { plan, go, scene, shape };
  return (
    <div
      class={wide ? "plan-stage" : "plan-stage narrow"}
      style={{ aspectRatio: `${shape.width} / ${shape.height}` }}
    >
      <PlanPicture
        shape={shape}
        scene={scene}
        inHand={inHand && `${inHand.part} ${inHand.plug}`}
        flagged={foreseen !== undefined && !gives(foreseen.prediction, plan.want)}
      />
      <Name
        {...at}
        what="from"
        at={[shape.from.x + 12, shape.from.y]}
        text={nameOf(words, plan.from)}
      />
      <Outputs {...at} />
      <Ends {...at} plugs={scene.nearPlugs} facing="west" />
      <Name {...at} what="wires" at={shape.leadName} text={patchName(words, plan.patch)} />
      <Ends {...at} plugs={scene.farPlugs} facing="east" />
      <Inputs {...at} />
      <Name {...at} what="into" at={shape.intoName} text={nameOf(words, plan.into)} />
      {plan.worn && (
        <Name {...at} what="worn" at={shape.wornName} text={nameOf(words, plan.worn)} />
      )}
    </div>
  );
}

interface Parts {
  readonly plan: Plan;
  readonly go: AtPlan["go"];
  readonly scene: Scene;
  readonly shape: PlanShape;
}

const percent = (part: number, whole: number): string => `${(100 * part) / whole}%`;

/** Where something stands on the picture, whatever size that is shown in. */
const placedAt = ({ width, height }: PlanShape, [x, y]: Point) => ({
  left: percent(x, width),
  top: percent(y, height),
});

interface NameProps extends Parts {
  readonly what: Opened;
  readonly at: Point;
  readonly text: string;
}

/** A strip of tape with a name on it; pressed, it shows what else there is. */
function Name({ plan, go, shape, what, at, text }: NameProps) {
  const open = plan.open === what;
  return (
    <button
      type="button"
      class={`tape name ${what}`}
      style={placedAt(shape, at)}
      aria-expanded={open}
      aria-controls="tray"
      onClick={() => go((one) => opened(one, what))}
    >
      {text}
    </button>
  );
}

/** The outputs, each a whole row to point at. */
function Outputs({ plan, go, scene, shape }: Parts) {
  const words = useWords();
  const { from, width, height } = shape;
  return (
    <Roving label={words.plan.picture.outputs(nameOf(words, plan.from))} kind="sockets">
      {scene.outputs.map((output, row) => {
        const [, y] = from.sockets[row] ?? [0, 0];
        const { name } = output.socket;
        const used = scene.nearPlugs.some((plug) => plug.row === row);
        return (
          <button
            key={name}
            type="button"
            class="socket-row"
            style={{
              ...placedAt(shape, [from.x, y]),
              width: percent(from.width + 16, width),
              height: percent(rowOf(from.sockets), height),
            }}
            aria-pressed={used}
            aria-label={outputLabel(words, output)}
            disabled={!takesIt(plan, { into: plan.from.id, socket: name })}
            onClick={() => go((one) => leaveBy(closed(one), name))}
          >
            {words.marks.socket(name)}
          </button>
        );
      })}
    </Roving>
  );
}

/** How far apart rows of sockets are. */
const rowOf = (sockets: readonly Point[]): number =>
  (sockets[1]?.[1] ?? 50) - (sockets[0]?.[1] ?? 0) || 50;

/** The inputs, where there are several. */
function Inputs({ plan, go, scene, shape }: Parts) {
  const words = useWords();
  const { into } = shape;
  if (into === undefined) return null;
  return (
    <Roving label={words.plan.picture.inputs(nameOf(words, plan.into))} kind="sockets">
      {scene.inputs.map((socket: Socket, row) => (
        <button
          key={socket.name}
          type="button"
          class="input"
          style={placedAt(shape, into.sockets[row] ?? [0, 0])}
          aria-pressed={scene.farPlugs.some((plug) => plug.row === row)}
          disabled={!takesIt(plan, { into: plan.into.id, socket: socket.name })}
          onClick={() => go((one) => enterBy(closed(one), socket.name))}
        >
          {words.marks.socket(socket.name)}
        </button>
      ))}
    </Roving>
  );
}

interface EndsProps extends Parts {
  readonly plugs: readonly SeenPlug[];
  readonly facing: "west" | "east";
}

/** The plugs: taken in the hand, one goes where is pointed at next. */
function Ends({ plan, go, scene, shape, plugs, facing }: EndsProps) {
  const words = useWords();
  const sockets = facing === "west" ? shape.from.sockets : (shape.into?.sockets ?? []);
  return plugs.map((seen) => {
    const { tip, end } = shape.plugAt(sockets[seen.row] ?? [0, 0], facing);
    return (
      <button
        key={`${seen.end.part} ${seen.end.plug}`}
        type="button"
        class="plug-end"
        style={placedAt(shape, [(tip[0] + end[0]) / 2, tip[1]])}
        aria-pressed={isInHand(plan, seen.end)}
        aria-label={plugLabel(words, scene, seen)}
        onClick={() => go((one) => takeInHand(one, seen.end))}
      />
    );
  });
}
