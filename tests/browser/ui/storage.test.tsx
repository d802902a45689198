import { cleanup } from "@testing-library/preact";
import { afterEach, describe, expect, test } from "vitest";
import { createMemoryStorage } from "#storage/memory-storage.ts";
import { createStore } from "#storage/store.ts";
import { button, open, openBench, press } from "../support/open.tsx";

afterEach(cleanup);

const logKey = "leftwright.log";
const alertText = () => document.querySelector("[role='alert']")?.textContent;

test("a reload in the middle loses nothing and sounds nothing", async () => {
  const storage = createMemoryStorage();
  open({ storage });
  await openBench(35);
  await press(/^1 host/);
  await press("Play");
  await press("middle");
  await expect.poll(() => JSON.parse(storage.getItem(logKey) ?? "[]")).toHaveLength(2);
  const { player, log } = open({ storage });
  expect(log()).toHaveLength(2);
  expect(player.calls).toEqual([{ asked: "warm" }]);
  await press("Go on with the last session");
  await expect.element(button(/^1 host, begun/)).toBeVisible();
  await press("lift the curtain");
  await expect.poll(() => document.body.textContent).toContain("rig number 35");
});

describe("broken data is dropped with a message", () => {
  test.each([
    "{",
    "null",
    "7",
    '[{"entry":"drawing"}]',
    '[{"id":"1","at":1,"entry":"danced"}]',
    '[{"id":"1","at":1,"entry":"drawing","rig":{"name":"x","parts":[{"id":1}],"plugged":[],"positions":[]}}]',
  ])("%s", (text) => {
    open({ storage: createMemoryStorage({ texts: { [logKey]: text } }) });
    expect(alertText()).toContain("could not be understood");
    expect(document.body.textContent).not.toContain("Go on with the last session");
  });

  test("also where only the rig makes no sense", () => {
    const rig = {
      name: "x",
      parts: [],
      plugged: [],
      positions: [{ id: "a", name: "a", wears: "none" }],
    };
    const text = JSON.stringify([{ id: "1", at: 1, entry: "drawing", rig }]);
    open({ storage: createMemoryStorage({ texts: { [logKey]: text } }) });
    expect(alertText()).toContain("could not be understood");
  });
});

test("a full disk says so, and the session goes on in memory", async () => {
  open({ storage: createMemoryStorage({ full: true }) });
  await press("Straight into the laptop");
  await expect.poll(alertText).toContain("a reload would lose it");
  await press(/^1 you/);
  await press("Play");
  await press("middle");
  await expect.element(button("take the last answer back")).toBeVisible();
});

test("where storage is forbidden nothing is thrown", () => {
  const store = createStore(() => {
    throw new DOMException("not here", "SecurityError");
  });
  expect(store.read()).toEqual({ kept: undefined, dropped: false });
  expect(store.keep({ log: [] })).toBe(false);
});

test("a bench number belongs to its own session only", () => {
  const storage = createMemoryStorage();
  const store = createStore(() => storage);
  const entry = { id: "1", entry: "taken back", taken: "0" } as const;
  expect(store.keep({ log: [{ ...entry, at: 7 }], seed: 12 })).toBe(true);
  expect(store.read().kept?.seed).toBe(12);
  storage.setItem(logKey, JSON.stringify([{ ...entry, at: 8 }]));
  expect(store.read().kept).toEqual({ log: [{ ...entry, at: 8 }] });
});
