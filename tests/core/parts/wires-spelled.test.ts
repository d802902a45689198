import { describe, expect, test } from "vitest";
import { catalogue, type PartKind } from "#core/parts/catalogue.ts";
import { contactsAt } from "#core/parts/contacts-joined.ts";
import { point } from "#core/parts/part.ts";
import { ohmsBetween, pairs } from "./wiring.ts";

/** How every lead and adapter is wired when it is whole, each contact with those of the other ends that it reaches. */
const spelled: Partial<Record<PartKind, string>> = {
  "TRS lead": "far.tip=near.tip far.ring=near.ring far.sleeve=near.sleeve",
  "TS lead": "far.tip=near.tip far.sleeve=near.sleeve",
  "one-to-both lead": "far.tip=near.tip far.ring=near.tip far.sleeve=near.sleeve",
  "one-to-both lead with TRS plug, ring unused":
    "far.tip=near.tip far.ring=near.tip far.sleeve=near.sleeve",
  "one-to-right lead": "far.ring=near.tip far.sleeve=near.sleeve",
  "insert Y":
    "left.tip=stem.tip right.tip=stem.ring left.sleeve=stem.sleeve right.sleeve=stem.sleeve left.sleeve=right.sleeve",
  "insert Y with TRS plugs, rings unused":
    "left.tip=stem.tip right.tip=stem.ring left.sleeve=stem.sleeve right.sleeve=stem.sleeve left.sleeve=right.sleeve",
  "insert Y with TRS plugs, ring to sleeve":
    "left.tip=stem.tip right.tip=stem.ring left.sleeve=stem.sleeve left.ring=stem.sleeve right.sleeve=stem.sleeve right.ring=stem.sleeve left.sleeve=right.sleeve left.sleeve=right.ring left.ring=right.sleeve left.ring=right.ring",
  "mono sum lead":
    "left.tip=stem.tip right.tip=stem.tip left.tip=right.tip left.sleeve=stem.sleeve right.sleeve=stem.sleeve left.sleeve=right.sleeve",
  "RCA pair lead":
    "far left.tip=near left.tip far left.sleeve=near left.sleeve far right.tip=near right.tip far right.sleeve=near right.sleeve",
  "TRS to two RCA lead":
    "left.tip=stem.tip right.tip=stem.ring left.sleeve=stem.sleeve right.sleeve=stem.sleeve left.sleeve=right.sleeve",
  "two TS to two RCA lead":
    "far left.tip=near left.tip far left.sleeve=near left.sleeve far right.tip=near right.tip far right.sleeve=near right.sleeve",
  "XLR lead": "far.pin 1=near.pin 1 far.pin 2=near.pin 2 far.pin 3=near.pin 3",
  "XLR to TRS lead": "far.sleeve=near.pin 1 far.tip=near.pin 2 far.ring=near.pin 3",
  "two XLR to TRS lead, pin 3 unused":
    "left.pin 2=stem.tip right.pin 2=stem.ring left.pin 1=stem.sleeve right.pin 1=stem.sleeve left.pin 1=right.pin 1",
  "two XLR to TRS lead, pin 3 to pin 1":
    "left.pin 2=stem.tip right.pin 2=stem.ring left.pin 1=stem.sleeve left.pin 3=stem.sleeve right.pin 1=stem.sleeve right.pin 3=stem.sleeve left.pin 1=right.pin 1 left.pin 1=right.pin 3 left.pin 3=right.pin 1 left.pin 3=right.pin 3",
  "XLR to both ears lead": "far.tip=near.pin 2 far.ring=near.pin 2 far.sleeve=near.pin 1",
  "TRS extension lead": "plug.tip=socket.tip plug.ring=socket.ring plug.sleeve=socket.sleeve",
  "size adapter": "plug.tip=socket.tip plug.ring=socket.ring plug.sleeve=socket.sleeve",
  "headset adapter":
    "plug.tip=socket.tip plug.ring=socket.ring plug.ring 2=socket.sleeve plug.sleeve=socket.ring 2",
  "headset splitter":
    "headphones.tip=plug.tip headphones.ring=plug.ring headphones.sleeve=plug.ring 2 microphone.tip=plug.sleeve microphone.sleeve=plug.ring 2 headphones.sleeve=microphone.sleeve",
  "mono adapter": "plug.tip=socket.tip plug.tip=socket.ring plug.sleeve=socket.sleeve",
  "stereo-to-mono adapter":
    "plug.tip=socket.tip plug.tip=socket.ring plug.ring=socket.tip plug.ring=socket.ring plug.sleeve=socket.sleeve",
  splitter: ["tip", "ring", "sleeve"]
    .map(
      (contact) =>
        `output 1.${contact}=plug.${contact} output 2.${contact}=plug.${contact} output 1.${contact}=output 2.${contact}`,
    )
    .join(" "),
  "in-line volume wheel": "plug.tip=socket.tip plug.ring=socket.ring plug.sleeve=socket.sleeve",
};

/** Contacts that are one, told from the pairs that are joined. */
function classOf(all: readonly string[], node: string): ReadonlySet<string> {
  const reached = new Set([node]);
  for (let before = 0; before < reached.size; ) {
    before = reached.size;
    for (const pair of all.map((one) => one.split("=")))
      if (pair.some((one) => reached.has(one))) for (const one of pair) reached.add(one);
  }
  return reached;
}

/** `far.pin 1=near.pin 1 far.pin 2=…`: a space parts pairs where a name of an end follows that has its own `=`. */
const list = (printed: string): readonly string[] =>
  [
    ...printed.matchAll(
      /((?:near |far )?(?:output \d|[a-z]+)\.(?:pin \d|ring 2|[a-z]+))=((?:near |far )?(?:output \d|[a-z]+)\.(?:pin \d|ring 2|[a-z]+))/g,
    ),
  ]
    .map(([, a = "", b = ""]) => [a, b].sort().join("="))
    .sort();

describe.each(Object.entries(spelled))("a whole %s", (kind, printed) => {
  const part = catalogue[kind as PartKind].make();

  test("is wired as it is spelled", () => {
    expect(pairs(part)).toEqual(list(printed));
  });

  test("by the solver too, and all else is open", () => {
    const nodes = contactsAt(part).map(({ at, contact }) => point(at, contact));
    for (const from of nodes) {
      const joined = classOf(pairs(part), from);
      for (const to of nodes.filter((one) => one !== from)) {
        const ohms = ohmsBetween(part, from, to);
        if (joined.has(to)) expect(ohms, `${from} to ${to}`).toBeLessThan(1);
        else expect(ohms, `${from} to ${to}`).toBeGreaterThan(400);
      }
    }
  });

  test("takes nothing in, amplifies nothing and has no settings", () => {
    expect(part.takes).toEqual([]);
    expect(part.through).toBeUndefined();
    expect(part.sockets.every(({ side }) => side === "through")).toBe(true);
  });
});

test.each([
  ["headset adapter", "plug.sleeve=socket.ring 2 plug.ring 2=socket.sleeve"],
  ["headset splitter", "plug.sleeve=headphones.sleeve plug.ring 2=microphone.tip"],
] as const)("a %s for a device with its common on the sleeve", (kind, printed) => {
  const part = catalogue[kind].make({ device: "common on sleeve" });
  expect(pairs(part)).toEqual(expect.arrayContaining([...list(printed)]));
});

test("a splitter of eight with 47 ohms in each side reaches its sockets through them, and its returns straight", () => {
  const part = catalogue.splitter.make({ sets: 8, seriesOhms: 47 });
  expect(part.sockets).toHaveLength(8);
  for (const { name } of part.sockets) {
    for (const contact of ["tip", "ring"] as const) {
      const ohms = ohmsBetween(part, point("plug", contact), point(name, contact));
      expect(ohms).toBeGreaterThan(47);
      expect(ohms).toBeLessThan(48);
    }
    expect(ohmsBetween(part, "plug.sleeve", point(name, "sleeve"))).toBeLessThan(1);
  }
});

test.each(["6.35 mm", "3.5 mm"] as const)(
  "a size adapter with a %s plug has the other socket",
  (size) => {
    const part = catalogue["size adapter"].make({ plugSize: size });
    expect(part.plugs[0]?.size).toBe(size);
    expect(part.sockets[0]?.size).toBe(size === "6.35 mm" ? "3.5 mm" : "6.35 mm");
  },
);

test("a wheel halfway leaves half of its track in the way", () => {
  const part = catalogue["in-line volume wheel"].make({ up: 0.5 });
  const ohms = ohmsBetween(part, "plug.tip", "socket.tip");
  expect(ohms).toBeGreaterThan(500);
  expect(ohms).toBeLessThan(501);
});
