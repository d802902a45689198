import { useMemo } from "preact/hooks";
import type { FaultName } from "#core/parts/fault-names.ts";
import { sidesOf } from "#core/proving/ends.ts";
import { leadId, leadRig } from "#core/proving/lead-rig.ts";
import { wiringOf } from "#core/proving/wiring.ts";
import { type BuiltRig, build } from "#core/rig/rig.ts";
import { type RigFault, rigFaults } from "#core/rig/rig-faults.ts";
import { KindPicture } from "./kind-picture.tsx";
import { LeadDrawing } from "./lead-drawing.tsx";
import { leadPins } from "./lead-pins.ts";
import { PlugPicture } from "./plug-picture.tsx";

interface Props {
  readonly rig: BuiltRig;
  readonly fault: RigFault;
  /** What the hand is sent to, where that is another part than the fault's. */
  readonly place?: string | undefined;
  readonly wide: boolean;
  /** What the drawing of a lead shows, in words. */
  readonly label: string;
}

/** The repair, drawn: what a hand does, or which wire of a lead is wrong. It tells nothing that the words beside it do not. */
export function MendPicture({ rig, fault, place = fault.place, wide, label }: Props) {
  const wired = useMemo(() => wiresOf(rig, fault), [rig, fault]);
  const elsewhere = place === fault.place ? undefined : rig.parts.find(({ id }) => id === place);
  if (elsewhere !== undefined) return <AnotherOne part={elsewhere} />;
  if (wired !== undefined) return <LeadDrawing {...wired} wide={wide} label={label} />;
  const part = rig.parts.find(({ id }) => id === fault.part);
  const [edit] = fault.edits;
  switch (edit?.edit) {
    case "depth":
      return <PushedHome rig={rig} fault={fault} plug={edit.plug} />;
    case "socket":
      return <OtherSocket rig={rig} fault={fault} plug={edit.plug} />;
    case "control":
      if (edit.control === "worn") return <TurnedRound />;
      return turned.has(fault.name) ? <Turned /> : <Switched />;
    default:
      return part === undefined ? null : <AnotherOne part={part} />;
  }
}

/** What is turned or slid back from where it stands; all other controls are pressed or chosen. */
const turned: ReadonlySet<FaultName> = new Set([
  "volume down",
  "balance hard left",
  "balance hard right",
  "balance far to the left",
  "balance far to the right",
  "balance off to the left",
  "balance off to the right",
  "monitor knob down",
  "direct monitor turned to the inputs",
  "left panned to the middle",
  "right panned to the middle",
  "both channels panned to the middle",
  "left panned hard right",
  "right panned hard left",
  "both channels panned left",
  "both channels panned right",
  "left channel down",
  "right channel down",
  "main fader down",
  "send knob down",
  "width turned up",
  "width at nothing",
  "volume knob uneven, left weaker",
  "volume knob uneven, right weaker",
] as const);

/** A lead with the fault in it, pin by pin; nothing where it is no lead with two ends or the fault is none of its wires. */
function wiresOf(rig: BuiltRig, { part: id, at, name }: RigFault) {
  const part = rig.parts.find((one) => one.id === id);
  if (part === undefined || sidesOf(part.kind, part.settings) === undefined) return undefined;
  const { kind, settings } = part;
  const bench = build(leadRig({ kind, by: "meter", ...(settings ? { settings } : {}) }));
  const same = rigFaults(bench).find(
    (one) => one.part === leadId && one.at === at && one.name === name && !one.comesAndGoes,
  );
  const wires = same ? wiringOf(bench, [same]) : [];
  if (wires.every(({ state }) => state === "as intended")) return undefined;
  return {
    spelled: leadPins(kind, settings),
    wires: wires.map(({ from, to, state, instead }) => ({
      from: instead ?? from,
      to,
      look: state,
    })),
  };
}

const plugKind = ({ part }: BuiltRig, id: string, name: string) =>
  part(id).plugs.find((plug) => plug.name === name);

interface PlugProps {
  readonly rig: BuiltRig;
  readonly fault: RigFault;
  readonly plug: string;
}

/** A hole in the wall of a box. */
const Hole = ({ y }: { readonly y: number }) => (
  <path class="box" d={`M6 ${y - 26}H26V${y + 26}H6Z`} />
);

/** A plug that stands out, and the way it goes. */
function PushedHome({ rig, fault, plug }: PlugProps) {
  const found = plugKind(rig, fault.part, plug);
  if (found === undefined) return null;
  return (
    <svg class="mend-picture" viewBox="0 0 260 90" aria-hidden="true">
      <PlugPicture kind={found.kind} size={found.size} tip={[34, 50]} facing="west" scale={1.3} />
      <Hole y={50} />
      <path class="said-over" d="M214 18H150M150 18l14 -9M150 18l14 9" />
    </svg>
  );
}

/** A plug in one of two holes, and the other where it belongs. */
function OtherSocket({ rig, fault, plug }: PlugProps) {
  const found = plugKind(rig, fault.part, plug);
  if (found === undefined) return null;
  return (
    <svg class="mend-picture" viewBox="0 0 260 140" aria-hidden="true">
      <PlugPicture kind={found.kind} size={found.size} tip={[20, 38]} facing="west" scale={1.2} />
      <Hole y={38} />
      <Hole y={104} />
      <path class="said-over" d="M150 62C150 100 110 104 42 104M42 104l14 -9M42 104l14 9" />
    </svg>
  );
}

/** A switch that goes to its other end. */
const Switched = () => (
  <svg class="mend-picture" viewBox="0 0 260 90" aria-hidden="true">
    <path class="box" d="M60 32H200V68H60Z" />
    <path class="was" d="M66 38H116V62H66Z" />
    <path class="now" d="M144 38H194V62H144Z" />
    <path class="said-over" d="M92 18C110 6 150 6 168 18M168 18l-16 -4M168 18l-6 -14" />
  </svg>
);

/** A knob from where it stands to where it belongs. */
const Turned = () => (
  <svg class="mend-picture" viewBox="0 0 260 110" aria-hidden="true">
    <circle class="box" cx="130" cy="66" r="32" />
    <path class="was" d="M130 66L105 46" />
    <path class="said-over" d="M130 66V38" />
    <path class="said-over" d="M84 40C92 22 108 12 126 12M126 12l-14 -8M126 12l-12 10" />
  </svg>
);

/** Headphones from above, turned half round. */
const TurnedRound = () => (
  <svg class="mend-picture" viewBox="0 0 260 120" aria-hidden="true">
    <ellipse class="box" cx="130" cy="62" rx="32" ry="40" />
    <path class="box" d="M124 23Q130 12 136 23" />
    <rect class="cup left" x="84" y="46" width="14" height="32" rx="6" />
    <rect class="cup right" x="162" y="46" width="14" height="32" rx="6" />
    <path class="said-over" d="M74 34C90 4 170 4 186 34M186 34l-3 -17M186 34l-15 -9" />
    <path class="said-over" d="M186 92C170 120 90 120 74 92M74 92l3 17M74 92l15 9" />
  </svg>
);

/** One thing out, one of its kind in. */
const AnotherOne = ({ part: { kind } }: { readonly part: BuiltRig["parts"][number] }) => (
  <div class="mend-picture pair" aria-hidden="true">
    <span class="out">
      <KindPicture kind={kind} />
    </span>
    <svg class="arrow" viewBox="0 0 60 64" aria-hidden="true">
      <path class="said-over" d="M6 32H52M52 32l-14 -9M52 32l-14 9" />
    </svg>
    <KindPicture kind={kind} />
  </div>
);
