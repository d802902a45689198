import { cleanup } from "@testing-library/preact";
import { afterEach, expect, test } from "vitest";
import { button, heading, keys, open } from "../support/open.tsx";

afterEach(cleanup);

/** What the focus is on, without the number of its key. */
const focused = () => document.activeElement?.textContent?.trim().replace(/(?<=\D)\d$/, "");

async function tabTo(name: string): Promise<void> {
  for (let tabs = 0; tabs < 30; tabs++) {
    await keys("{Tab}");
    if (focused()?.startsWith(name)) return;
  }
  throw new Error(`no Tab leads to ${name}`);
}

test("from the first screen to an answer by keys alone", async () => {
  const { log } = open();
  await tabTo("One person");
  await keys("{Enter}");
  await expect.element(heading()).toHaveTextContent("1 position to check");
  await tabTo("1 you");
  await keys("{Enter}");
  await expect.poll(focused).toBe("Play");
  await keys("{Enter}");
  await expect.poll(focused).toBe("middle");
  await keys("{ArrowLeft}");
  expect(focused()).toBe("off to the left");
  await keys("{ArrowLeft}");
  expect(focused()).toBe("left ear");
  await keys("{ArrowDown}");
  expect(focused()).toBe("all round");
  await keys("{ArrowUp}");
  expect(focused()).toBe("middle");
  await keys("{ArrowRight}{ArrowRight}");
  expect(focused()).toBe("right ear");
  await keys(" ");
  expect(log()).toHaveLength(1);
  await keys("{Enter}");
  await expect.poll(() => log().at(-1)).toMatchObject({ finding: { results: [["right ear"]] } });
});

test("Space presses nothing and does not scroll; Esc silences from everywhere", async () => {
  const { player } = open();
  await tabTo("A rig to try");
  const top = scrollY;
  await keys(" ");
  await expect.element(heading()).toHaveTextContent("Leftwright");
  expect(scrollY).toBe(top);
  await keys("{Escape}");
  expect(player.calls.at(-1)).toEqual({ asked: "silence" });
});

test("while a sound plays nothing is announced and no answer counts", async () => {
  const { player, log } = open();
  await tabTo("One person");
  await keys("{Enter}");
  await expect.element(heading()).toHaveTextContent("1 position to check");
  await tabTo("1 you");
  await keys("{Enter}");
  await expect.poll(focused).toBe("Play");
  await keys("{Enter}");
  await expect.element(button("middle")).toBeVisible();
  player.change({ playing: true, trouble: "lost" });
  await keys("{Enter}");
  expect(document.querySelector("[role='alert'], [aria-live], [role='status']")).toBeNull();
  expect(log()).toHaveLength(1);
  player.change({ playing: false });
  await expect
    .poll(() => document.querySelector("[role='alert']")?.textContent)
    .toContain("Volume down first");
});
