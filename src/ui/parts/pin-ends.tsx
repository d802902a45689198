import type { Contact } from "#core/parts/plugs.ts";
import { useWords } from "#ui/words/use-words.ts";
import type { Shown } from "./content.ts";
import type { PinEnd, PinWire } from "./pins.ts";
import { PlugPicture } from "./plug-picture.tsx";

/** Where a drawing of pins has its dots and its plugs. */
export interface Layout {
  readonly width: number;
  readonly scale: number;
  /** From the edge. */
  readonly dot: number;
  /** Pins by their numbers alone. */
  readonly brief?: boolean;
}

export const layouts = {
  wide: { width: 552, scale: 1.05, dot: 224 },
  narrow: { width: 390, scale: 0.66, dot: 156, brief: true },
} as const satisfies Readonly<Record<string, Layout>>;

const row = 30;
const between = 22;

/** A contact beside its plug, and how far down. */
export interface PinRow {
  readonly end: PinEnd;
  readonly contact: Contact;
  readonly y: number;
}

/** The contacts of some ends down one side, with a gap between one end and the next. */
export function rowsOf(ends: readonly PinEnd[]): readonly PinRow[] {
  let y = 20;
  return ends.flatMap((end) => {
    const rows = end.contacts.map((contact, index) => ({ end, contact, y: y + index * row }));
    y += Math.max(end.contacts.length, 2) * row + between;
    return rows;
  });
}

interface PinEndsProps {
  readonly rows: readonly PinRow[];
  readonly ends: readonly PinEnd[];
  readonly layout: Layout;
  readonly facing: "west" | "east";
  readonly wires: readonly PinWire[];
}

/** The ends at one side: each plug with its contacts beside it. */
export function PinEnds({
  rows,
  ends,
  layout: { width, scale, dot, brief = false },
  facing,
  wires,
}: PinEndsProps) {
  const { language, marks } = useWords();
  const west = facing === "west";
  const x = (from: number) => (west ? from : width - from);
  return (
    <>
      {rows.map(({ end, contact, y }) => (
        <g key={`${end.name} ${contact}`}>
          <circle class="pin" cx={x(dot)} cy={y} r="5" />
          <text class="gets" x={x(dot - 12)} y={y + 5} text-anchor={west ? "end" : "start"}>
            {brief && end.kind === "XLR"
              ? marks.contact(contact)
              : language.patching.contact(contact, end.kind)}
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
                {marks.socket(end.goesInto.socket)}
              </text>
            )}
            {ends.length > 1 && !end.goesInto && (
              <SideLetter name={end.name} x={x(68 * scale)} y={middle - 21 * scale} />
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

/** Which of two plugs it is, where they are told apart by side. */
function SideLetter({ name, x, y }: { readonly name: string } & Record<"x" | "y", number>) {
  const side = /(left|right)$/.exec(name)?.[0];
  if (side === undefined) return null;
  return (
    <text class={`letter ${side}`} x={x} y={y} text-anchor="middle">
      {side === "left" ? "L" : "R"}
    </text>
  );
}

/** What a contact carries, by the wires that meet there. */
const shownAt = (wires: readonly PinWire[], name: string, contact: Contact): Shown | undefined =>
  wires.find(({ from, to }) =>
    [from, to].some((one) => one.end === name && one.contact === contact),
  )?.shown;

interface EndPictureProps {
  readonly end: Pick<PinEnd, "kind" | "size" | "isSocket">;
  readonly tip: readonly [x: number, y: number];
  readonly facing: "west" | "east";
  readonly scale: number;
  readonly on?: (contact: Contact) => Shown | undefined;
}

/** A plug, or an in-line socket. */
export function EndPicture({ end, tip: [x, y], facing, scale, on }: EndPictureProps) {
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
