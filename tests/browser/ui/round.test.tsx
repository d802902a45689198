import { cleanup, render } from "@testing-library/preact";
import { afterEach, expect, test, vi } from "vitest";
import { page as tab } from "vitest/browser";
import { example } from "#core/rig/rigs.ts";
import { add } from "#core/session/log.ts";
import { derived, empty, well } from "#tests/support/entries.ts";
import { CameFrom } from "#ui/screens/came-from.tsx";
import { words } from "#ui/words/english.ts";
import { WordsContext } from "#ui/words/use-words.ts";
import { button, heading, keys, open, openBench, press } from "../support/open.tsx";

afterEach(cleanup);
// A busy machine may take ten times as long; no test waits for this.
vi.setConfig({ testTimeout: 60_000 });

const text = () => document.querySelector("main")?.textContent ?? "";
const seat = () => document.querySelector("section .tape")?.textContent ?? "";
const otherwise = () => tab.getByText(words.round.otherwise).click();

/** From the first screen to the first of five positions. */
async function atFirst() {
  const opened = open();
  await press("Tallow Hall story evening");
  await press("Listen at 1 host");
  await expect.element(button("Play")).toBeVisible();
  return opened;
}

test("whoever skips a position with its question open begins anew at the next", async () => {
  const { log } = await atFirst();
  await press("Play");
  await expect.element(button("middle")).toBeVisible();
  await otherwise();
  await press("Skip, on to 2 reader");
  await expect.element(button("Play")).toBeVisible();
  expect(document.querySelector("details.otherwise")?.hasAttribute("open")).toBe(false);
  expect(log()).toHaveLength(1);
});

test("a position where nobody is neither counts nor was heard, and whoever comes there is told anew", async () => {
  const { player } = await atFirst();
  const spoken = () => player.calls.filter(({ asked }) => asked === "speak").length;
  await press("they point, I face them");
  await press(words.sounding.say);
  await expect.poll(spoken).toBe(1);
  await press("Play");
  await expect.element(button("middle")).toBeVisible();
  expect(spoken()).toBe(1);
  await otherwise();
  await press("Nobody is here");
  await expect.element(button("Play")).toBeVisible();
  await press("board");
  await expect.element(heading()).toHaveTextContent("4 positions to check");
  await press(/^1 host/);
  await expect.element(heading()).toHaveTextContent("Nobody is here");
  await press("what is this?");
  await expect.poll(text).not.toContain("Where in the head");
  await expect
    .poll(() => document.querySelector("#help .help-question")?.textContent)
    .toBe(words.help.screens.absent.question);
  await press("Somebody is here again");
  await press("Play");
  await expect.element(button("middle")).toBeVisible();
  expect(spoken()).toBe(2);
});

test("whoever has them told keeps their place meanwhile, and it is said once", async () => {
  const { player } = await atFirst();
  const say = button(words.sounding.say);
  await say.click();
  await expect.element(say).toHaveFocus();
  player.change({ playing: true });
  await expect.element(say).toHaveAttribute("aria-disabled", "true");
  await expect.element(say).toHaveFocus();
  await keys("{Enter}");
  expect(player.calls.filter(({ asked }) => asked === "speak")).toHaveLength(1);
});

test("a session in which nobody was there but at the board is cautioned still", async () => {
  await atFirst();
  await otherwise();
  await press("Nobody is here");
  await press("board");
  await expect.element(heading()).toHaveTextContent("4 positions to check");
  expect(document.querySelector(".cautions")).not.toBeNull();
});

test("what is wanted in mono is said over the question, and taken back there", async () => {
  const { log } = await atFirst();
  await otherwise();
  await press("mono");
  await expect.poll(text).toContain(words.round.wantedSo.mono);
  await expect.poll(() => log().at(-1)).toMatchObject({ entry: "drawing" });
  await press("no, stereo");
  await expect.poll(text).not.toContain(words.round.wantedSo.mono);
  const last = log().at(-1);
  expect(last?.entry === "drawing" && last.rig).toEqual(example);
});

test("what says 'here' means the seat that is asked, also for another one's sake", async () => {
  const { log } = open();
  await press("Stage in-ears");
  await press(/^1 voice/);
  await otherwise();
  await press("all in the left ear");
  await expect.poll(text).toContain(words.round.wantedSo["left ear"]);
  await press("Play");
  await press("left ear");
  await expect.poll(seat).toBe("2 guitar");
  expect(text()).not.toContain(words.round.wantedSo["left ear"]);
  await otherwise();
  await expect.element(button("stereo")).toHaveAttribute("aria-pressed", "true");
  await press("Nobody is here");
  await expect.poll(() => log().at(-1)).toMatchObject({ entry: "absent", position: "position 2" });
  // What is asked for the first seat goes on, and the question that is closed is another one's.
  await expect.poll(seat).not.toBe("2 guitar");
  expect(seat()).not.toBe("");
  expect(document.querySelector("details.otherwise")?.hasAttribute("open")).toBe(false);
});

test("a rig to try is not drawn anew, and nobody points at it", async () => {
  open();
  await press("Tallow Hall story evening");
  await press("Listen at 1 host");
  await press("they point, I face them");
  await press("board");
  await press("another rig");
  await openBench(7);
  await press(/^Listen at/);
  await expect.element(button("Play")).toBeVisible();
  await otherwise();
  await expect.element(button("Nobody is here")).toBeVisible();
  expect(text()).not.toContain("all in the left ear");
  await press("Play");
  await expect.element(button("middle")).toBeVisible();
  expect(document.querySelector(".turned, .facing")).toBeNull();
});

test("that a position was healthy is said only as long as it is", () => {
  const log = well(empty, "position 1");
  const shown = (of: typeof log) =>
    render(
      <WordsContext.Provider value={words}>
        <CameFrom held={{ show: () => {} }} derived={derived(of)} came="position 1" />
      </WordsContext.Provider>,
    ).container.textContent;
  expect(shown(log)).toContain("1 host: healthy");
  cleanup();
  expect(shown(add(log, { entry: "taken back", taken: log.at(-1)?.id ?? "" }, 0))).toBe("");
});
