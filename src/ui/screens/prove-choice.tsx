import type { PartKind } from "#core/parts/catalogue.ts";
import { kindsWith, type LeadEnd, leadEnds } from "#core/proving/ends.ts";
import { english } from "#core/words/english.ts";
import { LeadEndPicture } from "#ui/parts/end-picture.tsx";
import { leadPins } from "#ui/parts/lead-pins.ts";
import { PinDrawing } from "#ui/parts/pin-drawing.tsx";
import type { Spelled } from "#ui/parts/pins.ts";
import { Roving } from "#ui/parts/roving.tsx";
import { Tape } from "#ui/parts/tape.tsx";
import { Heading } from "./frame.tsx";
import { proving } from "./prove-begun.ts";
import { ProveHow } from "./prove-how.tsx";
import type { LeadSaid } from "./prove-said.ts";
import { endWords } from "./prove-words.ts";
import type { Held } from "./use-page.ts";

interface Props {
  readonly held: Held;
  readonly lead: LeadSaid;
}

/** What lies on the bench, asked one thing at a time: both ends, what it should be, and how it is to be proved. */
export function ProveChoice({ held, lead }: Props) {
  const say = (more: LeadSaid) => held.show({ screen: "prove", lead: { ...lead, ...more } });
  const { one, other, kind } = lead;
  if (kind !== undefined) return <ProveHow held={held} lead={lead} kind={kind} />;
  if (one === undefined) return <EndChoice key="one" onChoose={(end) => say({ one: end })} />;
  if (other === undefined)
    return <EndChoice key="other" one={one} onChoose={(end) => say({ other: end })} />;
  const tell = (like: PartKind) =>
    held.change((page) =>
      proving(page, { one, other, kind: like, unknown: true, by: "meter" }, held.edges.now()),
    );
  return <KindChoice one={one} other={other} onChoose={say} onTell={tell} />;
}

interface EndProps {
  /** What is at the other end. */
  readonly one?: LeadEnd;
  readonly onChoose: (end: LeadEnd) => void;
}

function EndChoice({ one, onChoose }: EndProps) {
  const shown = leadEnds.filter((end) => one === undefined || kindsWith(one, end).length > 0);
  return (
    <section class="prove">
      {one && <Tape>{endWords[one].name}</Tape>}
      <Heading>{one === undefined ? "What is at one end?" : "And at its other end?"}</Heading>
      <p class="hint">
        {one === undefined
          ? "Take the lead out of everything, and point at the end in your hand. A jack may be of either size."
          : "Point at what it looks like."}
      </p>
      <Roving label={one === undefined ? "one end" : "the other end"} kind="picks ends">
        {shown.map((end) => (
          <button key={end} type="button" class="pick" onClick={() => onChoose(end)}>
            <LeadEndPicture end={end} />
            <span class="tape">{endWords[end].name}</span>
            <span class="note">{endWords[end].note}</span>
          </button>
        ))}
      </Roving>
    </section>
  );
}

interface KindProps {
  readonly one: LeadEnd;
  readonly other: LeadEnd;
  readonly onChoose: (said: LeadSaid) => void;
  /** Of one that nobody knows, with a kind to begin with. */
  readonly onTell: (kind: PartKind) => void;
}

/** Every lead with these ends, each as it is soldered; or whatever it is. */
function KindChoice({ one, other, onChoose, onTell }: KindProps) {
  const kinds = kindsWith(one, other);
  const [first] = kinds;
  return (
    <section class="prove">
      <Tape>{`${endWords[one].name} to ${endWords[other].name}`}</Tape>
      <Heading>What should it be?</Heading>
      <p class="hint">Contact to contact, as it is meant.</p>
      <Roving label="what it should be" kind="picks kinds">
        {kinds.map((kind) => (
          <KindPick
            key={kind}
            spelled={leadPins(kind)}
            words={english.patching.kinds[kind]}
            onPress={() => onChoose({ kind })}
          />
        ))}
        {first && (
          <KindPick
            spelled={{ ...leadPins(first), wires: [] }}
            words={{
              name: "tell me what this is",
              note: "With a multimeter: a reading at a time.",
            }}
            onPress={() => onTell(first)}
          />
        )}
      </Roving>
    </section>
  );
}

interface PickProps {
  readonly spelled: Spelled;
  readonly words: { readonly name: string; readonly note: string };
  readonly onPress: () => void;
}

const KindPick = ({ spelled, words: { name, note }, onPress }: PickProps) => (
  <button type="button" class="pick" onClick={onPress}>
    <PinDrawing spelled={spelled} wide={false} />
    <span class="tape">{name}</span>
    <span class="note">{note}</span>
  </button>
);
