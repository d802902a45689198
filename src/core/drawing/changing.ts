import type { PartKind } from "#core/parts/catalogue.ts";
import type { Part, Plug, Socket } from "#core/parts/part.ts";
import { fits } from "#core/parts/plugs.ts";
import { newOf, partSo } from "#core/parts/sizes.ts";
import { choicesOf } from "#core/patching/patches.ts";
import { made } from "#core/patching/sockets-of.ts";
import { type BuiltRig, build, type Connection, type Rig, type RigPart } from "#core/rig/rig.ts";
import { hungAnew } from "./anew.ts";
import { checked, type Edited, plugAt, refuse, socketAt } from "./edited.ts";
import { hangingIn, isLead, stepsTo } from "./hanging.ts";
import type { Called } from "./putting.ts";

/** One thing said of a part; left out again where `value` is. */
export function partSet(
  rig: Rig,
  id: string,
  name: string,
  value: number | string | undefined,
): Edited {
  const parts = rig.parts.map((part): RigPart => {
    if (part.id !== id) return part;
    const { settings = {}, ...rest } = part;
    const others = Object.entries(settings).filter(([one]) => one !== name);
    const all = value === undefined ? others : [...others, [name, value] as const];
    return all.length === 0 ? rest : { ...rest, settings: Object.fromEntries(all) };
  });
  return checked({ ...rig, parts }, rig);
}

/**
 * A part of another kind in its place, each plug and socket in use by the same name or by the first that fits, with as many sockets as that
 * takes. What is led by a lead and what has a plug of its own stand in for one another too.
 */
export function kindPut(rig: Rig, id: string, kind: PartKind, called: Called): Edited {
  const old = rig.parts.find((part) => part.id === id);
  if (old === undefined || old.kind === kind) return { rig };
  const { first } = old;
  const fresh: RigPart = { ...newOf(id, kind), ...(first === undefined ? {} : { first }) };
  const next = inItsPlace(rig, fresh) ?? hungAnew(rig, fresh, called);
  return next === undefined ? refuse({ refused: "nothing joins", kind }) : checked(next, rig);
}

/** The same plugs and sockets of another part. */
function inItsPlace(rig: Rig, fresh: RigPart): Rig | undefined {
  const built = build(rig);
  const inUse = rig.plugged.filter(({ into }) => into === fresh.id).length;
  const joined = (one: Part) => rejoined(built, fresh.id, one);
  const part = partSo(fresh, (one) => joined(one) !== undefined, inUse);
  const plugged = part && joined(made(part));
  return (
    plugged && { ...rig, parts: rig.parts.map((one) => (one.id === part.id ? part : one)), plugged }
  );
}

/** Every plug of a rig with one part otherwise made; nothing where one finds no place. */
function rejoined(rig: BuiltRig, id: string, other: Part): readonly Connection[] | undefined {
  const free = { plugs: [...other.plugs], sockets: [...other.sockets] };
  const ends: Connection[] = [];
  for (const end of rig.plugged) {
    if (end.part !== id && end.into !== id) {
      ends.push(end);
      continue;
    }
    const [plug, socket] = [plugAt(rig, end), socketAt(rig, end)];
    const found =
      end.part === id
        ? taken(free.plugs, end.plug, (one: Plug) => socket !== undefined && fits(one, socket))
        : taken(
            free.sockets,
            end.socket,
            (one: Socket) =>
              plug !== undefined &&
              fits(plug, one) &&
              (one.side === "in") === (socket?.side === "in"),
          );
    if (found === undefined) return undefined;
    ends.push({ ...end, ...(end.part === id ? { plug: found } : { socket: found }) });
  }
  return ends;
}

/** Takes the one of this name, or the first that does, out of some. */
function taken<One extends { readonly name: string }>(
  all: One[],
  name: string,
  does: (one: One) => boolean,
): string | undefined {
  const fitting = all.filter(does);
  const found = fitting.find((one) => one.name === name) ?? fitting[0];
  if (found !== undefined) all.splice(all.indexOf(found), 1);
  return found?.name;
}

/** One lead of another kind between the same two, and how it is plugged there. */
interface Other {
  readonly kind: PartKind;
  readonly lead: RigPart;
  readonly plugged: readonly Connection[];
}

/** The kinds of lead that could stand in the place of one, from the sockets that it uses and their partners. */
export function otherLeads(rig: Rig, id: string): readonly Other[] {
  const built = build(rig);
  if (!isLead(built, id)) return [];
  const step = stepsTo(hangingIn(built), id).at(-1);
  const [near] = step?.join.near.filter(({ part }) => part === id) ?? [];
  const ends = [step?.on.part, step?.join.twig?.part].map((one) =>
    rig.parts.find((part) => part.id === one),
  );
  const [from, into] = ends;
  if (near === undefined || from === undefined || into === undefined) return [];
  const used = new Set(
    rig.plugged.filter(({ part }) => part !== id).map((end) => `${end.into}\n${end.socket}`),
  );
  return choicesOf({ from, into }, near.socket, "leads").flatMap(({ wires, plugged }) => {
    const [lead] = wires;
    const clash = plugged.some((end) => used.has(`${end.into}\n${end.socket}`));
    return lead === undefined || wires.length > 1 || clash
      ? []
      : [{ kind: lead.kind, lead, plugged }];
  });
}

/** A lead of another kind put in its place. */
export function leadPut(rig: Rig, id: string, kind: PartKind): Edited {
  const other = otherLeads(rig, id).find((one) => one.kind === kind);
  const old = rig.parts.find((part) => part.id === id);
  if (other === undefined || old === undefined) return refuse({ refused: "nothing joins", kind });
  if (old.kind === kind) return { rig };
  const { first } = old;
  const part: RigPart = { ...other.lead, id, ...(first === undefined ? {} : { first }) };
  return checked(
    {
      ...rig,
      parts: rig.parts.map((one) => (one === old ? part : one)),
      plugged: [
        ...rig.plugged.filter((end) => end.part !== id),
        ...other.plugged.map((end) => ({ ...end, part: id })),
      ],
    },
    rig,
  );
}
