import type { Look } from "#core/checks/look.ts";
import { seenWords } from "#core/report/fault-words.ts";
import { placeName, seatName } from "#core/report/names.ts";
import { clientId } from "#core/rig/rig.ts";
import type { Language } from "#core/words/language.ts";
import { faultById } from "#ui/parts/fault-by-id.ts";
import { lookAnswers } from "#ui/parts/look-answers.ts";
import { Tape } from "#ui/parts/tape.tsx";
import { useWords } from "#ui/words/use-words.ts";
import { Meant } from "./complaint-meant.tsx";
import { Heading } from "./frame.tsx";
import type { AtPosition } from "./position-screen.tsx";
import type { Ready } from "./ready.ts";
import { WayPicture } from "./way-picture.tsx";

type Props = AtPosition & { readonly place: string };

/** Go and look: a place, and the closed list of what may be seen there. */
export function LookScreen(props: Props) {
  const { model } = props.ready.derived;
  const look = model.looks.find((one) => one.place === props.place);
  if (look === undefined) return null;
  return props.place === clientId ? (
    <Meant {...props} look={look} />
  ) : (
    <Sights {...props} look={look} />
  );
}

function Sights({
  held: { enter },
  ready,
  position,
  place,
  look,
}: Props & { readonly look: Look }) {
  const { language, asking } = useWords();
  const { model, rig } = ready.derived;
  const answers = [
    ...lookAnswers(
      language,
      model.rig,
      look,
      model.branches.flatMap(({ faults }) => faults),
    ),
    { label: asking.cannotTell, means: look.answers },
  ];
  const enterSight = (means: readonly string[]) =>
    enter({ entry: "finding", finding: { asked: { check: "look", place }, results: [means] } });
  return (
    <section class="look">
      <Tape>{seatName(rig, position)}</Tape>
      <Heading>{asking.look.at(placeName(language, model.rig, place))}</Heading>
      <p class="hint">{asking.look.hint}</p>
      <WayPicture rig={model.rig} position={position} place={place} />
      {ready.bench && (
        <p class="you-see">{asking.look.bench(benchSight(language, ready, place))}</p>
      )}
      <ul class="sights">
        {answers.map(({ label, means }) => (
          <li key={label}>
            <button type="button" class="sight" onClick={() => enterSight(means)}>
              {label}
            </button>
          </li>
        ))}
      </ul>
    </section>
  );
}

/** What a player of the bench would see there. */
function benchSight(
  language: Language,
  { bench, derived: { model, evidence } }: Ready,
  place: string,
): string {
  const [seen] = bench?.seen(place, evidence.era.course.moves) ?? [];
  const fault = seen === undefined ? undefined : faultById(model, seen);
  return fault === undefined ? language.asItShouldBe : seenWords(language, model.rig, fault);
}
