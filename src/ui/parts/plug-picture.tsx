import type { Contact, JackSize, PlugKind } from "#core/parts/plugs.ts";
import { nothing, type Shown } from "./content.ts";

/** A contact as a piece of metal along a plug, from its tip. */
interface Metal {
  readonly contact: Contact;
  readonly from: number;
  readonly to: number;
  /** Half of its thickness, and how far aside of the plug's middle. */
  readonly half: number;
  readonly aside?: number;
}

const jack = (half: number, ...contacts: readonly [Contact, number, number][]): readonly Metal[] =>
  contacts.map(([contact, from, to]) => ({ contact, from, to, half }));

const metals: Readonly<Record<PlugKind, (half: number) => readonly Metal[]>> = {
  TS: (half) => jack(half, ["tip", 0, 17], ["sleeve", 21, 52]),
  TRS: (half) => jack(half, ["tip", 0, 15], ["ring", 18, 31], ["sleeve", 34, 52]),
  TRRS: (half) =>
    jack(half, ["tip", 0, 13], ["ring", 16, 25], ["ring 2", 28, 37], ["sleeve", 40, 52]),
  XLR: () => [
    { contact: "pin 2", from: 0, to: 26, half: 3, aside: -9 },
    { contact: "pin 1", from: 0, to: 26, half: 3, aside: 0 },
    { contact: "pin 3", from: 0, to: 26, half: 3, aside: 9 },
  ],
  RCA: () => [
    { contact: "tip", from: 0, to: 24, half: 4 },
    { contact: "sleeve", from: 12, to: 30, half: 11, aside: 0 },
  ],
  link: () => [],
};

/** Where a probe meets a contact of a plug that looks to the west: along from its tip, and aside of its middle. */
export function contactSpot(
  kind: PlugKind,
  contact: Contact,
): readonly [along: number, aside: number] {
  const metal = metals[kind](7.5).find((one) => one.contact === contact);
  if (metal === undefined) throw new RangeError(`a ${kind} plug has no ${contact}`);
  const { from, to, half, aside = 0 } = metal;
  // The shell of an RCA stands before its pin: it is touched at its rim.
  return contact === "sleeve" && kind === "RCA" ? [to - 6, half] : [(from + to) / 2, aside];
}

interface Props {
  readonly kind: PlugKind;
  readonly size?: JackSize | undefined;
  readonly tip: readonly [x: number, y: number];
  /** Where the tip looks. */
  readonly facing: "west" | "east";
  readonly scale?: number;
  /** What is on each contact; left out, a contact is bare. */
  readonly on?: ((contact: Contact) => Shown | undefined) | undefined;
  readonly inHand?: boolean;
}

/** A plug with its contacts, and on each what it carries: left filled, right an outline, both as halves of the two. */
export function PlugPicture({ kind, size, tip, facing, scale = 1, on, inHand = false }: Props) {
  const small = size === "3.5 mm";
  const flip = facing === "west" ? scale : -scale;
  const half = small ? 5 : 7.5;
  return (
    <g
      class={inHand ? "plug in-hand" : "plug"}
      transform={`translate(${tip.join(" ")}) scale(${flip} ${scale})`}
    >
      {kind === "link" ? <Waves /> : <Body kind={kind} half={half} />}
      {metals[kind](half).map((metal) => (
        <Piece key={metal.contact} metal={metal} shown={on?.(metal.contact)} />
      ))}
    </g>
  );
}

/** Where the metal ends and the barrel begins, of what is no jack. */
const barrels: Readonly<Partial<Record<PlugKind, string>>> = {
  XLR: "M44 -15H82V15H44Z",
  RCA: "M30 -12H86V12H30Z",
};

/** What a hand holds: the barrel, the boot, and of an XLR the shell round its pins. */
const Body = ({ kind, half }: { readonly kind: PlugKind; readonly half: number }) => (
  <>
    {kind === "XLR" && <path class="shell" d="M8 -17H44V17H8Z" />}
    {kind === "RCA" || kind === "XLR" ? null : (
      <path class="insulator" d={`M2 ${-half + 1.5}H52V${half - 1.5}H2Z`} />
    )}
    <path class="barrel" d={barrels[kind] ?? "M52 -12H86V12H52Z"} />
    <path class="barrel" d="M84 -6L98 -4V4L84 6Z" />
  </>
);

/** Radio or a digital link: no metal at all. */
const Waves = () => (
  <path class="waves" d="M18 -12Q30 0 18 12M34 -18Q52 0 34 18M50 -24Q74 0 50 24" />
);

function Piece({
  metal,
  shown = nothing,
}: {
  readonly metal: Metal;
  readonly shown?: Shown | undefined;
}) {
  const { from, to, half, aside = 0, contact } = metal;
  const box = {
    x: from,
    y: aside - half,
    width: to - from,
    height: 2 * half,
    rx: contact === "tip" ? Math.min(half, 6) : 1.5,
  };
  if (shown.carries === "nothing") return <rect class="contact" {...box} />;
  return (
    <>
      <rect class={`contact ${shown.carries === "right" ? "right" : "left"}`} {...box} />
      {shown.carries === "both" && (
        <rect class="contact right" {...box} y={aside} height={half} rx={1} />
      )}
      {shown.inverted && <path class="minus" d={`M${(from + to) / 2 - 4} ${aside}h8`} />}
    </>
  );
}
