import type { PartKind } from "#core/parts/catalogue.ts";
import { kindsWith, type LeadEnd, leadEnds } from "#core/proving/ends.ts";
import { LeadEndPicture } from "#ui/parts/end-picture.tsx";
import { leadPins } from "#ui/parts/lead-pins.ts";
import { PinDrawing } from "#ui/parts/pin-drawing.tsx";
import type { Spelled } from "#ui/parts/pins.ts";
import { Roving } from "#ui/parts/roving.tsx";
import { Tape } from "#ui/parts/tape.tsx";
import { useWords } from "#ui/words/use-words.ts";
import { Heading } from "./frame.tsx";
import { proving } from "./prove-begun.ts";
import { ProveHow } from "./prove-how.tsx";
import type { LeadSaid } from "./prove-said.ts";
import type { Held } from "./use-page.ts";

interface Props {
  readonly held: Held;
  readonly lead: LeadSaid;
}

/** What lies on the bench, asked one thing at a time: both ends, what it should be, and how it is to be proved. */
export function ProveChoice({ held, lead }: Props) {
  const { you } = useWords().prove;
  const say = (more: LeadSaid) => held.show({ screen: "prove", lead: { ...lead, ...more } });
  const { one, other, kind } = lead;
  if (kind !== undefined) return <ProveHow held={held} lead={lead} kind={kind} />;
  if (one === undefined) return <EndChoice key="one" onChoose={(end) => say({ one: end })} />;
  if (other === undefined)
    return <EndChoice key="other" one={one} onChoose={(end) => say({ other: end })} />;
  const tell = (like: PartKind) =>
    held.change((page) =>
      proving(page, { one, other, kind: like, unknown: true, by: "meter" }, you, held.edges.now()),
    );
  return <KindChoice one={one} other={other} onChoose={say} onTell={tell} />;
}

interface EndProps {
  /** What is at the other end. */
  readonly one?: LeadEnd;
  readonly onChoose: (end: LeadEnd) => void;
}

function EndChoice({ one, onChoose }: EndProps) {
  const { choice, ends } = useWords().prove;
  const asks = one === undefined ? choice.one : choice.other;
  const shown = leadEnds.filter((end) => one === undefined || kindsWith(one, end).length > 0);
  return (
    <section class="prove">
      {one && <Tape>{ends[one].name}</Tape>}
      <Heading>{asks.title}</Heading>
      <p class="hint">{asks.hint}</p>
      <Roving label={asks.label} kind="picks ends">
        {shown.map((end) => (
          <button key={end} type="button" class="pick" onClick={() => onChoose(end)}>
            <LeadEndPicture end={end} />
            <span class="tape">{ends[end].name}</span>
            <span class="note">{ends[end].note}</span>
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
  const { language, prove } = useWords();
  const { choice, ends } = prove;
  const kinds = kindsWith(one, other);
  const [first] = kinds;
  return (
    <section class="prove">
      <Tape>{choice.ends(ends[one].name, ends[other].name)}</Tape>
      <Heading>{choice.kind}</Heading>
      <p class="hint">{choice.kindHint}</p>
      <Roving label={choice.kindLabel} kind="picks kinds">
        {kinds.map((kind) => (
          <KindPick
            key={kind}
            spelled={leadPins(kind)}
            words={language.patching.kinds[kind]}
            onPress={() => onChoose({ kind })}
          />
        ))}
        {first && (
          <KindPick
            spelled={{ ...leadPins(first), wires: [] }}
            words={choice.unknown}
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
