import { useLayoutEffect, useRef } from "preact/hooks";
import type { Sheet } from "#core/report/session-sheet.ts";
import { longestName } from "./longest-name.ts";
import type { SheetSayer } from "./sheet-words.ts";

interface Props {
  readonly sheet: Sheet;
  readonly sayer: SheetSayer;
  readonly noGear: boolean;
  readonly onTitle: (title: { readonly name?: string; readonly who?: string }) => void;
}

/** What, when and who, written in place: each an entry in the log once the field is left. */
export function SheetHead({ sheet, sayer, noGear, onTitle }: Props) {
  const { words } = sayer;
  const well = sheet.seats.filter(({ state }) => state === "healthy" || state === "as ordered");
  return (
    <header>
      <p class="printed title">{sheet.name}</p>
      <Written
        kind="name"
        label={words.sheet.name}
        value={sheet.name}
        cleared={sheet.rig.name}
        onWritten={(name) => onTitle({ name })}
      />
      <p class="when">
        <span>{dates(sheet, sayer)}</span>
        <span>{words.sheet.healthy(well.length, sheet.seats.length)}</span>
        {sheet.rig.name !== sheet.name && <span>{words.sheet.rig(sheet.rig.name)}</span>}
        <span class="by">
          {words.sheet.whoLabel} <span class="printed">{sheet.who}</span>
          <Written
            kind="who"
            label={words.sheet.who}
            placeholder={words.sheet.whoHere}
            value={sheet.who ?? ""}
            onWritten={(who) => onTitle({ who })}
          />
        </span>
      </p>
      {noGear && <p class="when">{words.sheet.noGear}</p>}
    </header>
  );
}

/** The day once, where it began and ended on one. */
function dates({ begun, ended }: Sheet, { words: { figures } }: SheetSayer): string {
  const [first, last] = [begun, ended].map(figures.date);
  const [from, to] = [begun, ended].map(figures.time);
  if (first !== last) return `${first}, ${from} – ${last}, ${to}`;
  return from === to ? `${first}, ${from}` : `${first}, ${from}–${to}`;
}

interface WrittenProps {
  readonly kind: "name" | "who";
  readonly label: string;
  readonly value: string;
  readonly placeholder?: string;
  /** What stands there once it is cleared. */
  readonly cleared?: string;
  readonly onWritten: (text: string) => void;
}

/** A line on the paper to write on. Leaving it, or Enter, is what says it. */
function Written({ kind, label, value, onWritten, placeholder = "", cleared = "" }: WrittenProps) {
  const { field, typed, say } = useField({ value, onWritten, cleared });
  return (
    <input
      ref={field}
      class={`written ${kind}`}
      aria-label={label}
      defaultValue={value}
      placeholder={placeholder}
      maxLength={longestName}
      autoComplete="off"
      onInput={typed}
      onKeyDown={({ key, isComposing }) => {
        if (key === "Enter" && !isComposing) say();
      }}
      onBlur={say}
    />
  );
}

type FieldProps = Pick<WrittenProps, "value" | "onWritten"> & { readonly cleared: string };

/** A field says what was typed in it, and shows what the log says, unless somebody is typing something else meanwhile. */
function useField({ value, onWritten, cleared }: FieldProps) {
  const field = useRef<HTMLInputElement>(null);
  /** Somebody typed since the log said something new; and the last of it that was said. */
  const own = useRef(false);
  const last = useRef<string>(undefined);
  useLayoutEffect(() => {
    const { current } = field;
    if (current === null || (own.current && current.value !== last.current)) return;
    current.value = value;
    own.current = false;
  }, [value]);
  const typed = () => {
    own.current = true;
  };
  const say = () => {
    const { current } = field;
    if (current === null || !own.current) return;
    const text = current.value.trim();
    current.value = text || cleared;
    last.current = current.value;
    onWritten(text);
  };
  return { field, typed, say };
}
