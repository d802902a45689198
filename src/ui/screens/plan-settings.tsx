import { catalogue } from "#core/parts/catalogue.ts";
import type { Choice, Quantity } from "#core/parts/kind.ts";
import { stageParameter } from "#core/patching/stages.ts";
import type { RigPart } from "#core/rig/rig.ts";
import { ChoiceField } from "#ui/parts/choice-field.tsx";
import { QuantityField } from "#ui/parts/quantity-field.tsx";
import { useWords } from "#ui/words/use-words.ts";
import { type Plan, withSetting } from "./plan.ts";
import { nameOf } from "./plan-words.ts";

interface Props {
  readonly part: RigPart;
  readonly go: (how: (plan: Plan) => Plan) => void;
}

/** What is chosen by looking at the box, before what only its papers say. */
const plain: readonly string[] = ["input", "socket", "connector", "phantom power"];

/** What a part is made of: what its sockets are, and in a fold its ohms and metres, each with what is usual. */
export function PlanSettings({ part, go }: Props) {
  const words = useWords();
  const all = Object.entries(catalogue[part.kind].parameters).filter(
    ([name]) => name !== stageParameter,
  );
  const seen = all.filter(([name]) => plain.includes(name));
  const rest = all.filter(([name]) => !plain.includes(name));
  const set = (name: string) => (value: number | string | undefined) =>
    go((plan) => withSetting(plan, part.id, name, value));
  const field = ([name, parameter]: (typeof all)[number]) => (
    <Field key={name} part={part} name={name} parameter={parameter} onChange={set(name)} />
  );
  return (
    <>
      {seen.map(field)}
      {rest.length > 0 && (
        <details class="made-of">
          <summary>{words.plan.madeOf(nameOf(words, part))}</summary>
          {rest.map(field)}
        </details>
      )}
    </>
  );
}

interface FieldProps {
  readonly part: RigPart;
  readonly name: string;
  readonly parameter: Quantity | Choice;
  readonly onChange: (value: number | string | undefined) => void;
}

function Field({ part, name, parameter, onChange }: FieldProps) {
  const words = useWords().language.patching;
  const label = words.parameters[name] ?? name;
  const value = part.settings?.[name] ?? parameter.typical;
  if (!("choices" in parameter))
    return (
      <QuantityField
        label={label}
        quantity={parameter}
        value={Number(value)}
        onType={(typed) => {
          if (typed !== undefined && typed !== value) onChange(typed);
        }}
      />
    );
  return (
    <ChoiceField
      label={label}
      choice={parameter}
      value={value}
      onChoose={(word) => onChange(word === parameter.typical ? undefined : word)}
    />
  );
}
