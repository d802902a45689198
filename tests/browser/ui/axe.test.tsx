import { cleanup } from "@testing-library/preact";
import { afterEach, describe, expect, test } from "vitest";
import { cdp, page as tab } from "vitest/browser";
import { first } from "#ui/words/english/first.ts";
import { benchPlayer, numberOf } from "../support/bench-player.ts";
import { clean } from "../support/clean.ts";
import { button, heading, open, openBench, press } from "../support/open.tsx";
import { answerAll } from "../support/walk.ts";

afterEach(cleanup);

const number = numberOf("headphones 4 / body / sleeve open");

const sizes = { wide: [1280, 800], narrow: [390, 844] } as const;

describe.each(["dark"] as const)("%s, and other themes by their colours", (scheme) => {
  test.each(["wide", "narrow"] as const)("every screen is accessible, %s", async (size) => {
    const features = [
      { name: "prefers-color-scheme", value: scheme },
      { name: "prefers-reduced-motion", value: "reduce" },
    ];
    await cdp().send("Emulation.setEmulatedMedia", { features });
    const [width, height] = sizes[size];
    await tab.viewport(width, height);
    const opened = open();
    const player = benchPlayer(number);
    await clean("start");
    await openBench(number);
    await clean("board before");
    await press(/^4 guest/);
    await expect.element(button("Play")).toBeVisible();
    await clean("play");
    await press("Play");
    await clean("question");
    opened.player.change({ trouble: "lost" });
    await expect.poll(() => document.body.textContent).toContain(first.trouble.lost);
    await clean("trouble");
    await press("play again");
    await press("board");
    await press(/^4 guest/);
    expect(await answerAll(opened, player, false)).toBe("verdict");
    for (const details of document.querySelectorAll("details")) details.open = true;
    await clean("verdict");
    await press("board");
    await clean("board with trouble");
    await press(/^1 host/);
    await press("Hands are off the gear");
    expect(await answerAll(opened, player)).toBe("healthy");
    await clean("healthy");
    await press("board");
    await press("lift the curtain");
    await expect.element(heading()).toHaveTextContent(/return/);
    await clean("curtain");
  });
});
