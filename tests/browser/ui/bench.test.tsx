import { cleanup } from "@testing-library/preact";
import { afterEach, expect, test } from "vitest";
import { english } from "#core/words/english.ts";
import { benchPlayer, numberOf } from "../support/bench-player.ts";
import { heading, open, openBench, press } from "../support/open.tsx";
import { answerAll } from "../support/walk.ts";

afterEach(cleanup);

test("a bench rig is checked, mended and checked again by pressing alone", async () => {
  const number = numberOf("mixer / settings / mono"); // heard by everybody
  const player = benchPlayer(number);
  const opened = open({ seeds: [3, 5, 8, 13] });
  await openBench(number);
  await press(/^1 host, not heard yet/);
  expect(await answerAll(opened, player, false)).toBe("verdict");
  const [lead = ""] = english.faults[player.hidden.name].is("@").split("@");
  await expect.element(heading()).toHaveTextContent(new RegExp(lead.trim(), "i"));
  expect(opened.player.world().muted).toBe(true);
  await press("Done, check again");
  const last = opened.player.calls.findLast(({ asked }) => asked !== "arrive");
  expect(last).toEqual({ asked: "handOff" });
  expect(await answerAll(opened, player)).toBe("healthy");
  await press("board");
  await press("lift the curtain");
  await expect.element(heading()).toHaveTextContent(new RegExp(lead.trim(), "i"));
  expect(document.body.textContent).toContain("You set it right");
  expect(document.body.textContent).toContain(String(number));
});

test("the log never names the number of the bench", async () => {
  const { shelf } = open();
  await openBench(90210);
  await expect.poll(() => shelf.log().length).toBe(1);
  const [card] = await shelf.cards().then((told) => ("value" in told ? told.value : []));
  expect(await shelf.seed(card?.session ?? "")).toEqual({ value: 90210 });
  expect(JSON.stringify(shelf.log())).not.toContain("90210");
});

test("sound within three presses", async () => {
  const { player } = open();
  await press("A rig to try without gear");
  await press(/^1 host/);
  await press("Play");
  const [play] = player.calls.filter(({ asked }) => asked === "play");
  const ears = { ll: expect.any(Number), rr: expect.any(Number) };
  expect(play).toMatchObject({ how: { through: ears } });
});

test("real gear plays as it is", async () => {
  const { player } = open();
  await press("One person");
  await press(/^1 you/);
  await press("Play");
  await expect.poll(() => player.calls.some(({ asked }) => asked === "play")).toBe(true);
  const play = player.calls.find(({ asked }) => asked === "play");
  expect(play).toMatchObject({ how: { through: undefined } });
});
