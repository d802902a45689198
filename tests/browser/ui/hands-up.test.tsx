import { cleanup } from "@testing-library/preact";
import { afterEach, describe, expect, test } from "vitest";
import { cdp, page as tab } from "vitest/browser";
import { builtInRigs, straightIn } from "#core/rig/rigs.ts";
import { derive } from "#core/session/derive.ts";
import { numberOf } from "../support/bench-player.ts";
import { clean } from "../support/clean.ts";
import { button, heading, keys, open, openBench, press } from "../support/open.tsx";

afterEach(cleanup);

const [rig = straightIn] = builtInRigs;
const body = () => document.body.textContent ?? "";

describe("everybody at once", () => {
  test("enters what is as it should be, and goes to who differs", async () => {
    const opened = open({ seeds: [3, 5, 8, 13] });
    await press(rig.name);
    await press("All at once, hands up");
    for (const next of ["On", "On"]) {
      await press("Play to all");
      if (
        button(/^2 reader/)
          .element()
          .getAttribute("aria-pressed") === "false"
      )
        await press(/^2 reader/);
      await press(next);
    }
    await press("Play to all");
    await press("Done: 4 the same");
    await expect.poll(() => opened.log().length).toBe(1 + 3 * 4);
    await expect.element(heading()).toBeVisible();
    expect(document.querySelector("section .tape")?.textContent).toBe("2 reader");
    const derived = derive(opened.log());
    expect(derived?.rig.positions.map(({ id }) => derived.state(id))).toEqual([
      "healthy",
      "not heard",
      "healthy",
      "healthy",
      "healthy",
    ]);
  });

  test("is shown by the bench's own people", async () => {
    await openedBench("headphones 4 / body / tip open");
    await press("Play to all");
    await expect.element(button(/^4 guest/)).toBeVisible();
    await expect.poll(() => document.querySelectorAll(".pointed").length).toBe(4);
  });

  test("keys are enough", async () => {
    const { player } = await openedBench("headphones 4 / body / tip open");
    const focused = () => document.activeElement?.textContent?.trim();
    const tabTo = async (name: string) => {
      for (let tabs = 0; tabs < 20 && !focused()?.startsWith(name); tabs++) await keys("{Tab}");
      await keys("{Enter}");
    };
    await expect.poll(focused).toBe("One knock, twice.");
    await tabTo("Play to all");
    await expect.element(heading()).toHaveTextContent("Who points elsewhere?");
    await tabTo("All the same, on");
    await expect.poll(focused).toBe("Two quick knocks, twice.");
    expect(player.calls.filter(({ asked }) => asked === "play")).toHaveLength(1);
  });

  test("Esc is silence, however often it is pressed", async () => {
    const { log } = await openedBench("headphones 4 / body / tip open");
    await press("Play to all");
    await press(/^4 guest/);
    await keys("{Escape}{Escape}");
    await expect.element(button(/^4 guest/)).toHaveAttribute("aria-pressed", "true");
    await expect.element(heading()).toHaveTextContent("Who points elsewhere?");
    expect(log()).toHaveLength(1);
  });

  test("is gone on with after a look at something else, and by the board; not once it was stopped", async () => {
    await openedBench("headphones 4 / body / tip open");
    const stands = async () => {
      await expect.element(heading()).toHaveTextContent("Who points elsewhere?");
      await expect.poll(body).toContain("sound 2 of 3");
      await expect.element(button(/^4 guest/)).toHaveAttribute("aria-pressed", "true");
    };
    await press("Play to all");
    await press(/^4 guest/);
    await press("On");
    await press("Play to all");
    await stands();
    await press(/^to whatever the system/);
    await expect.element(button("back")).toBeVisible();
    await press("back");
    await stands();
    await press("board");
    await press("All at once, hands up");
    await stands();
    await press("stop here");
    await press("All at once, hands up");
    await expect.poll(body).toContain("sound 1 of 3");
    await expect.element(heading()).toHaveTextContent("One knock, twice.");
  });

  test("is not offered for two seats", async () => {
    open();
    await press("One person");
    await expect.element(button(/^Listen at/)).toBeVisible();
    expect(body()).not.toContain("All at once");
  });
});

async function openedBench(id: string) {
  const opened = open({ seeds: [3] });
  await openBench(numberOf(id));
  await press("All at once, hands up");
  return opened;
}

describe.each(["dark"] as const)("%s, and other themes by their colours", (scheme) => {
  test.each([
    [1280, 800],
    [390, 844],
  ])("a pass is accessible at %i by %i", async (width, height) => {
    const features = [
      { name: "prefers-color-scheme", value: scheme },
      { name: "prefers-reduced-motion", value: "reduce" },
    ];
    await cdp().send("Emulation.setEmulatedMedia", { features });
    await tab.viewport(width, height);
    await openedBench("headphones 4 / body / sleeve open");
    await clean("hands up, before");
    await press("Play to all");
    await press(/^4 guest/);
    await clean("hands up");
    await press("On");
    await press("Play to all");
    await press("On");
    await press("Play to all");
    await expect.element(button("Done: 4 the same")).toBeVisible();
    await clean("hands up, the pair");
  });
});
