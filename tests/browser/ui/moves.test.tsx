import { cleanup } from "@testing-library/preact";
import { afterEach, describe, expect, test } from "vitest";
import { cdp, page as tab } from "vitest/browser";
import { english } from "#core/words/english.ts";
import { benchPlayer, numberOf } from "../support/bench-player.ts";
import { clean } from "../support/clean.ts";
import { crackle, goOn, twisting } from "../support/kept.ts";
import { button, heading, open, openBench, press } from "../support/open.tsx";
import { answerAll, answerOne } from "../support/walk.ts";

afterEach(cleanup);

const body = () => document.body.textContent ?? "";

describe("a move", () => {
  test("is said, muted, made, and heard again", async () => {
    const { log, player } = await goOn(crackle);
    await expect.element(heading()).toHaveTextContent(/plug of headphones 4/);
    expect(body()).toContain("Volume down first.");
    expect(body()).toContain("This may cure it.");
    await expect.poll(() => player.world().muted).toBe(true);
    await press("Done, check again");
    await expect.poll(() => log().at(-1)).toMatchObject({ move: { move: "plugged anew" } });
    expect(player.calls.findLast(({ asked }) => asked !== "arrive")).toEqual({ asked: "handOff" });
    await expect.element(button("Play")).toBeVisible();
  });

  test("that is not possible is not asked for again", async () => {
    const { log } = await goOn(crackle);
    await expect.element(heading()).toHaveTextContent(/plug of headphones 4/);
    await press("Not possible here");
    await expect.poll(() => log().at(-1)).toMatchObject({ entry: "cannot" });
    await expect.element(heading()).not.toHaveTextContent(/Pull the plug of headphones 4/);
    expect(document.querySelector(".last")?.textContent).toContain("not possible here");
  });

  test("says how long it will take, and why it comes next", async () => {
    await goOn(crackle);
    await expect.element(heading()).toHaveTextContent(/plug of headphones 4/);
    expect(body()).toContain("Less than a minute to a working rig");
    await tab.getByText("Why this next").click();
    const steps = [...document.querySelectorAll(".why-next li")].map((one) => one.textContent);
    expect(steps.length).toBeGreaterThan(1);
    expect(steps[0]).toContain("less than a minute");
    for (const step of steps.slice(1)) expect(step).toMatch(/: (about as long|\d+ s longer)$/);
  });
});

describe("a plug that is twisted", () => {
  test("makes no sound where the volume may still be up, until somebody says that it is down", async () => {
    const { player } = await goOn(twisting());
    await expect.element(button("Play while you twist")).toBeVisible();
    player.change({ turnedUp: true });
    await press("The volume is back down");
    expect(player.calls.at(-1)).toEqual({ asked: "handOff" });
    await press("Play while you twist");
    await expect.poll(() => player.calls.some(({ asked }) => asked === "play")).toBe(true);
  });

  test("is heard at most 20 dB lower, and answered by pointing", async () => {
    const { log, player } = await goOn(twisting());
    await expect.element(heading()).toHaveTextContent("Twist the plug of headphones 4.");
    await expect.poll(() => player.world().muted).toBe(true);
    await press("Play while you twist");
    const [off, ...plays] = player.calls.slice(
      player.calls.findIndex((one) => one.asked === "handOff"),
    );
    expect(off).toEqual({ asked: "handOff" });
    expect(plays).toEqual([{ asked: "play", name: "rotation", seed: 0, how: { loop: true } }]);
    await press("it comes and goes");
    await expect
      .poll(() => log().at(-1))
      .toMatchObject({ finding: { asked: { check: "twist" }, results: [["it comes and goes"]] } });
  });

  test.each([
    ["headphones 4 / body / ring open, now and then", "it comes and goes"],
    ["headphones 4 / body / ring open", "nothing changes"],
  ])("on the bench shows %s", async (id, answer) => {
    const { player } = await goOn(twisting(), numberOf(id));
    await expect.poll(body).toContain(`You twist: ${answer}.`);
    await press("Play while you twist"); // the bench's contact comes and goes from one playing to the next
    await expect.poll(() => player.calls.filter(({ asked }) => asked === "play").length).toBe(4);
  });
});

test("what was laid aside is named, and can be put back to see whether it returns", async () => {
  const number = numberOf("headphones 4 / body / ring open");
  const opened = open({ seeds: [3, 5, 8, 13] });
  const player = benchPlayer(number);
  await openBench(number);
  await press(/^4 guest/);
  expect(await answerAll(opened, player)).toBe("healthy");
  expect(document.querySelector(".it-was")?.textContent).toMatch(
    /^Most likely it was: .*ring.* headphones 4/,
  );
  expect(body()).toContain("headphones 4 stays aside");
  await press("put it back: does it return?");
  await expect.poll(() => opened.player.world().muted).toBe(true);
  await press("Leave it aside");
  await press("put it back: does it return?");
  await press("Done, check again");
  await expect
    .poll(() => opened.log().at(-1))
    .toMatchObject({ move: { move: "put back", part: "headphones 4" } });
});

test("headphones turned round tell the gear from the listener, and are turned back", async () => {
  const number = numberOf("laptop / settings / balance far to the right");
  const opened = open({ seeds: [3, 5, 8, 13] });
  const player = benchPlayer(number);
  const { headphones } = english.complaints.meOrGear;
  await openBench(number);
  await press(/^1 host/);
  const until = async (title: RegExp) => {
    for (let asked = 0; asked < 20; asked++) {
      await expect.poll(() => document.querySelector("section")).not.toBeNull();
      if (title.test(document.querySelector("h1")?.textContent ?? "")) return;
      await answerOne(opened, player, false);
    }
  };
  await until(/^Turn the headphones round/);
  expect(body()).toContain(headphones);
  expect(body()).toContain("To see what changes");
  await press("Done, check again");
  await expect.poll(() => opened.log().at(-1)).toMatchObject({ move: { move: "turned round" } });
  await until(/^Turn them back/);
  await expect.element(heading()).toHaveTextContent("Turn them back: each cup on its own ear.");
  expect(body()).not.toContain(headphones);
  expect(body()).not.toContain("Not possible here");
});

describe.each(["dark"] as const)("%s, and other themes by their colours", (scheme) => {
  test.each([
    [1280, 800],
    [390, 844],
  ])("moves and twists are accessible at %i by %i", async (width, height) => {
    const features = [
      { name: "prefers-color-scheme", value: scheme },
      { name: "prefers-reduced-motion", value: "reduce" },
    ];
    await cdp().send("Emulation.setEmulatedMedia", { features });
    await tab.viewport(width, height);
    await goOn(crackle);
    await expect.element(button("Done, check again")).toBeVisible();
    for (const details of document.querySelectorAll("details")) details.open = true;
    await clean("a move");
    await goOn(twisting(), 114);
    await expect.element(button("Play while you twist")).toBeVisible();
    await clean("a twist");
  });
});
