import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { complaint } from "#core/checks/complaint.ts";
import { type Complaint, complaints, mirroredComplaint } from "#core/checks/complaints.ts";
import { type Behaviour, straight } from "#core/rig/behaviour.ts";
import { real } from "#core/units/complex.ts";

type Four = readonly [ll: number, lr: number, rl: number, rr: number];

const wayOf = ([ll, lr, rl, rr]: Four): Behaviour => ({
  ...straight,
  gains: [
    [real(ll), real(lr)],
    [real(rl), real(rr)],
  ],
});

const healthy = wayOf([0.746, -0.008, -0.008, 0.746]);
const said = (way: Behaviour, normal = healthy) => complaint.predict(way, normal);
const chance = (answers: Float64Array, of: Complaint): number =>
  answers[complaints.indexOf(of)] ?? 0;
/** Of those who say something. */
const likeliest = (answers: Float64Array): Complaint | undefined => {
  const spoken = answers.map((p, at) => (complaints[at] === "no complaint" ? 0 : p));
  return complaints[spoken.indexOf(Math.max(...spoken))];
};
const sum = (answers: Float64Array): number => answers.reduce((all, p) => all + p, 0);

// Matrices: handbook, section 5, first table, its return resistances and its line cable, and section 2's plugs (C).
describe("the likeliest complaint", () => {
  test.each<readonly [string, Four, Complaint]>([
    ["nothing wrong", [0.746, -0.008, -0.008, 0.746], "something else"],
    ["tip open", [0, 0, 0, 0.746], "only the right ear works"],
    ["ring open", [0.746, 0, 0, 0], "only the left ear works"],
    ["sleeve open", [0.377, -0.377, -0.377, 0.377], "no voice"],
    ["return through 1.5 kilohms", [0.383, -0.372, -0.372, 0.383], "no voice"],
    ["tip and ring shorted", [0.371, 0.366, 0.366, 0.371], "the same in both ears"],
    ["ring and sleeve shorted", [0.746, -0.026, -0.002, 0.009], "only the left ear works"],
    ["TS plug in the socket", [0.746, -0.0015, 0, 0], "only the left ear works"],
    ["tip and ring exchanged", [-0.008, 0.746, 0.746, -0.008], "sides swapped"],
    ["one driver inverted", [-0.746, 0.008, -0.008, 0.746], "hollow or thin"],
    ["both springs on the tip", [0.422, 0.422, 0, 0], "only the left ear works"],
    ["first click", [0, 0.746, 0, 0], "only the left ear works"],
    ["first click at an input", [0, 0, 0.998, 0], "only the right ear works"],
    ["sleeve spring on the ring", [0, 0.427, 0, -0.427], "hollow or thin"],
    ["normalled pair with one plug", [0.746, 0, 0.746, 0], "a part is missing"],
    ["balanced mono into a stereo input", [0.37, 0.37, -0.37, -0.37], "hollow or thin"],
    ["stereo into one balanced input", [0.37, -0.37, 0.37, -0.37], "no voice"],
    ["a side turned down by 8 dB", [0.746, 0, 0, 0.297], "right side quiet"],
    ["both turned down by 20 dB", [0.0746, 0, 0, 0.0746], "quiet on both sides"],
    ["silence", [0, 0, 0, 0], "nothing at all"],
  ])("%s", (_, gains, expected) => {
    expect(likeliest(said(wayOf(gains)))).toBe(expected);
  });

  test("of a voice that comes a millisecond late on the right: the right is quiet", () => {
    expect(likeliest(said({ ...healthy, late: 0.001 }))).toBe("right side quiet");
    expect(likeliest(said({ ...healthy, late: 0.001, worn: -1 }))).toBe("sides swapped");
  });

  test("of an ear that hears less by 15 dB: that side is quiet", () => {
    expect(likeliest(said({ ...healthy, hearing: [10 ** (-15 / 20), 1] }))).toMatch(
      /^(left side quiet|only the right ear works)$/,
    );
  });
});

test("a return of 3 ohms is noticed by few, 10 to 100 ohms is hollow, a kilohm takes the voice", () => {
  // Handbook, section 5: wanted side and antiphase crosstalk, dB re open voltage.
  const through = (wanted: number, antiphase: number) =>
    said(
      wayOf([
        10 ** (wanted / 20),
        -(10 ** (antiphase / 20)),
        -(10 ** (antiphase / 20)),
        10 ** (wanted / 20),
      ]),
      wayOf([0.955, -0.006, -0.006, 0.955]),
    );
  expect(likeliest(through(-1, -22.4))).toBe("something else");
  expect(likeliest(through(-3.7, -10.2))).toBe("hollow or thin");
  expect(likeliest(through(-5.2, -7.7))).toBe("hollow or thin");
  expect(likeliest(through(-6.2, -6.5))).toBe("no voice");
});

test("who hears nothing wrong seldom complains, and a dead ear is not kept quiet about", () => {
  expect(chance(said(healthy), "no complaint")).toBeGreaterThan(0.9);
  expect(chance(said(wayOf([0, 0, 0, 0.746])), "no complaint")).toBeLessThan(0.1);
  const dead = chance(said(wayOf([0, 0, 0, 0.746])), "no complaint");
  expect(chance(said(wayOf([0.37, 0.37, -0.37, -0.37])), "no complaint")).toBeGreaterThan(dead);
});

test("hum goes with a lost return more than with a healthy mono sum", () => {
  const lost = said(wayOf([0.377, -0.377, -0.377, 0.377]));
  const mono = said(wayOf([0.371, 0.366, 0.366, 0.371]));
  expect(chance(lost, "hum")).toBeGreaterThan(2 * chance(mono, "hum"));
});

test("what comes and goes is mostly said to do so", () => {
  expect(likeliest(complaint.unsteady ?? new Float64Array())).toBe("crackle, or it comes and goes");
  expect(sum(complaint.unsteady ?? new Float64Array())).toBeCloseTo(1, 12);
});

const gain = fc.double({ min: -1, max: 1, noNaN: true });
const way = fc.record({
  gains: fc.tuple(gain, gain, gain, gain),
  worn: fc.constantFrom(1, -1),
  late: fc.constantFrom(0, 0.0003, -0.001),
  mirrors: fc.boolean(),
  left: fc.constantFrom(1, 0.2),
});
type Drawn = typeof way extends fc.Arbitrary<infer Value> ? Value : never;

const made = ({ gains, worn, late, mirrors, left }: Drawn): Behaviour => ({
  ...wayOf(gains),
  worn,
  late,
  mirrors,
  hearing: [left, 1],
});

/** The same rig with left and right exchanged in everything. */
const otherWay = (behaviour: Behaviour): Behaviour => ({
  ...behaviour,
  gains: behaviour.gains.toReversed().map((row) => row.toReversed()),
  late: -behaviour.late,
  hearing: [behaviour.hearing[1], behaviour.hearing[0]],
});

describe("for all ways", () => {
  test("the answers sum to one, and no word rules a way out", () => {
    fc.assert(
      fc.property(way, (drawn) => {
        const answers = said(made(drawn));
        expect(sum(answers)).toBeCloseTo(1, 9);
        expect(Math.min(...answers)).toBeGreaterThan(0.001);
      }),
    );
  });

  test("a mirrored rig is complained of the other way round", () => {
    fc.assert(
      fc.property(way, (drawn) => {
        const behaviour = made(drawn);
        const [one, other] = [said(behaviour), said(otherWay(behaviour))];
        for (const each of complaints)
          expect(chance(other, mirroredComplaint(each))).toBeCloseTo(chance(one, each), 6);
      }),
      // Both ears all but alike: which is weaker hangs on the last bit.
      {
        examples: [
          [
            {
              gains: [0, -0.9999999999999984, 0, -0.9999999999999984],
              worn: 1,
              late: 0,
              mirrors: false,
              left: 1,
            },
          ],
        ],
      },
    );
  });

  test("who mirrors says the other side", () => {
    fc.assert(
      fc.property(way, (drawn) => {
        const plain = said({ ...made(drawn), mirrors: false });
        const mirrored = said({ ...made(drawn), mirrors: true });
        const left = "only the left ear works";
        expect(chance(mirrored, mirroredComplaint(left))).toBeCloseTo(chance(plain, left), 9);
      }),
    );
  });
});

test("worn backwards, a dead left side is a dead right ear", () => {
  const dead = wayOf([0, 0, 0, 0.746]);
  expect(likeliest(said(dead))).toBe("only the right ear works");
  expect(likeliest(said({ ...dead, worn: -1 }))).toBe("only the left ear works");
});
