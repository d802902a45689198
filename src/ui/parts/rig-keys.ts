import type { PlugEnd, Spot } from "#core/drawing/edited.ts";
import type { PartKind } from "#core/parts/catalogue.ts";

/** What of the picture is meant: a part, a position, a plug, or a kind of thing that is not in it yet. */
export type Meant =
  | { readonly part: string }
  | { readonly position: string }
  | { readonly end: PlugEnd }
  | { readonly kind: PartKind };

/** Names have no line in them, so one parts two of them. */
export const spotKey = ({ into, socket }: Spot): string => `${into}\n${socket}`;
export const endKey = ({ part, plug }: PlugEnd): string => `${part}\n${plug}`;

export function keyOf(meant: Meant): string {
  if ("part" in meant) return `part\n${meant.part}`;
  if ("position" in meant) return `position\n${meant.position}`;
  return "end" in meant ? `end\n${endKey(meant.end)}` : `kind\n${meant.kind}`;
}

/** What a key of an element speaks of. */
export function meantBy(key: string): Meant | undefined {
  const [what, name = "", plug = ""] = key.split("\n");
  switch (what) {
    case "part":
      return { part: name };
    case "position":
      return { position: name };
    case "end":
      return { end: { part: name, plug } };
    case "kind":
      return { kind: name as PartKind };
    default:
      return undefined;
  }
}
