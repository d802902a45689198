import type { WireState } from "#core/proving/wiring.ts";
import { Lane } from "./lane.tsx";
import { Break, Label, Letter, Probe } from "./lead-marks.tsx";
import { type Layout, layouts, PinEnds } from "./pin-ends.tsx";
import { isReturn, type Place, placesOf } from "./pin-places.ts";
import type { Spelled } from "./pins.ts";

/** From one contact to another, each as `plug.contact`. Two of one end are joined by a bow. */
export interface DrawnWire {
  readonly from: string;
  readonly to: string;
  /** As it is against how it was meant to be, or not tried yet, or suspected. */
  readonly look: WireState | "untried" | "suspected";
  readonly label?: string;
}

interface Props {
  readonly spelled: Spelled;
  readonly wires: readonly DrawnWire[];
  /** The two contacts that a meter is put to. */
  readonly probes?: readonly [string, string];
  readonly wide: boolean;
  /** Said for whoever does not see it. */
  readonly label: string;
}

const above = 40;

/** A lead on the bench with both ends large, the first on the side of the tape marked A. */
export function LeadDrawing({ spelled, wires, probes, wide, label }: Props) {
  const layout: Layout = wide ? layouts.wide : layouts.narrow;
  const { width } = layout;
  const { west, east, foot, at } = placesOf(spelled, layout);
  return (
    <svg
      class="pin-drawing lead-drawing"
      viewBox={`0 ${-above} ${width} ${foot + 2 * above}`}
      role="img"
      aria-label={label}
    >
      <Letter at={{ x: 4, y: 4 - above }} letter="A" />
      <Letter at={{ x: width - 34, y: 4 - above }} letter="B" />
      {[...wires].sort(behind).map((wire) => (
        <Wire key={`${wire.from} ${wire.to}`} wire={wire} from={at(wire.from)} to={at(wire.to)} />
      ))}
      <PinEnds rows={west} ends={spelled.west} layout={layout} facing="west" wires={[]} />
      <PinEnds rows={east} ends={spelled.east} layout={layout} facing="east" wires={[]} />
      {probes?.map((node) => (
        <circle key={`${node} dot`} class="probed" cx={at(node).x} cy={at(node).y} r="8.5" />
      ))}
      {probes?.map((node, index) => (
        <Probe
          key={node}
          node={node}
          place={at(node)}
          layout={layout}
          from={index === 0 ? "above" : "below"}
        />
      ))}
    </svg>
  );
}

/** What is wrong is drawn last, over the rest. */
const looks: readonly DrawnWire["look"][] = [
  "untried",
  "as intended",
  "suspected",
  "open",
  "resistive",
  "comes and goes",
  "exchanged",
  "joined",
];
const behind = (a: DrawnWire, b: DrawnWire): number =>
  looks.indexOf(a.look) - looks.indexOf(b.look);

interface WireProps {
  readonly wire: DrawnWire;
  readonly from: Place;
  readonly to: Place;
}

function Wire({ wire, from, to }: WireProps) {
  const { look, label } = wire;
  const line = from.west === to.west ? bow(from, to) : across(from, to);
  const thin = isReturn(wire.from) && isReturn(wire.to) ? " return" : "";
  return (
    <>
      {look === "open" ? (
        <Lane carries="nothing" d={line.d} />
      ) : (
        <path class={`pin-wire ${look.replaceAll(" ", "-")}${thin}`} d={line.d} />
      )}
      {(look === "open" || look === "comes and goes") && <Break at={line.middle} />}
      {look === "joined" && <circle class="touch" cx={line.middle.x} cy={line.middle.y} r="6" />}
      {label !== undefined && <Label at={line.middle} text={label} />}
    </>
  );
}

interface Line {
  readonly d: string;
  readonly middle: { readonly x: number; readonly y: number };
}

function across(from: Place, to: Place): Line {
  const x = (from.x + to.x) / 2;
  return {
    d: `M${from.x} ${from.y}C${x} ${from.y} ${x} ${to.y} ${to.x} ${to.y}`,
    middle: { x, y: (from.y + to.y) / 2 },
  };
}

/** Between two contacts of one side, bent into the lead. */
function bow(from: Place, to: Place): Line {
  const out = (from.west ? 1 : -1) * (16 + Math.abs(to.y - from.y) / 4);
  const x = from.x + out;
  return {
    d: `M${from.x} ${from.y}C${x} ${from.y} ${x} ${to.y} ${to.x} ${to.y}`,
    middle: { x: from.x + out * 0.75, y: (from.y + to.y) / 2 },
  };
}
