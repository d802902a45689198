import { cleanup } from "@testing-library/preact";
import { afterEach, describe, expect, test } from "vitest";
import { page as tab } from "vitest/browser";
import { clean } from "../support/clean.ts";
import { crackle, goOn } from "../support/kept.ts";
import { button, heading, open, press } from "../support/open.tsx";
import { say } from "../support/walk.ts";

afterEach(cleanup);

describe("something else was done", () => {
  const tell = () => tab.getByText("Something else was done").click();

  test("is told by pointing at the thing and then at what was done; a hand was on the gear", async () => {
    const { log, player } = await goOn(crackle);
    await expect.element(heading()).toHaveTextContent(/plug of headphones 4/);
    await tell();
    await clean("something else was done");
    await press("headphones 4");
    await press(/^Exchange headphones 4 and headphones 2/);
    await expect
      .poll(() => log().at(-1))
      .toMatchObject({ move: { move: "exchanged", parts: ["headphones 4", "headphones 2"] } });
    expect(player.calls.map(({ asked }) => asked)).toContain("handOn");
    expect(document.querySelector(".last")?.textContent).toContain("exchanged");
    await press("take the last answer back");
    await expect.element(heading()).toHaveTextContent(/plug of headphones 4/);
  });

  test("another thing can be pointed at", async () => {
    await goOn(crackle);
    await tell();
    await press("headphones 4");
    await press("it was something else");
    await expect.element(button("the feed lead")).toBeVisible();
  });
});

test("what is not the same each time is asked about twice, and found so", async () => {
  const { log } = open({ seeds: [1] });
  await press("One person");
  await press(/^1 you/);
  const side = document.querySelector("h1")?.textContent?.includes("one knock") ? "left" : "right";
  await press("Play");
  await press("not the same each time");
  await say(`${side} ear`);
  await expect.element(heading()).toHaveTextContent(/^And at other times\?/);
  await press("play again");
  await expect.element(heading()).toHaveTextContent(/^And at other times\?/);
  await say("nothing");
  await expect
    .poll(() => log().at(-1))
    .toMatchObject({ finding: { results: [[`${side} ear`]], otherTimes: [["nothing"]] } });
  expect(document.querySelector(".last")?.textContent).toContain("at other times");
});
