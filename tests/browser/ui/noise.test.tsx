import { cleanup } from "@testing-library/preact";
import { afterEach, describe, expect, test } from "vitest";
import { page as tab } from "vitest/browser";
import { example } from "#core/rig/rigs.ts";
import { add, type Log, type Said } from "#core/session/log.ts";
import { createMemoryShelf } from "#storage/memory-shelf.ts";
import { clean } from "../support/clean.ts";
import { button, heading, keys, open, press } from "../support/open.tsx";

afterEach(cleanup);

const last = (log: Log) => log.at(-1);

/** A session of the hall, as far as it was said. */
function kept(...said: readonly Said[]) {
  const shelf = createMemoryShelf();
  const all: readonly Said[] = [{ entry: "drawing", rig: example }, ...said];
  shelf.lay(
    "kept",
    all.reduce((log: Log, one) => add(log, one, 0), []),
  );
  return shelf;
}

const tried = (
  noise: "hum" | "distortion",
  trial: Extract<
    Extract<Said, { entry: "finding" }>["finding"]["asked"],
    { check: "noise" }
  >["trial"],
  ...given: readonly string[]
): Said => ({
  entry: "finding",
  finding: { asked: { check: "noise", position: "position 1", noise, trial }, results: [given] },
});

async function atFirstSeat() {
  await press("Go on with the last session");
  await press(/^1 host/);
}

describe("from a complaint to where it comes in", () => {
  test("a hum asks for one thing to try, by a number key; it is taken back", async () => {
    const { log, player } = open();
    await press("Something sounds wrong");
    await press("It hums");
    await press(/^a headphone amplifier/);
    await press("headphones");
    await press("2");
    await press("nobody asked yet");
    await expect.element(heading()).toHaveTextContent("Stop what plays");
    await expect.poll(() => player.world().muted).toBe(true);
    await expect.element(tab.getByText("What becomes of the hum?")).toBeVisible();
    await expect.element(tab.getByText(/tingles, stop/)).toBeVisible();
    await keys("3");
    await expect
      .poll(() => last(log()))
      .toMatchObject({
        finding: { asked: { check: "noise", noise: "hum" }, results: [["the same"]] },
      });
    await expect.element(heading()).not.toHaveTextContent("Stop what plays");
    await press("take the last answer back");
    await expect.element(heading()).toHaveTextContent("Stop what plays");
    await press("Not possible here");
    await expect.poll(() => last(log())).toMatchObject({ finding: { results: [[]] } });
    await expect.element(heading()).not.toHaveTextContent("Stop what plays");
    await press("back");
    await expect.element(button("Where does the hum come in?")).toBeVisible();
  });

  test("from a position, which of them it is", async () => {
    open({ shelf: kept() });
    await atFirstSeat();
    await press("It hisses, hums, crackles or distorts");
    await expect.element(heading()).toHaveTextContent("Which of these is it?");
    await press(/^Distortion/);
    await expect.element(tab.getByText("What becomes of the distortion?")).toBeVisible();
    await clean("which noise, and what to try");
  });
});

describe("where it ends", () => {
  test("what helps is said with what keeps one alive, and a move mends", async () => {
    const driver = tried("distortion", { try: "other headphones" }, "gone");
    const { log } = open({ shelf: kept(driver, driver) });
    await atFirstSeat();
    await press("Where does the distortion come in?");
    await expect.element(heading()).toHaveTextContent("A driver of headphones 1 is torn or worn.");
    await clean("where a noise comes in");
    await press("Done, listen again");
    await expect
      .poll(() => last(log()))
      .toMatchObject({ move: { move: "replaced", place: "headphones 1" } });
    await expect.element(tab.getByText("What becomes of the distortion?")).toBeVisible();
  });

  test("a ground loop is broken at the signal, never at the mains", async () => {
    const twice = [
      tried("hum", { try: "programme stopped" }, "the same"),
      tried("hum", { try: "feed out", part: "amplifier" }, "gone"),
      tried("hum", { try: "knob down", part: "mixer", socket: "phones" }, "the same"),
      tried("hum", { try: "one outlet" }, "gone"),
      tried("hum", { try: "other leads out" }, "the same"),
    ];
    // Nothing is left that would tell more.
    const loop = [
      ...twice,
      ...twice,
      tried("hum", { try: "one outlet" }, "gone"),
      tried("hum", { try: "lead bent", part: "feed lead" }, "the same"),
      tried("hum", { try: "plugs turned", part: "feed lead" }, "the same"),
      tried("hum", { try: "on battery", part: "laptop" }, "the same"),
    ];
    open({ shelf: kept(...loop) });
    await atFirstSeat();
    await press("Where does the hum come in?");
    // Two judgements of leads and outlets are never quite sure; it leads all the same.
    await expect
      .element(tab.getByText(/a ground loop, closed by the lead into the amplifier/i).first())
      .toBeVisible();
    await expect.element(tab.getByText(/Never take the earth off a mains plug/)).toBeVisible();
    await expect.element(tab.getByText(/isolating transformer/)).toBeVisible();
    await expect.element(tab.getByText(/licensed electrician/)).toBeVisible();
  });
});
