import { useId, useState } from "preact/hooks";
import { partNamed, positionNamed } from "#core/drawing/names.ts";
import type { Meant } from "#ui/parts/rig-keys.ts";
import { useWords } from "#ui/words/use-words.ts";
import { longestName } from "./longest-name.ts";
import type { AtRig } from "./rig-edit.ts";

interface Props {
  readonly at: AtRig;
  readonly chosen: Exclude<Meant, { readonly end: unknown } | { readonly kind: unknown }>;
  readonly part: string;
}

/** What a position's tape says, and what a part is called. */
export function RigName({ at, chosen, part }: Props) {
  const { rig: words, language } = useWords();
  const seat =
    "position" in chosen ? at.rig.positions.find(({ id }) => id === chosen.position) : undefined;
  const { kind } = at.built.part(part);
  const named = words.partName(language.patching.kinds[kind].name);
  return (
    <>
      {seat && (
        <NameField
          label={words.tape}
          name={seat.name}
          onName={(name) => at.edit((rig) => positionNamed(rig, seat.id, name), chosen)}
        />
      )}
      <NameField
        label={named}
        name={part}
        onName={(name) =>
          at.edit((rig) => partNamed(rig, part, name), seat ? chosen : { part: name.trim() })
        }
      />
    </>
  );
}

interface FieldProps {
  readonly label: string;
  readonly name: string;
  readonly onName: (name: string) => void;
}

/** A name, entered by Enter or by its button. */
function NameField({ label, name, onName }: FieldProps) {
  const { rig: words } = useWords();
  const id = useId();
  const [text, setText] = useState(name);
  return (
    <form
      class="name-field"
      onSubmit={(event) => {
        event.preventDefault();
        onName(text);
      }}
    >
      <label for={id}>{label}</label>
      <input
        id={id}
        autocomplete="off"
        maxLength={longestName}
        value={text}
        onFocus={({ currentTarget }) => currentTarget.select()}
        onInput={({ currentTarget }) => setText(currentTarget.value)}
      />
      <button type="submit" class="say">
        {words.nameIt}
      </button>
    </form>
  );
}
