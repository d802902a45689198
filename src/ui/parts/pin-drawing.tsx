import { Lane } from "./lane.tsx";
import { type Layout, layouts, PinEnds, rowsOf } from "./pin-ends.tsx";
import type { PinWire, Spelled } from "./pins.ts";

interface Props {
  readonly spelled: Spelled;
  readonly wide: boolean;
}

/** A lead to solder or to buy from: plug to plug, its contacts by name, and the wires between them. */
export function PinDrawing({ spelled: { west, east, wires }, wide }: Props) {
  const layout = wide ? layouts.wide : layouts.narrow;
  const [left, right] = [rowsOf(west), rowsOf(east)];
  const height = Math.max(...[...left, ...right].map(({ y }) => y), 60) + 24;
  const at = (rows: typeof left, { end, contact }: PinWire["from"]) =>
    rows.find((one) => one.end.name === end && one.contact === contact)?.y ?? 0;
  return (
    <svg class="pin-drawing" viewBox={`0 0 ${layout.width} ${height}`} aria-hidden="true">
      {[...wires]
        .sort((a, b) => Number(b.isReturn) - Number(a.isReturn))
        .map((wire) => (
          <Wire
            key={`${wire.from.end} ${wire.from.contact} ${wire.to.end} ${wire.to.contact}`}
            wire={wire}
            layout={layout}
            from={at(left, wire.from)}
            to={at(right, wire.to)}
          />
        ))}
      <PinEnds rows={left} ends={west} layout={layout} facing="west" wires={wires} />
      <PinEnds rows={right} ends={east} layout={layout} facing="east" wires={wires} />
    </svg>
  );
}

interface WireProps {
  readonly wire: PinWire;
  readonly layout: Layout;
  readonly from: number;
  readonly to: number;
}

function Wire({ wire, layout: { width, dot }, from, to }: WireProps) {
  const [a, b] = [dot, width - dot];
  const d = `M${a} ${from} C${(a + b) / 2} ${from} ${(a + b) / 2} ${to} ${b} ${to}`;
  if (wire.isReturn) return <path class="pin-wire return" d={d} />;
  if (wire.shown === undefined) return <path class="pin-wire" d={d} />;
  return <Lane carries={wire.shown.carries} d={d} />;
}
