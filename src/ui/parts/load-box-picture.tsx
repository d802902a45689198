import { type Contact, contactsOf, type PlugKind } from "#core/parts/plugs.ts";
import { useWords } from "#ui/words/use-words.ts";
import { isSignal } from "./content.ts";

interface Props {
  /** The plug that goes into the box. */
  readonly plug: PlugKind;
}

const rows = [46, 112] as const;
const foot = 178;
const star = 330;

/** A load box opened up: from each signal contact a resistor to a point that hangs on nothing but the return, and what reads each. */
export function LoadBoxPicture({ plug }: Props) {
  const { marks, proveBench } = useWords();
  const signals = contactsOf(plug).filter(isSignal);
  const back = contactsOf(plug).find((contact) => !isSignal(contact)) ?? "sleeve";
  const used = rows.slice(0, signals.length);
  const low = signals.length === 1 ? rows[1] : foot;
  return (
    <svg
      class="load-box-picture"
      viewBox={`0 0 600 ${low + 36}`}
      role="img"
      aria-label={proveBench.loadBox.label(signals.map(marks.contact), marks.contact(back))}
    >
      <path class="wire" d={`M120 ${low}H${star}M${star} ${low}V${used[0]}`} />
      {signals.map((contact, at) => (
        <Load key={contact} contact={contact} plug={plug} y={rows[at] ?? 0} input={at + 1} />
      ))}
      <Terminal contact={back} plug={plug} y={low} />
      <circle class="knot" cx={star} cy={low} r="6" />
    </svg>
  );
}

interface TerminalProps {
  readonly contact: Contact;
  readonly plug: PlugKind;
  readonly y: number;
}

/** A contact of the socket, by name. */
function Terminal({ contact, plug, y }: TerminalProps) {
  const { patching } = useWords().language;
  return (
    <>
      <circle class="pin" cx="120" cy={y} r="5" />
      <text class="gets" x="108" y={y + 5} text-anchor="end">
        {patching.contact(contact, plug)}
      </text>
    </>
  );
}

/** One resistor, and the input across it: hot before it, cold behind it. */
function Load({ contact, plug, y, input }: TerminalProps & { readonly input: number }) {
  const { hot, cold } = useWords().proveBench.loadBox;
  return (
    <>
      <path class="wire" d={`M120 ${y}H${star}M180 ${y}V${y - 26}H470M${star} ${y}H470`} />
      <path class="wire bed" d={`M${star - 9} ${y - 26}H${star + 9}`} />
      <path class="wire" d={`M${star - 9} ${y - 26}H${star + 9}`} />
      <rect class="resistor" x="222" y={y - 10} width="64" height="20" rx="3" />
      <text class="gets" x="254" y={y + 5} text-anchor="middle">
        33 Ω
      </text>
      <circle class="knot" cx="180" cy={y} r="4" />
      <circle class="knot" cx={star} cy={y} r="4" />
      <rect class="box" x="470" y={y - 40} width="122" height="54" rx="4" />
      <text class="gets" x="482" y={y - 20}>
        {hot(input)}
      </text>
      <text class="gets" x="482" y={y + 5}>
        {cold}
      </text>
      <Terminal contact={contact} plug={plug} y={y} />
    </>
  );
}
