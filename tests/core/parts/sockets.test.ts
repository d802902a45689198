import { describe, expect, test } from "vitest";
import { powered, resistor } from "#core/parts/boxes.ts";
import { catalogue, type PartKind } from "#core/parts/catalogue.ts";
import type { Fault, Part, Socket } from "#core/parts/part.ts";
import { expectPrinted, gains } from "#tests/reference/printed.ts";
import { faultAt, patched } from "./patched.ts";

const driver = 32;

/** Two drivers of 32 Ω and a star point. */
const phones: Part = {
  plugs: [],
  sockets: [],
  body: [
    resistor("left", "tip", "star", driver),
    resistor("right", "ring", "star", driver),
    ...powered("battery"),
    resistor("air", "star", "chassis", 1e9),
  ],
  takes: [
    { plus: "tip", minus: "star" },
    { plus: "ring", minus: "star" },
  ],
  controls: {},
  faults: [],
  look: 1,
};

const boxes: readonly (readonly [
  PartKind,
  string,
  ohms: number,
  buses: readonly [string, string],
])[] = [
  ["laptop", "phones", 10, ["left", "right"]],
  ["phone", "phones", 2, ["left", "right"]],
  ["sound interface", "phones", 10, ["left", "right"]],
  ["instrument", "phones", 47, ["left", "right"]],
  ["mixer", "phones", 10, ["phones left", "phones right"]],
  ["console", "phones", 10, ["phones left", "phones right"]],
  ["headphone amplifier", "output 1", 10, ["left", "right"]],
  ["personal mixer", "phones", 10, ["left", "right"]],
  ["belt pack", "phones", 10, ["left", "right"]],
];

const common = ({ kind, name }: Socket) =>
  `${name}.${kind === "four-pole, common on ring 2" ? "ring 2" : "sleeve"}`;

/** Volts across the two drivers for one volt of two signals inside the box: L←L, L←R, R←L, R←R. */
function heardAt(part: Part, name: string, buses: readonly [string, string], fault?: Fault) {
  const socket = part.sockets.find((one) => one.name === name);
  if (socket === undefined) throw new Error(`no socket ${name}`);
  const wires = [
    [`${name}.tip`, "tip"],
    [`${name}.ring`, "ring"],
    [common(socket), "star"],
  ] as const;
  const patch = { from: part, to: phones, wires };
  return gains(
    patched(fault === undefined ? patch : { ...patch, fault: ["from", fault] }, ...buses),
  );
}

describe.each(boxes)("%s, %s", (kind, name, ohms, buses) => {
  const part = catalogue[kind].make();
  const heard = (fault?: Fault) => heardAt(part, name, buses, fault);
  const full = driver / (driver + ohms);
  const side = full.toFixed(2);

  test("drives both sides through its own resistance", () => {
    expectPrinted(heard(), `${side} 0 0 ${side}`, 0.003);
  });

  test("a side dead", () => {
    expectPrinted(
      heard(faultAt(part, name, "left side of the output dead")),
      `0 0 0 ${side}`,
      0.003,
    );
    expectPrinted(
      heard(faultAt(part, name, "right side of the output dead")),
      `${side} 0 0 0`,
      0.003,
    );
  });

  // Handbook, section 5, 'return resistance': each side also in the other ear, inverted.
  test("its return spring worn: crosstalk in opposite polarity, the middle weaker", () => {
    const [ll = 0, lr = 0, rl = 0, rr = 0] = heard(
      faultAt(part, name, "return spring of the socket worn"),
    );
    const shared = 30 / (driver + ohms + 2 * 30);
    expect(lr / full).toBeCloseTo(-shared, 2);
    expect(rl / full).toBeCloseTo(-shared, 2);
    expect(ll).toBeCloseTo(rr, 4);
    expect(ll + lr).toBeLessThan(full / 1.5);
  });
});

test.each([
  ["headphone amplifier", "output 1"],
  ["personal mixer", "phones"],
  ["belt pack", "phones"],
] as const)("%s, %s: its volume down, or uneven by 6 dB", (kind, name) => {
  const part = catalogue[kind].make();
  const heard = (fault: string) =>
    heardAt(part, name, ["left", "right"], faultAt(part, name, fault));
  expectPrinted(heard("volume down"), "0 0 0 0");
  expectPrinted(heard("volume knob uneven, left weaker"), "0.38 0 0 0.76", 0.003);
  expectPrinted(heard("volume knob uneven, right weaker"), "0.76 0 0 0.38", 0.003);
});

test("an instrument: left/mono carries both sides while the right jack is empty, and left alone once it is not", () => {
  const part = catalogue.instrument.make();
  const line = catalogue.mixer.make();
  const to = (name: string, socket: string): (readonly [string, string])[] => [
    [`${name}.tip`, `${socket}.tip`],
    [`${name}.sleeve`, `${socket}.sleeve`],
    [`${name}.sleeve`, `${socket}.ring`],
  ];
  const one = { from: part, to: line, wires: to("left/mono", "1") };
  const two = { ...one, wires: [...to("left/mono", "1"), ...to("right", "2")] };
  const closed = faultAt(part, "left/mono", "normal does not close");
  const stuck = faultAt(part, "left/mono", "normal does not open");
  const heard = (patch: typeof one, fault?: Fault) =>
    gains(
      patched(fault === undefined ? patch : { ...patch, fault: ["from", fault] }, "left", "right"),
    );
  expectPrinted(heard(one), "0.49 0.49 0 0", 0.005);
  expectPrinted(heard(one, closed), "0.96 0 0 0", 0.005);
  expectPrinted(heard(two), "0.96 0 0 0.96", 0.005);
  expectPrinted(heard(two, stuck), "0.48 0.48 0.48 0.48", 0.005);
});

describe("links", () => {
  test.each([
    ["transmitter", "link 1", "belt pack"],
    ["link sender", "link 1", "stage box"],
    ["link sender", "link 1", "personal mixer"],
    ["laptop", "wireless", "wireless headset"],
    ["phone", "wireless", "wireless headset"],
  ] as const)("%s, %s, to a %s: both sides, and nothing lost", (source, socket, receiver) => {
    const wires = (["tip", "ring", "sleeve"] as const).map(
      (contact) => [`${socket}.${contact}`, `link.${contact}`] as const,
    );
    const patch = { from: catalogue[source].make(), to: catalogue[receiver].make(), wires };
    expectPrinted(gains(patched(patch, "left", "right")), "1.0000 0 0 1.0000");
  });

  test.each(["transmitter", "link sender"] as const)("a %s has as many as asked for", (kind) => {
    const names = catalogue[kind]
      .make({ links: 3 })
      .sockets.flatMap(({ name, kind: socket }) => (socket === "link" ? [name] : []));
    expect(names).toEqual(["link 1", "link 2", "link 3"]);
  });
});

// Handbook, section 10: sockets that harm.
test.each([
  ["loudspeaker amplifier", {}, "speaker left", "loudspeaker output"],
  [
    "headphone amplifier",
    { "balanced output": "fitted" },
    "balanced left",
    "balanced headphone output",
  ],
  ["console", { "phantom power": "on" }, "1", "phantom power"],
] as const)("a %s says what can harm", (kind, settings, name, harm) => {
  const { sockets } = catalogue[kind].make(settings);
  expect(sockets.find((socket) => socket.name === name)?.harms).toBe(harm);
});

test("each output with one signal can die, and then sends nothing", () => {
  const part = catalogue.mixer.make({ balancing: "impedance-balanced" });
  for (const name of ["send", "main left", "main right", "monitor left", "monitor right"]) {
    const wires = (["tip", "ring", "sleeve"] as const).map(
      (contact) => [`${name}.${contact}`, `1.${contact}`] as const,
    );
    const patch = { from: part, to: catalogue.mixer.make(), wires };
    const dead = faultAt(part, name, "output dead");
    expectPrinted(gains(patched(patch, name)).slice(0, 1), "0.985", 0.001);
    expectPrinted(gains(patched({ ...patch, fault: ["from", dead] }, name)).slice(0, 1), "0.000");
  }
});
