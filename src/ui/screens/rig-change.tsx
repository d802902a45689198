import { useState } from "preact/hooks";
import { kindPut, partSet } from "#core/drawing/changing.ts";
import { isLead } from "#core/drawing/hanging.ts";
import type { Called } from "#core/drawing/putting.ts";
import { catalogue, type PartKind } from "#core/parts/catalogue.ts";
import type { Choice, Quantity } from "#core/parts/kind.ts";
import { ChoiceField } from "#ui/parts/choice-field.tsx";
import { KindButton } from "#ui/parts/kind-button.tsx";
import { QuantityField } from "#ui/parts/quantity-field.tsx";
import { Roving } from "#ui/parts/roving.tsx";
import { useWords } from "#ui/words/use-words.ts";
import type { AtRig } from "./rig-edit.ts";

interface Props {
  readonly at: AtRig;
  readonly part: string;
}

/** What is seen by looking at a thing, before what only its papers say. */
const plain: readonly string[] = [
  "outputs",
  "sets",
  "links",
  "input",
  "socket",
  "connector",
  "size",
  "plugSize",
  "nearSize",
  "farSize",
  "stemSize",
  "metres",
];

/** How a thing is made and set, and in a fold what else could stand in its place. */
export function RigChange({ at, part }: Props) {
  const { rig: words, plan, language } = useWords();
  const { kind } = at.built.part(part);
  const all = Object.entries(catalogue[kind].parameters);
  const field = ([name, parameter]: (typeof all)[number]) => (
    <Setting key={`${part} ${name}`} at={at} part={part} name={name} parameter={parameter} />
  );
  const seen = all.filter(([name]) => plain.includes(name));
  const rest = all.filter(([name]) => !plain.includes(name));
  return (
    <>
      {seen.map(field)}
      {rest.length > 0 && (
        <details>
          <summary>{plan.madeOf(language.patching.kinds[kind].name)}</summary>
          {rest.map(field)}
        </details>
      )}
      {!isLead(at.built, part) && (
        <details>
          <summary>{words.otherKind}</summary>
          <OtherKinds at={at} part={part} />
        </details>
      )}
    </>
  );
}

interface SettingProps extends Props {
  readonly name: string;
  readonly parameter: Quantity | Choice;
}

/** One thing said of a part: a choice is entered as it is pressed, a number by its button or Enter. */
function Setting({ at, part, name, parameter }: SettingProps) {
  const { language } = useWords();
  const label = language.patching.parameters[name] ?? name;
  const settings = at.rig.parts.find(({ id }) => id === part)?.settings;
  const value = settings?.[name] ?? parameter.typical;
  const enter = (next: number | string) =>
    at.edit((rig) => partSet(rig, part, name, next === parameter.typical ? undefined : next), {
      part,
    });
  if ("choices" in parameter)
    return <ChoiceField label={label} choice={parameter} value={value} onChoose={enter} />;
  return (
    <NumberSet
      label={label}
      quantity={parameter}
      value={Number(value)}
      onNumber={enter}
      onNonsense={at.refuseNoMore}
    />
  );
}

interface NumberProps {
  readonly label: string;
  readonly quantity: Quantity;
  readonly value: number;
  readonly onNumber: (value: number) => void;
  /** What stands in the field is refused by the field. */
  readonly onNonsense: () => void;
}

/** A number, entered as it stands in its field; what is not understood there cannot be. */
function NumberSet({ label, quantity, value, onNumber, onNonsense }: NumberProps) {
  const { rig: words } = useWords();
  const [draft, setDraft] = useState<number | undefined>(value);
  const type = (typed: number | undefined) => {
    setDraft(typed);
    if (typed === undefined) onNonsense();
  };
  return (
    <form
      class="number-set"
      onSubmit={(event) => {
        event.preventDefault();
        if (draft !== undefined && draft !== value) onNumber(draft);
      }}
    >
      <QuantityField label={label} quantity={quantity} value={value} onType={type} />
      <button type="submit" class="say" disabled={draft === undefined || draft === value}>
        {words.set}
      </button>
    </form>
  );
}

/** These give several listeners a socket each, and stand in for one another. */
const sharing: readonly PartKind[] = ["splitter", "headphone amplifier"];

/** The kinds of its family, and what else does its work, to stand in its place where their plugs fit. */
function OtherKinds({ at, part }: Props) {
  const { rig: words, language } = useWords();
  const { kind: now, family } = at.built.part(part);
  const called: Called = (kind) => language.patching.kinds[kind].name;
  const kinds = (Object.keys(catalogue) as PartKind[]).filter(
    (kind) =>
      kind !== now &&
      (catalogue[kind].family === family || [kind, now].every((one) => sharing.includes(one))),
  );
  return (
    <Roving label={words.otherKind} kind="rig-kinds">
      {kinds.map((kind) => (
        <KindButton
          key={kind}
          kind={kind}
          onPress={() => at.edit((rig) => kindPut(rig, part, kind, called), { part })}
        />
      ))}
    </Roving>
  );
}
