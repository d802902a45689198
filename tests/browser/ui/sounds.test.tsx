import { cleanup } from "@testing-library/preact";
import { afterEach, describe, expect, test } from "vitest";
import { page as tab } from "vitest/browser";
import type { Outputs } from "#audio/outputs.ts";
import { everyName } from "#core/signals/everything.ts";
import { clean } from "#tests/browser/support/clean.ts";
import { button, heading, keys, open, openBench, press } from "#tests/browser/support/open.tsx";

afterEach(cleanup);

const body = () => document.body.textContent ?? "";

const two: Outputs = {
  canChoose: () => true,
  known: async () => [],
  named: async () => [
    { id: "a", name: "Rack interface" },
    { id: "b", name: "Desk" },
  ],
};

describe("where the sound goes", () => {
  const go = async (outputs: Outputs) => {
    const opened = open({ outputs });
    await press("Where the sound goes");
    await expect.element(heading()).toHaveTextContent("Where the sound goes");
    return opened;
  };

  test("is heard: its numbers, then each side by itself", async () => {
    const { player } = await go(two);
    await clean("sound out");
    await press("Hear which it is");
    await expect.poll(() => player.calls.filter(({ asked }) => asked === "speak").length).toBe(3);
    expect(player.calls.filter(({ asked }) => asked === "speak")).toEqual([
      {
        asked: "speak",
        prompts: [{ prompt: "outputs", numbers: [1, 2] }],
        how: { to: "either ear" },
      },
      { asked: "speak", prompts: [{ prompt: "left" }], how: { to: "left" } },
      { asked: "speak", prompts: [{ prompt: "right" }], how: { to: "right" } },
    ]);
  });

  test("can be chosen once the browser was asked for the names, and a pair of its channels", async () => {
    const { player } = await go(two);
    expect(body()).toContain("the microphone is closed again at once");
    await press("Ask the browser for their names");
    await expect.element(button("Desk")).toBeVisible();
    expect(body()).toContain("Hear it again before you go on");
    await press("Desk");
    expect(player.calls.at(-1)).toEqual({
      asked: "use",
      route: { device: { id: "b", name: "Desk" }, first: 0 },
    });
    await expect.element(button("Desk")).toHaveAttribute("aria-pressed", "true");
    player.change({ channels: 6 });
    await clean("sound out with channels");
    await press("output 3 and 4");
    expect(player.calls.at(-1)).toMatchObject({ asked: "use", route: { first: 2 } });
    await press("Hear which it is");
    await expect
      .poll(() => player.calls.find(({ asked }) => asked === "speak"))
      .toMatchObject({ prompts: [{ prompt: "outputs", numbers: [3, 4] }] });
  });

  test.for([
    ["cannot choose", false, "wherever the system says"],
    ["not allowed", true, "did not let the names be seen"],
    ["none", true, "no output but the system's own"],
  ] as const)("%s: says so, and how to choose in the system", async ([why, can, words]) => {
    await go({ canChoose: () => can, known: async () => [], named: async () => why });
    if (can) await press("Ask the browser for their names");
    await expect.poll(body).toContain(words);
    expect(body()).toContain("sound settings");
  });

  test("is asked about from a message, and leads back", async () => {
    const { player } = open({ outputs: two });
    await press("One person");
    player.change({ trouble: "gone" });
    await expect.poll(body).toContain("The output that was chosen has gone");
    await press("Sound out");
    await expect.element(heading()).toHaveTextContent("Where the sound goes");
    await press("board");
    await expect.element(button(/^1 you/)).toBeVisible();
  });
});

describe("test sounds", () => {
  test("are played by pointing, over and over where asked, and stopped by pointing again", async () => {
    const { player } = open();
    await press("Test sounds, to play or take away");
    await expect.element(button("Line up")).toBeVisible();
    await clean("test sounds");
    await press("Line up");
    expect(player.calls.at(-1)).toMatchObject({ name: "line-up", how: { loop: false } });
    expect(body()).toContain("1 kHz at −18 dBFS");
    await tab.getByLabelText("over and over").click();
    await press("Click");
    await expect.element(button("Click")).toHaveAttribute("aria-pressed", "true");
    expect(player.calls.at(-1)).toMatchObject({ name: "click", how: { loop: true } });
    await press("Click");
    expect(player.calls.at(-1)).toEqual({ asked: "silence" });
    expect(player.world().playing).toBe(false);
  });

  test("after one that is listened to with the volume up, the volume is back down first", async () => {
    const { player } = open();
    await press("Test sounds, to play or take away");
    await expect.element(button("Hum 50")).toBeVisible();
    player.change({ muted: true, turnedUp: true });
    await expect.element(button("Line up")).toBeDisabled();
    await press("The volume is back down");
    expect(player.calls.at(-1)).toEqual({ asked: "handOff" });
    await expect.element(button("Line up")).toBeEnabled();
  });

  test("are reached with the keyboard alone", async () => {
    const { player } = open();
    await press("Test sounds, to play or take away");
    await expect.element(button("Left ident")).toBeVisible();
    await expect.poll(() => player.calls.some(({ asked }) => asked === "arrive")).toBe(true);
    button("Left ident").element().focus();
    await keys("{ArrowRight}{Enter}");
    expect(player.calls.at(-1)).toMatchObject({ name: "right-ident" });
  });
});

/** Names of the files in a ZIP: of each entry in its central directory, as the published format has it. */
function namesIn(zip: DataView): string[] {
  const names: string[] = [];
  for (let at = 0; at + 46 < zip.byteLength; at++) {
    if (zip.getUint32(at, true) !== 0x02014b50) continue;
    const name = new Uint8Array(zip.buffer, at + 46, zip.getUint16(at + 28, true));
    names.push(new TextDecoder().decode(name));
  }
  return names;
}

describe("the files to take away", () => {
  test("are made with progress, and saved as one", { timeout: 60_000 }, async () => {
    open();
    await press("Test sounds, to play or take away");
    await press("Make the files");
    await expect.element(tab.getByRole("progressbar")).toBeVisible();
    const save = tab.getByRole("link", { name: /^Save the files, \d+ MB$/ });
    await expect.element(save, { timeout: 50_000 }).toBeVisible();
    expect(save.element().getAttribute("download")).toBe("test-signals.zip");
    const zip = await fetch(save.element().getAttribute("href") ?? "");
    const names = namesIn(new DataView(await zip.arrayBuffer()));
    expect(names.length).toBe(everyName.length + 1);
    expect(names).toContain("sheet.txt");
    expect(names).toContain("instruments-staircase.wav");
  });

  test("are let go when stopped", async () => {
    open();
    await press("Test sounds, to play or take away");
    await press("Make the files");
    await press("stop");
    await expect.element(button("Make the files")).toBeVisible();
  });
});

test("somebody is told what to do in their own ears, by their number", async () => {
  const { player } = open();
  await openBench(7);
  await press(/^3 /);
  await press("say to them: point to where you hear it");
  expect(player.calls.at(-1)).toMatchObject({
    asked: "speak",
    prompts: [{ prompt: "position", number: 3 }, { prompt: "point-to-where" }],
    how: { through: { ll: expect.any(Number) } },
  });
});
