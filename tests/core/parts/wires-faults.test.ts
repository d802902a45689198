import { describe, expect, test } from "vitest";
import { catalogue, type PartKind } from "#core/parts/catalogue.ts";
import type { Fault, Part } from "#core/parts/part.ts";
import { edited, ohmsBetween, pairs, partners, renamed } from "./wiring.ts";

/** Every kind of lead and adapter, and the end its faults 'body' are told of. */
const kinds: Partial<Record<PartKind, string>> = {
  "TRS lead": "far",
  "TS lead": "far",
  "one-to-both lead": "far",
  "one-to-both lead with TRS plug, ring unused": "far",
  "one-to-right lead": "far",
  "insert Y": "stem",
  "insert Y with TRS plugs, rings unused": "stem",
  "insert Y with TRS plugs, ring to sleeve": "stem",
  "mono sum lead": "stem",
  "RCA pair lead": "",
  "TRS to two RCA lead": "stem",
  "two TS to two RCA lead": "",
  "XLR lead": "far",
  "XLR to TRS lead": "near",
  "two XLR to TRS lead, pin 3 unused": "stem",
  "two XLR to TRS lead, pin 3 to pin 1": "stem",
  "XLR to both ears lead": "far",
  "TRS extension lead": "socket",
  "size adapter": "",
  "headset adapter": "plug",
  "headset splitter": "plug",
  "mono adapter": "",
  "stereo-to-mono adapter": "",
  splitter: "",
  "in-line volume wheel": "plug",
};

/** What a name calls a contact, and the contact. */
const called: Readonly<Record<string, string>> = {
  tip: "tip",
  ring: "ring",
  "second ring": "ring 2",
  sleeve: "sleeve",
  shell: "sleeve",
  return: "ring 2",
  microphone: "sleeve",
  screen: "pin 1",
  hot: "pin 2",
  cold: "pin 3",
};
const contact = (name: string | undefined): string => {
  const found = called[name ?? ""];
  if (found === undefined) throw new Error(`no contact is called ${name}`);
  return found;
};

/** What a wrong order moves, from its name. */
function orderOf(name: string): Readonly<Record<string, string>> | undefined {
  const exchanged = /^(.+) and (.+) exchanged$/.exec(name);
  if (exchanged !== null) {
    const [one, two] = [contact(exchanged[1]), contact(exchanged[2])];
    return { [one]: two, [two]: one };
  }
  const turns: Readonly<Record<string, Readonly<Record<string, string>>>> = {
    "contacts turned, tip to ring": { tip: "ring", ring: "sleeve", sleeve: "tip" },
    "contacts turned, tip to sleeve": { tip: "sleeve", sleeve: "ring", ring: "tip" },
    "pins turned, 1 to 2": { "pin 1": "pin 2", "pin 2": "pin 3", "pin 3": "pin 1" },
    "pins turned, 1 to 3": { "pin 1": "pin 3", "pin 3": "pin 2", "pin 2": "pin 1" },
    "made for the other pin order": { "ring 2": "sleeve", sleeve: "ring 2" },
  };
  return turns[name];
}

interface Told {
  readonly part: Part;
  readonly fault: Fault;
  readonly end: string;
  readonly whole: readonly string[];
  readonly wrong: readonly string[];
}

function expectOpen({ end, whole, wrong }: Told, node: string) {
  expect(partners(whole, node).length).toBeGreaterThan(0);
  expect(partners(wrong, node)).toEqual([]);
  const elsewhere = whole.filter(
    (pair) => !pair.split("=").some((one) => one.startsWith(`${end}.`)),
  );
  expect(wrong).toEqual(expect.arrayContaining(elsewhere));
  for (const pair of wrong) expect(whole).toContain(pair);
}

function expectTogether({ end, whole, wrong }: Told, one: string, two: string) {
  const nodes = [`${end}.${one}`, `${end}.${two}`];
  const both = [...new Set(nodes.flatMap((node) => partners(whole, node)))].sort();
  for (const node of nodes) expect(partners(wrong, node)).toEqual(both);
  expect(wrong).not.toEqual(whole);
  expect(wrong).toEqual(expect.arrayContaining([...whole]));
}

function expectOrder({ end, whole, wrong }: Told, order: Readonly<Record<string, string>>) {
  const moved = renamed(whole, (node) => {
    const [at = "", from = ""] = node.split(".");
    return at === end ? `${at}.${order[from] ?? from}` : node;
  });
  expect(wrong).toEqual(moved);
  expect(wrong).not.toEqual(whole);
}

function expectOhms({ part, fault, end, whole }: Told, node: string, ohms: number) {
  const [to] = partners(whole, node);
  if (to === undefined) throw new Error(`${end}: ${node} reaches nothing`);
  const measured = ohmsBetween(edited(part, fault.edits), node, to);
  expect(measured).toBeGreaterThan(0.9999 * ohms);
  expect(measured).toBeLessThan(ohms + 1);
}

const legs = (node: string) =>
  node.replace(/\b(left|right)\./, (_, side) => (side === "left" ? "right." : "left."));

/** Where one fault is said by name alone. */
const own: Partial<Record<Fault["name"], (told: Told) => void>> = {
  "both sides on one contact": (told) => expectTogether(told, "tip", "ring"),
  "legs exchanged": ({ whole, wrong }) => {
    const far = (node: string) => (node.startsWith("near") ? node : legs(node));
    expect(wrong).toEqual(renamed(whole, far));
    expect(wrong).not.toEqual(whole);
  },
  "lead with two contacts": ({ part, fault, whole, wrong }) => {
    const plugs = edited(part, fault.edits).plugs;
    expect(plugs.map(({ kind }) => kind)).toEqual(plugs.map(() => "TS"));
    expect(wrong).toEqual(whole.filter((pair) => !pair.includes("ring")));
  },
  "adapter loose": (told) => expectOpen(told, "socket.sleeve"),
  "volume down": ({ part, fault, wrong }) => {
    for (const node of ["plug.tip", "plug.ring"]) expect(partners(wrong, node)).toEqual([]);
    for (const side of ["tip", "ring"])
      expect(
        ohmsBetween(edited(part, fault.edits), `socket.${side}`, "socket.sleeve"),
      ).toBeLessThan(2);
  },
  "wheel uneven, left weaker": (told) => expectWeaker(told, "tip", "ring"),
  "wheel uneven, right weaker": (told) => expectWeaker(told, "ring", "tip"),
};

function expectWeaker({ part, fault }: Told, weaker: string, stronger: string) {
  const [less = 0, more = 0] = [weaker, stronger].map((side) =>
    ohmsBetween(edited(part, fault.edits), `plug.${side}`, `socket.${side}`),
  );
  expect(less).toBeGreaterThan(more + 100);
}

/** A fault against what its name says. */
function expectAsNamed(told: Told) {
  const { fault, end } = told;
  const said = own[fault.name];
  if (said !== undefined) return said(told);
  const open = /^(.+) open$/.exec(fault.name);
  if (open !== null) return expectOpen(told, `${end}.${contact(open[1])}`);
  const shorted = /^(.+) and (.+) shorted$/.exec(fault.name);
  if (shorted !== null) return expectTogether(told, contact(shorted[1]), contact(shorted[2]));
  const dirt = /^(.+) of (\d+) ohms$/.exec(fault.name);
  if (dirt !== null) return expectOhms(told, `${end}.${returning(told, dirt[1])}`, Number(dirt[2]));
  const order = orderOf(fault.name);
  if (order === undefined) throw new Error(`nothing tells what '${fault.name}' should do`);
  return expectOrder(told, order);
}

/** A return is on the contact that this end has it on. */
function returning({ part, end }: Told, name: string | undefined): string {
  const kind = [...part.plugs, ...part.sockets].find((one) => one.name === end)?.kind;
  if (name !== "return") return contact(name);
  if (kind === "XLR") return "pin 1";
  return kind === "TRRS" ? "ring 2" : "sleeve";
}

describe.each(Object.entries(kinds))("%s", (kind, bodyEnd) => {
  const made = catalogue[kind as PartKind].make();
  const part = { ...made, faults: made.faults.filter(({ comesAndGoes }) => comesAndGoes !== true) };
  const whole = pairs(part);

  test.each(part.faults.map((fault) => [`${fault.at} / ${fault.name}`, fault] as const))(
    "%s does what it says",
    (_, fault) => {
      const end = fault.at === "body" ? bodyEnd : fault.at;
      expectAsNamed({ part, fault, end, whole, wrong: pairs(edited(part, fault.edits)) });
    },
  );

  test("mended, it is as it was", () => {
    for (const fault of part.faults) edited(part, fault.edits);
    expect(pairs(part)).toEqual(whole);
  });

  test("no fault is there twice", () => {
    const ids = part.faults.map(({ at, name }) => `${at} / ${name}`);
    expect(ids).toEqual([...new Set(ids)]);
  });
});
