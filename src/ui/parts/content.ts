import { contactsAt } from "#core/parts/contacts-joined.ts";
import type { Gain, Part, Socket } from "#core/parts/part.ts";
import type { Contact } from "#core/parts/plugs.ts";
import { midband } from "#core/rig/midband.ts";
import type { Carries } from "./effect-lanes.ts";

/** What a contact or an ear gets of the programme: gains from its left and its right side, with their signs. */
export interface Content {
  readonly left: number;
  readonly right: number;
}

export const silent: Content = { left: 0, right: 0 };

/** What of the programme that is, as a picture shows it. */
export interface Shown {
  readonly carries: Exclude<Carries, `weak ${string}`>;
  /** Upside down: its leading side is negative. */
  readonly inverted: boolean;
  /** Left less right, or the other way about: what is alike in both is gone. */
  readonly difference: boolean;
}

/** Weaker than this beside the strongest, a picture leaves it out: 18 dB, as in the effects. */
const drawn = 0.126;

/** A content beside the strongest there is. */
export function shown({ left, right }: Content, strongest = 1): Shown {
  const there = (gain: number) => Math.abs(gain) > drawn * strongest;
  const both = there(left) && there(right);
  return {
    carries: both ? "both" : oneOf(there(left), there(right)),
    inverted: there(left) ? left < 0 : there(right) && right < 0,
    difference: both && left * right < 0,
  };
}

function oneOf(left: boolean, right: boolean): "left" | "right" | "nothing" {
  if (left) return "left";
  return right ? "right" : "nothing";
}

export const nothing: Shown = { carries: "nothing", inverted: false, difference: false };

/** One contact of an output and what is on it. */
export interface Carried {
  readonly contact: Contact;
  readonly content: Content;
}

/** The contacts of a plug or socket that carry signal; the others are returns. */
export const isSignal = (contact: Contact): boolean =>
  contact === "tip" || contact === "ring" || contact === "pin 2" || contact === "pin 3";

const real = (gain: Gain): number => (typeof gain === "number" ? gain : gain.re);

/** A signal inside a box as what it has of the programme. A box that takes in one signal has all of the programme in it. */
function contentOf(row: readonly Gain[] = []): Content {
  const [left = 0, right = left] = row.map(real);
  return { left, right };
}

const scaled = ({ left, right }: Content, by: number): Content => ({
  left: left * by,
  right: right * by,
});

export const sum = (all: readonly Content[]): Content =>
  all.reduce((a, b) => ({ left: a.left + b.left, right: a.right + b.right }), silent);

/** What stands on every signal contact of an output while nothing is plugged in, with all knobs as they usually are. */
export function carriedBy(part: Part, socket: Socket): readonly Carried[] {
  const buses = part.through?.((name) => part.controls[name] ?? 0, midband) ?? {};
  return contactsAt({ plugs: [], sockets: [socket] })
    .filter(({ contact }) => isSignal(contact))
    .map(({ contact }) => {
      const source = socket.circuit.find(({ name }) => name === `${socket.name} ${contact}`);
      const drive = source?.kind === "source" ? Object.entries(source.drive) : [];
      return {
        contact,
        content: sum(drive.map(([bus, gain]) => scaled(contentOf(buses[bus]), gain))),
      };
    });
}
