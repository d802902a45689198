import fc from "fast-check";
import { type Circuit, type Element, earth, type Source } from "#core/circuit/circuit.ts";
import { capacitor, resistor } from "#core/parts/boxes.ts";

/** From a contact to an open, in ohms; values between come up evenly over the decades. */
const ohms = fc.double({ min: -2, max: 9, noNaN: true }).map((power) => 10 ** power);
const farads = fc.double({ min: -12, max: -6, noNaN: true }).map((power) => 10 ** power);
const volts = fc.double({ min: -10, max: 10, noNaN: true });

/** The signals that drive the sources of a random circuit. */
export const signals = ["one", "two"] as const;

/** Elements of every kind between nodes by number; number zero is earth. */
const nodeName = (number: number) => (number === 0 ? earth : `node ${number}`);

const most = 7;
const place = fc.nat(most);
const other = (a: number, shift: number, nodes: number) => (a + 1 + (shift % (nodes - 1))) % nodes;

/** Each node hangs by a resistor on one written before it, so nothing floats; then whatever else, anywhere. */
export const circuits: fc.Arbitrary<Circuit> = fc
  .record({
    tree: fc.array(fc.tuple(fc.nat(), ohms), { minLength: 1, maxLength: most }),
    more: fc.array(
      fc.tuple(place, place, fc.oneof(ohms.map(asResistor), farads.map(asCapacitor))),
      {
        maxLength: 6,
      },
    ),
    sources: fc.array(fc.tuple(place, place, ohms, volts, volts), { minLength: 1, maxLength: 3 }),
  })
  .map(({ tree, more, sources }) => {
    const nodes = tree.length + 1;
    const ends = (a: number, shift: number) =>
      [nodeName(a % nodes), nodeName(other(a % nodes, shift, nodes))] as const;
    return [
      ...tree.map(([to, value], index) =>
        resistor(`tree ${index}`, nodeName(index + 1), nodeName(to % (index + 1)), value),
      ),
      ...more.map(([a, shift, make], index) => make(`more ${index}`, ...ends(a, shift))),
      ...sources.map(([at, shift, value, one, two], index): Source => {
        const [a, b] = ends(at, shift);
        const drive = { one, two };
        return { kind: "source", name: `source ${index}`, a, b, ohms: value, drive };
      }),
    ];
  });

type Make = (name: string, a: string, b: string) => Element;

function asResistor(value: number): Make {
  return (name, a, b) => resistor(name, a, b, value);
}

function asCapacitor(value: number): Make {
  return (name, a, b) => capacitor(name, a, b, value);
}

/** Frequencies a headphone feed knows, and direct current. */
export const frequencies = fc.oneof(
  fc.constant(0),
  fc.double({ min: 20, max: 20_000, noNaN: true }),
);
