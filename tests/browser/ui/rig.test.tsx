import { cleanup } from "@testing-library/preact";
import { afterEach, beforeEach, expect, test, vi } from "vitest";
import { page as tab, userEvent } from "vitest/browser";
import { createMemoryShelf } from "#storage/memory-shelf.ts";
import { button, heading, keys, open, press } from "../support/open.tsx";
import { drag, drawnIn, keyTo, openRig, seatsIn, startOf, thing } from "../support/rig.ts";

afterEach(cleanup);
// A busy machine may take ten times as long; no test waits for this.
vi.setConfig({ testTimeout: 60_000 });
beforeEach(() => tab.viewport(1280, 800));

const table = [
  "1 host: headphone amplifier, output 1",
  "2 guest: headphone amplifier, output 2",
  "3: headphone amplifier, output 3",
  "4: headphone amplifier, output 4",
];

/** Goes to the board, and to the first position, where something is to be heard. */
async function checks() {
  await expect.element(heading()).toHaveTextContent("4 positions to check");
  await press("Listen at 1 host");
  await expect.element(button("Play")).toBeVisible();
}

test("a podcast table of four out of one person and a laptop, by pointer", async () => {
  const { log } = await openRig(startOf("draw your own"));
  await drag("headphone amplifier", /^TRS 3.5 mm in phones of laptop/);
  await expect.element(thing(/^headphone amplifier, headphone amplifier/)).toBeVisible();
  for (const number of [2, 3, 4]) {
    await drag(/^headphones$/, /^headphone amplifier, headphone amplifier/);
    await expect.element(thing(`${number}, position with headphones ${number}`)).toBeVisible();
  }
  await name("1 you, position", "1 host");
  await name("2, position", "2 guest");
  await expect.poll(() => seatsIn(drawnIn(log()))).toEqual(table);
  await press("Check this rig");
  await checks();
});

async function name(seat: string, tape: string) {
  await thing(seat).click();
  await press("name");
  await tab.getByLabelText("What stands on its tape").fill(tape);
  await press("name it");
  await expect.element(thing(`${tape}, position`)).toHaveFocus();
}

test("the same by keyboard alone, undone and done again on the way", async () => {
  const { log } = await openRig(startOf("draw your own"));
  await keyTo("1 you");
  await keys("{ArrowLeft}{ArrowLeft}");
  await keyTo(/^\s*headphones$/);
  await keyTo("headphone amplifier", "{ArrowRight}");
  await keys("{Enter}");
  await keyTo("in the way of headphones");
  await keys("{Enter}");
  await expect.element(thing(/in output 1 of headphone amplifier/)).toHaveFocus();
  for (const number of [2, 3, 4]) {
    await keyTo("1 you", "{ArrowRight}");
    await keys("{Enter}");
    await keyTo("copy it");
    await keys("{Enter}");
    await expect.element(thing(`${number} you, position`)).toBeVisible();
  }
  await keys("{Control>}z{/Control}");
  await expect.poll(() => drawnIn(log()).positions.length).toBe(3);
  await keys("{Control>}{Shift>}z{/Shift}{/Control}");
  await expect.poll(() => drawnIn(log()).positions.length).toBe(4);
  await keyTo("1 you, position");
  await keys("{Enter}");
  await keyTo(/^\s*name/);
  await keys("{Enter}");
  await keys("1 host{Enter}");
  await expect.element(thing("1 host, position")).toHaveFocus();
  await expect
    .poll(() => drawnIn(log()).positions.map(({ name: tape }) => tape))
    .toEqual(["1 host", "4 you", "3 you", "2 you"]);
  await keyTo("Check this rig");
  await keys("{Enter}");
  await checks();
});

test("a plug changes places by dragging; where it does not fit, why is said and nothing is entered", async () => {
  const { log } = await openRig(startOf("podcast table"));
  await drag(/in output 1 of amplifier/, /in output 3 of amplifier/);
  await expect.poll(() => seatsIn(drawnIn(log()))[0]).toBe("1 host: amplifier, output 3");
  const entries = log().length;
  await drag(/in in of amplifier, feed lead/, /in output 2 of amplifier/);
  await expect.element(tab.getByRole("alert")).toHaveTextContent(/go round|fed from two|does not/);
  expect(log()).toHaveLength(entries);
  await press("undo");
  await expect.poll(() => seatsIn(drawnIn(log()))[0]).toBe("1 host: amplifier, output 1");
});

test("Delete takes out what is focused, with what hangs on nothing else; the last position stays", async () => {
  const { log } = await openRig(startOf("podcast table"));
  await thing("3 guest, position").click();
  await keys("{Escape}");
  await expect.element(thing("3 guest, position")).toHaveFocus();
  await keys("{Delete}");
  await expect.poll(() => drawnIn(log()).positions.length).toBe(3);
  await thing("amplifier, headphone amplifier").click();
  await press("remove");
  await expect.element(tab.getByRole("alert")).toHaveTextContent("Somebody has to listen");
  expect(drawnIn(log()).positions).toHaveLength(3);
});

test("a plug is put elsewhere by a list of sockets, and a name that is taken is refused in place", async () => {
  const { log } = await openRig(startOf("small studio"));
  await thing(/in phones of interface/).click();
  await press("re-plug");
  await expect.element(tab.getByText("Which socket?")).toBeVisible();
  await press(/^output 3 of amplifier/);
  await expect.poll(() => seatsIn(drawnIn(log()))[0]).toBe("1 desk: amplifier, output 3");
  await thing("left lead, stereo jack lead").click();
  await press("name");
  await userEvent.fill(tab.getByLabelText("What is it called: stereo jack lead"), "amplifier");
  await press("name it");
  await expect.element(tab.getByRole("alert")).toHaveTextContent("called 'amplifier' already");
  await expect.element(tab.getByLabelText("What is it called: stereo jack lead")).toBeVisible();
});

test("numbers and choices of a thing are entered once each, and refused where something is plugged in", async () => {
  const { log } = await openRig(startOf("podcast table"));
  await thing("amplifier, headphone amplifier").click();
  await press("change");
  await tab.getByLabelText("outputs").fill("3");
  await press("set");
  await expect.element(tab.getByRole("alert")).toHaveTextContent("headphones 4 is in output 4");
  await tab.getByLabelText("outputs").fill("8");
  await press("set");
  await expect.poll(() => log().length).toBe(2);
  await expect.element(tab.getByText("4 free sockets")).toBeVisible();
});

test("no number is entered that does not stand in its field", async () => {
  const { log } = await openRig(startOf("podcast table"));
  await thing("amplifier, headphone amplifier").click();
  await press("change");
  const field = tab.getByLabelText("outputs");
  await field.fill("6");
  await field.fill("6000");
  await keys("{Enter}");
  await field.fill("6");
  await field.fill("4");
  await keys("{Enter}");
  await expect.element(field).toBeVisible();
  expect(log()).toHaveLength(1);
});

test("on a slow disk the focus goes on as well, once it is drawn", async () => {
  const kept = createMemoryShelf();
  kept.lay("kept", [{ entry: "drawing", rig: startOf("podcast table"), id: "1", at: 0 }]);
  const slow = new Promise<void>((resolve) => setTimeout(resolve, 1));
  let disk = slow;
  const shelf = {
    ...kept,
    add: (one: Parameters<typeof kept.add>[0]) => disk.then(() => kept.add(one)),
  };
  open({ shelf });
  await press("Go on with the last session");
  await press("the rig");
  await thing("3 guest, position").click();
  let written = () => {};
  disk = new Promise((resolve) => {
    written = resolve;
  });
  await press("copy it");
  await new Promise((resolve) => requestAnimationFrame(() => requestAnimationFrame(resolve)));
  written();
  await expect.poll(() => document.querySelector(".rig-actions")).toBeNull();
  await expect.element(thing("3 guest, position")).toHaveFocus();
});
