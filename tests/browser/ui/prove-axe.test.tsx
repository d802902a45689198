import { cleanup } from "@testing-library/preact";
import { afterEach, describe, expect, test } from "vitest";
import { cdp, page as tab } from "vitest/browser";
import { clean } from "../support/clean.ts";
import { meterAll } from "../support/meter.ts";
import { button, heading, open, press } from "../support/open.tsx";

afterEach(cleanup);

const sizes = { wide: [1280, 800], narrow: [390, 844], least: [320, 640] } as const;
const stereo = /^stereo jack three/;

describe.each(["dark"] as const)("%s, and other themes by their colours", (scheme) => {
  test.each(["wide", "narrow", "least"] as const)("the bench is accessible, %s", async (size) => {
    const features = [
      { name: "prefers-color-scheme", value: scheme },
      { name: "prefers-reduced-motion", value: "reduce" },
    ];
    await cdp().send("Emulation.setEmulatedMedia", { features });
    const [width, height] = sizes[size];
    await tab.viewport(width, height);
    const opened = open();
    await press("Prove a lead");
    await clean("one end");
    await press(stereo);
    await clean("the other end");
    await press(/^two mono jacks/);
    await clean("kinds");
    await press(/^insert Y lead/);
    await expect.element(button(/^by ear.*It cannot see/)).toBeVisible();
    await clean("ways of proving");
    await press(/^with a multimeter/);
    await expect.element(button(/^no beep/)).toBeVisible();
    await clean("the first reading");
    await press(/^no beep/);
    await expect.element(button("take the last reading back")).toBeVisible();
    await clean("something suspected");
    await press("take the last reading back");
    await meterAll(opened, { kind: "insert Y", fault: "lead / body / tip and ring exchanged" });
    await clean("what is wrong");
    await press("Measure another way");
    await press(/^through a load box/);
    await expect.element(heading()).toHaveTextContent("into the load box");
    await clean("the load box");
    await press("back");
    await press(/^by ear/);
    await expect.element(heading()).toHaveTextContent("Put it between gear");
    await clean("plugged in between good gear");
    await press("It is plugged in");
    await expect.element(button("Play")).toBeVisible();
    await clean("by ear");
  });
});
