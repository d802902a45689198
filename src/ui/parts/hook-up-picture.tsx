import { useWords } from "#ui/words/use-words.ts";
import { eastward, sway } from "./direction.ts";
import { Lane } from "./lane.tsx";
import { PlugPicture } from "./plug-picture.tsx";

interface Props {
  /** The first channel of the output's pair, counted from nought. */
  readonly first: number;
  /** What stands behind the lead: the inputs alone, or a load box before them. */
  readonly returns: "joined" | "load box";
  /** It is said beside it already. */
  readonly silent?: boolean;
}

const at = eastward(0, 0);
const middle = 84;
/** Where the sockets are, and the two lanes at a plug: left, right. */
const [holes, near] = [
  [52, 116],
  [middle - 8, middle + 8],
] as const;
/** From the output to plug 1, and from plug 2 to the input. */
const [out, back] = [
  [80, 164],
  [398, 480],
] as const;
const sides = ["left", "right"] as const;

/** Out, through the lead between its two plugs, and back in: what to plug where. */
export function HookUpPicture({ first, returns, silent = false }: Props) {
  const { picture } = useWords().measure;
  return (
    <svg
      class="hook-up-picture"
      viewBox="0 0 560 178"
      role={silent ? undefined : "img"}
      aria-hidden={silent ? "true" : undefined}
      aria-label={silent ? undefined : picture[returns]}
    >
      <Sockets x={6} hole={66} names={[picture.out(first + 1), picture.out(first + 2)]} />
      <Sockets x={468} hole={20} names={[picture.in(1), picture.in(2)]} />
      {sides.map((side, which) =>
        waysOf(which).map((way) => (
          <g key={way}>
            <Lane carries={side} d={way} />
            <path class="pulse" d={way} />
          </g>
        )),
      )}
      <text class="letter left" x="122" y="42">
        L
      </text>
      <text class="letter right" x="122" y="140">
        R
      </text>
      <Lead plugs={[picture.plug(1), picture.plug(2)]} />
      {returns === "load box" && <LoadBox each={picture.each} />}
    </svg>
  );
}

/** One side's two lanes. */
const waysOf = (which: number): readonly [string, string] => {
  const [hole, plug] = [holes[which] ?? 0, near[which] ?? 0];
  return [sway(at, [out[0], hole], [out[1], plug]), sway(at, [back[0], plug], [back[1], hole])];
};

interface SocketsProps {
  readonly x: number;
  /** How far into the box its sockets are. */
  readonly hole: number;
  readonly names: readonly [string, string];
}

const Sockets = ({ x, hole, names }: SocketsProps) => (
  <>
    <rect class="case" x={x} y="22" width="86" height="124" rx="6" />
    {holes.map((y, side) => (
      <g key={y}>
        <circle class="hole" cx={x + hole} cy={y} r="10" />
        <text x={x + (hole > 43 ? 28 : 58)} y={y + 6}>
          {names[side]}
        </text>
      </g>
    ))}
  </>
);

/** Two plugs and what is between them, numbered as the hand passes them. */
const Lead = ({ plugs }: { readonly plugs: readonly [string, string] }) => (
  <>
    <path class="cord" d="M228 84C262 108 300 60 334 84" />
    <PlugPicture kind="TRS" size="6.35 mm" tip={[160, middle]} facing="west" scale={0.72} />
    <PlugPicture kind="TRS" size="6.35 mm" tip={[402, middle]} facing="east" scale={0.72} />
    <text x="206" y="126">
      {plugs[0]}
    </text>
    <text x="334" y="126">
      {plugs[1]}
    </text>
  </>
);

/** A resistor from each side to a star point, and that on nothing but the sleeve. */
const LoadBox = ({ each }: { readonly each: string }) => (
  <g class="load-box">
    <path class="wire" d="M424 73V152M450 109V152M372 92V152H450" />
    {[424, 450].map((x) => (
      <rect key={x} class="resistor" x={x - 6} y="112" width="12" height="28" />
    ))}
    <circle class="knot" cx="424" cy="72" r="5" />
    <circle class="knot" cx="450" cy="108" r="5" />
    <circle class="knot" cx="424" cy="152" r="5" />
    <text x="410" y="174">
      {each}
    </text>
  </g>
);
