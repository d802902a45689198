import type { Numbers } from "#core/report/numbers.ts";
import type { Derived } from "#core/session/derive.ts";
import type { SheetSayer } from "./sheet-words.ts";

/** What is said of the numbers, with the rig as it was drawn. */
export interface Shown {
  readonly sayer: SheetSayer;
  readonly derived: Derived;
  readonly numbers: Numbers;
}

interface RowProps {
  readonly name: string;
  readonly figures: readonly string[];
}

/** What something is called, and its figures. */
export const Row = ({ name, figures }: RowProps) => (
  <tr>
    <th scope="row">{name}</th>
    {figures.map((text, at) => (
      // biome-ignore lint/suspicious/noArrayIndexKey: columns have their places
      <td key={at}>{text}</td>
    ))}
  </tr>
);
