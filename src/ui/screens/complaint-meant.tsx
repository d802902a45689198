import { asItShouldBe, type Look, sightOf } from "#core/checks/look.ts";
import type { FaultName } from "#core/parts/fault-names.ts";
import type { Want } from "#core/patching/wants.ts";
import { seatName } from "#core/report/names.ts";
import { sentence } from "#core/report/phrases.ts";
import type { BuiltRig } from "#core/rig/rig.ts";
import type { RigFault } from "#core/rig/rig-faults.ts";
import { mendText } from "#core/words/fault-text.ts";
import { Point } from "#ui/parts/complaint-point.tsx";
import { Roving } from "#ui/parts/roving.tsx";
import { Tape } from "#ui/parts/tape.tsx";
import { WantPicture } from "#ui/parts/want-picture.tsx";
import { useWords } from "#ui/words/use-words.ts";
import { Heading } from "./frame.tsx";
import type { AtPosition } from "./position-screen.tsx";

const wantOf: Readonly<Partial<Record<FaultName, Want>>> = {
  "mono is meant": "mono in both ears",
  "left ear alone is meant": "left ear only",
  "right ear alone is meant": "right ear only",
};

type Props = AtPosition & { readonly look: Look };

/** Is it meant to be like that? Asked of whoever ordered the feed, before it is called a fault. */
export function Meant({ held: { enter }, ready: { bench, derived }, position, look }: Props) {
  const { language, asking } = useWords();
  const { look: words } = asking;
  const { model, rig } = derived;
  const { place } = look;
  const answer = (means: readonly string[]) =>
    enter({ entry: "finding", finding: { asked: { check: "look", place }, results: [means] } });
  const ordered = model.branches
    .flatMap(({ faults }) => faults)
    .filter((fault) => fault.place === place);
  return (
    <section class="look meant">
      <Tape>{seatName(rig, position)}</Tape>
      <Heading>{words.meant}</Heading>
      <p class="hint">{words.askClient(language.client)}</p>
      {bench && <p class="you-see">{words.bench(language.asOrdered)}</p>}
      <Roving label={words.meant} kind="points">
        <Point onPress={() => answer([asItShouldBe])}>
          <WantPicture want="stereo" />
          <span>{language.asOrdered}</span>
        </Point>
        {ordered.map((fault) => (
          <Point key={fault.id} onPress={() => answer([sightOf(fault)])}>
            <WantPicture want={wantOf[fault.name] ?? "stereo"} />
            <span>{language.faults[fault.name].seen}</span>
          </Point>
        ))}
        <Point onPress={() => answer(look.answers)}>
          <span>{asking.cannotTell}</span>
        </Point>
      </Roving>
    </section>
  );
}

interface OrderedProps {
  readonly show: AtPosition["held"]["show"];
  readonly rig: BuiltRig;
  readonly fault: RigFault;
}

/** A feed that is as it was ordered: no hand goes anywhere. */
export function Ordered({ show, rig, fault }: OrderedProps) {
  const { language, verdict } = useWords();
  return (
    <div class="next-move">
      <p class="move">{sentence(mendText(language, rig, fault))}</p>
      <button type="button" class="main" onClick={() => show({ screen: "board" })}>
        {verdict.toBoard}
      </button>
    </div>
  );
}
