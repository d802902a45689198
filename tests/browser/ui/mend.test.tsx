import { cleanup, render } from "@testing-library/preact";
import { afterEach, expect, test } from "vitest";
import { isUnlisted } from "#core/diagnosis/fault-sets.ts";
import { build } from "#core/rig/rig.ts";
import { rigFaults } from "#core/rig/rig-faults.ts";
import { builtInRigs, straightIn } from "#core/rig/rigs.ts";
import { MendPicture } from "#ui/parts/mend-picture.tsx";
import { words } from "#ui/words/english.ts";
import { WordsContext } from "#ui/words/use-words.ts";

afterEach(cleanup);

const [drawn = straightIn] = builtInRigs;
const rig = build(drawn);
const faults = rigFaults(rig).filter((fault) => !isUnlisted(fault));

const drawingOf = (id: string) => {
  const fault = faults.find((one) => one.id === id);
  if (fault === undefined) throw new Error(`there is no fault ${id}`);
  return render(
    <WordsContext.Provider value={words}>
      <MendPicture rig={rig} fault={fault} wide label="as it is" />
    </WordsContext.Provider>,
  ).container;
};

test("every fault of a rig has a repair that is drawn", () => {
  for (const { id } of faults) expect(drawingOf(id).querySelector("svg"), id).not.toBeNull();
});

test("a wire of a lead is drawn broken between its contacts", () => {
  const lead = drawingOf("feed lead / body / ring open");
  expect(lead.querySelector("[role='img']")?.getAttribute("aria-label")).toBe("as it is");
  expect(lead.querySelectorAll(".lane.nothing")).toHaveLength(1);
});

test("what is pushed home, turned and switched is no lead", () => {
  for (const id of [
    "feed lead / far / not home, first click",
    "laptop / settings / balance hard left",
    "mixer / settings / mono",
  ])
    expect(drawingOf(id).querySelector(".lead-drawing"), id).toBeNull();
});

test("a knob is turned and a fader slid, whatever it is called; a button is pressed", () => {
  const knob = (id: string) => drawingOf(id).querySelector("circle.box") !== null;
  const controls = faults.filter(({ edits: [edit] }) => edit?.edit === "control");
  const drawn = new Map(controls.map(({ id, name }) => [name, knob(id)]));
  expect(drawn.get("balance hard left")).toBe(true);
  expect(drawn.get("left channel down")).toBe(true);
  expect(drawn.get("mono")).toBe(false);
});
