import type { Contact } from "#core/parts/plugs.ts";
import { english } from "#core/words/english.ts";
import type { Shown } from "./content.ts";
import { Lane } from "./lane.tsx";
import type { PinEnd, PinWire, Spelled } from "./pins.ts";
import { PlugPicture } from "./plug-picture.tsx";

interface Props {
  readonly spelled: Spelled;
  readonly wide: boolean;
}

/** Where a drawing of pins has its dots and its plugs. */
interface Layout {
  readonly width: number;
  readonly scale: number;
  /** From the edge. */
  readonly dot: number;
  /** Pins by their numbers alone. */
  readonly brief?: boolean;
}

const layouts = {
  wide: { width: 552, scale: 1.05, dot: 224 },
  narrow: { width: 390, scale: 0.66, dot: 156, brief: true },
} as const satisfies Readonly<Record<string, Layout>>;

const row = 30;
const between = 22;

/** The contacts of some ends down one side, with a gap between one end and the next. */
function rowsOf(ends: readonly PinEnd[]): readonly { end: PinEnd; contact: Contact; y: number }[] {
  let y = 20;
  return ends.flatMap((end) => {
    const rows = end.contacts.map((contact, index) => ({ end, contact, y: y + index * row }));
    y += Math.max(end.contacts.length, 2) * row + between;
    return rows;
  });
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
      <Side rows={left} ends={west} layout={layout} facing="west" wires={wires} />
      <Side rows={right} ends={east} layout={layout} facing="east" wires={wires} />
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

interface SideProps {
  readonly rows: ReturnType<typeof rowsOf>;
  readonly ends: readonly PinEnd[];
  readonly layout: Layout;
  readonly facing: "west" | "east";
  readonly wires: readonly PinWire[];
}

/** The ends at one side: each plug with its contacts beside it. */
function Side({
  rows,
  ends,
  layout: { width, scale, dot, brief = false },
  facing,
  wires,
}: SideProps) {
  const west = facing === "west";
  const x = (from: number) => (west ? from : width - from);
  return (
    <>
      {rows.map(({ end, contact, y }) => (
        <g key={`${end.name} ${contact}`}>
          <circle class="pin" cx={x(dot)} cy={y} r="5" />
          <text class="gets" x={x(dot - 12)} y={y + 5} text-anchor={west ? "end" : "start"}>
            {brief && end.kind === "XLR" ? contact : english.patching.contact(contact, end.kind)}
          </text>
        </g>
      ))}
      {ends.map((end) => {
        const own = rows.filter((one) => one.end === end);
        const middle = ((own[0]?.y ?? 0) + (own.at(-1)?.y ?? 0)) / 2;
        return (
          <g key={end.name}>
            {end.goesInto && (
              <text
                class="goes-into"
                x={x(4)}
                y={middle - 26 * scale}
                text-anchor={west ? "start" : "end"}
              >
                {end.goesInto.socket}
              </text>
            )}
            <EndPicture
              end={end}
              tip={[x(3), middle]}
              facing={facing}
              scale={scale}
              on={(contact) => shownAt(wires, end.name, contact)}
            />
          </g>
        );
      })}
    </>
  );
}

/** What a contact carries, by the wires that meet there. */
const shownAt = (wires: readonly PinWire[], name: string, contact: Contact): Shown | undefined =>
  wires.find(({ from, to }) =>
    [from, to].some((one) => one.end === name && one.contact === contact),
  )?.shown;

interface EndProps {
  readonly end: PinEnd;
  readonly tip: readonly [x: number, y: number];
  readonly facing: "west" | "east";
  readonly scale: number;
  readonly on: (contact: Contact) => Shown | undefined;
}

function EndPicture({ end, tip: [x, y], facing, scale, on }: EndProps) {
  if (!end.isSocket)
    return (
      <PlugPicture
        kind={end.kind}
        size={end.size}
        tip={[x, y]}
        facing={facing}
        scale={scale}
        on={on}
      />
    );
  const length = 70 * scale;
  return (
    <>
      <rect
        class="barrel"
        x={facing === "west" ? x : x - length}
        y={y - 15}
        width={length}
        height="30"
        rx="5"
      />
      <circle
        class="hole"
        cx={x + (facing === "west" ? 11 : -11)}
        cy={y}
        r={end.size === "3.5 mm" ? 4 : 7}
      />
    </>
  );
}
