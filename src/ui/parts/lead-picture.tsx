import { catalogue } from "#core/parts/catalogue.ts";
import type { JackSize, PlugKind } from "#core/parts/plugs.ts";
import type { RigPart } from "#core/rig/rig.ts";
import { PlugPicture } from "./plug-picture.tsx";

interface End {
  readonly kind: PlugKind;
  readonly size: JackSize | undefined;
  readonly socket: boolean;
}

/** What a lead or adapter has at its two sides: one end, and all the others; four ends are two and two. */
function sidesOf({ kind, settings }: RigPart): readonly [readonly End[], readonly End[]] {
  const { plugs, sockets } = catalogue[kind].make(settings);
  const ends: readonly End[] = [
    ...plugs.map((plug) => ({ kind: plug.kind, size: plug.size, socket: false })),
    ...sockets.map(({ size }) => ({ kind: "TRS" as const, size, socket: true })),
  ];
  const names = plugs.map(({ name }) => name);
  if (ends.length === 4) return [ends.slice(0, 2), ends.slice(2)];
  const single = Math.max(names.indexOf("stem"), 0);
  return [ends.filter((_, index) => index === single), ends.filter((_, index) => index !== single)];
}

/** Leads and adapters as what they look like in a hand: plugs and sockets at their ends. */
export const LeadPicture = ({ wires }: { readonly wires: readonly RigPart[] }) => (
  <svg
    class="lead-picture"
    viewBox={`0 0 220 ${Math.max(wires.length, 1) * 64}`}
    aria-hidden="true"
  >
    {wires.map((part, index) => (
      <g key={part.id} transform={`translate(0 ${index * 64})`}>
        <One part={part} />
      </g>
    ))}
    {wires.length === 0 && <path class="cord" d="M20 32H200" />}
  </svg>
);

const levels = (count: number): readonly number[] =>
  Array.from({ length: Math.min(count, 2) }, (_, index) => (count < 2 ? 32 : 15 + index * 34));

function One({ part }: { readonly part: RigPart }) {
  const [west, east] = sidesOf(part);
  const [first, second] = [levels(west.length), levels(east.length)];
  return (
    <>
      {first.flatMap((y) =>
        second
          .filter((_, index) => first.length < 2 || first.indexOf(y) === index)
          .map((to) => (
            <path key={`${y} ${to}`} class="cord" d={`M76 ${y}C112 ${y} 108 ${to} 144 ${to}`} />
          )),
      )}
      {first.map((y, index) => (
        <Tip key={y} end={west[index]} x={4} y={y} facing="west" />
      ))}
      {second.map((y, index) => (
        <Tip key={y} end={east[index]} x={216} y={y} facing="east" />
      ))}
    </>
  );
}

interface TipProps {
  readonly end: End | undefined;
  readonly x: number;
  readonly y: number;
  readonly facing: "west" | "east";
}

function Tip({ end, x, y, facing }: TipProps) {
  if (end === undefined) return null;
  if (!end.socket)
    return (
      <PlugPicture kind={end.kind} size={end.size} tip={[x, y]} facing={facing} scale={0.78} />
    );
  const from = facing === "west" ? x : x - 64;
  return (
    <>
      <rect class="barrel" x={from} y={y - 12} width="64" height="24" rx="4" />
      <circle
        class="hole"
        cx={x + (facing === "west" ? 9 : -9)}
        cy={y}
        r={end.size === "3.5 mm" ? 4 : 6.5}
      />
    </>
  );
}
