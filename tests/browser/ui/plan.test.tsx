import { cleanup } from "@testing-library/preact";
import { afterEach, expect, test } from "vitest";
import { page as tab } from "vitest/browser";
import { button, heading, keys, open, press } from "../support/open.tsx";

afterEach(cleanup);

const entry = "Will it work, and which lead?";
const text = (selector: string) => document.querySelector(selector)?.textContent ?? "";
const answer = () => expect.poll(() => text(".gets-what"));
const advice = () => expect.poll(() => text(".plan-advice"), { timeout: 8000 });

async function openPlan() {
  const opened = open();
  await press(entry);
  await expect.element(heading()).toHaveTextContent("Before you plug in");
  return opened;
}

test("an answer with the first press: what most people stand before", async () => {
  await openPlan();
  await answer().toBe("Left in the left ear, right in the right.");
  await advice().toContain("What is drawn gives it: stereo.");
});

test("a balanced send by a stereo lead is hollow; the lead that mends it is told, used, and taken back", async () => {
  await openPlan();
  await press(/^send,/);
  await answer().toContain("Most likely: everything is in the left ear");
  await press("mono in both ears");
  await advice().toContain("What is inside the small mixer?");
  await press(/^actively balanced/);
  await answer().toContain("hollow");
  expect(text(".plan-sentence")).toContain("Right ear: left and right, upside down.");
  expect(text(".facts")).toContain("Pan does nothing");
  await advice().toContain("Use this one");
  expect(text(".move")).toMatch(/^One-to-both lead/);
  expect(text(".pin-words")).toContain("tip to tip and ring");
  expect(text(".plan-move")).toContain("Volume down first");
  await press("Use this one");
  await answer().toBe("Both ears get left and right together.");
  expect(document.activeElement?.className).toBe("gets-what");
  await advice().toContain("What is drawn gives it: mono in both ears.");
  await press("undo");
  await answer().toContain("hollow");
});

test("who does not know the output stage is told what serves most, and what to try where it does not", async () => {
  await openPlan();
  await press(/^main left,/);
  await advice().toContain("What is inside the small mixer?");
  await press("I do not know");
  await advice().toMatch(/Right for \d+ in 100 such boxes/);
  await advice().toContain("If it is silent or thin");
});

test("what is not understood is refused in words, and nothing is lost", async () => {
  await openPlan();
  await press(/^send,/);
  await press("small mixer");
  await tab.getByText("what the small mixer is made of").click();
  const field = tab.getByLabelText("output resistance a side");
  await field.fill("lots");
  await expect
    .poll(() => text(".refused"))
    .toBe("'lots' is not understood: a number from 0.1 to 1000 Ω. It stays at 10 Ω.");
  await field.fill("2000");
  await expect.poll(() => text(".refused")).toContain("'2000' is not understood");
  await expect.element(button(/^send,/)).toHaveAttribute("aria-pressed", "true");
  await field.fill("47");
  await expect.poll(() => text(".refused")).toBe("");
  await expect.element(field).toHaveValue("47");
  await press("undo");
  await expect.element(button(/^send,/)).toHaveAttribute("aria-pressed", "true");
});

test("a loudspeaker output is refused before anything else is said", async () => {
  await openPlan();
  await press("headphone amplifier");
  await press(/^headphones a stereo plug/);
  await press("small mixer");
  await press(/^loudspeaker amplifier/);
  await expect.poll(() => text("[role='alert']")).toContain("Do not plug into this socket.");
  for (const other of [".gets-what", ".facts", ".plan-wants", ".plan-advice"])
    expect(document.querySelector(other), other).toBeNull();
});

test("a plug taken in the hand goes where is pointed at next", async () => {
  await openPlan();
  await press(/^main left,/);
  await press("stereo jack lead");
  await press(/^insert Y lead/);
  await answer().toContain("Left in the left ear");
  await press(/marked right/);
  await press(/^main left,/);
  await answer().toContain("Left and right have changed places");
});

test("the rig that is drawn is checked: a session begins with it", async () => {
  const { log } = await openPlan();
  await press(/^main left,/);
  await press("Check it now");
  await expect.element(heading()).toHaveTextContent("1 position to check");
  await expect.poll(log).toMatchObject([{ entry: "drawing" }]);
  expect(JSON.stringify(log())).toContain("main left");
});

test("by keys alone: a socket, a want, another box from the tray, and back", async () => {
  const { player } = open();
  const focused = () => document.activeElement?.textContent?.trim() ?? "";
  const tabTo = async (name: string) => {
    for (let tabs = 0; tabs < 40; tabs++) {
      await keys("{Tab}");
      if (focused().startsWith(name)) return;
    }
    throw new Error(`no Tab leads to ${name}`);
  };
  await tabTo(entry);
  await keys("{Enter}");
  await expect.element(heading()).toHaveFocus();
  await tabTo("small mixer");
  await tabTo("phones");
  await keys("{ArrowDown}{Enter}");
  expect(focused()).toBe("send");
  await answer().toContain("left ear");
  await tabTo("stereo");
  await tabTo("stereo");
  await keys("{ArrowRight}{Enter}");
  await expect.element(button("mono in both ears")).toHaveAttribute("aria-pressed", "true");
  await keys("{Escape}");
  expect(player.calls.at(-1)).toEqual({ asked: "silence" });
  await keys("{Shift>}{Tab}{Tab}{/Shift}");
  for (let tabs = 0; tabs < 40 && focused() !== "small mixer"; tabs++)
    await keys("{Shift>}{Tab}{/Shift}");
  await keys("{Enter}");
  await expect.poll(focused).toContain("small mixer");
  await keys("{ArrowRight}");
  expect(focused()).toContain("console");
  await keys("{Enter}");
  await expect.poll(focused).toBe("console");
  await answer().toContain("left");
});
