import { cleanup } from "@testing-library/preact";
import { afterEach, expect, test, vi } from "vitest";
import { cdp, page as tab } from "vitest/browser";
import { holding, titleOf } from "#core/session/log.ts";
import { createMemoryStorage } from "#storage/memory-storage.ts";
import { evening, evenSaid } from "#tests/support/sessions.ts";
import { clean } from "../support/clean.ts";
import { heading, keys, open, press } from "../support/open.tsx";

afterEach(() => {
  cleanup();
  vi.restoreAllMocks();
});

/** The sheet of an evening, by way of the board. */
async function openSheet(tongue = "en", log = evening(6)) {
  const storage = createMemoryStorage();
  storage.setItem("leftwright.log", JSON.stringify(log));
  const opened = open({ storage, tongues: [tongue] });
  await press(tongue === "en" ? "Go on with the last session" : "Weiter mit der letzten Sitzung");
  await press(tongue === "en" ? "the sheet" : "das Blatt");
  await expect.element(tab.getByRole("article")).toBeVisible();
  return opened;
}

const titles = (opened: ReturnType<typeof open>) =>
  holding(opened.log()).flatMap((one) =>
    one.entry === "titled" ? [{ name: one.name, who: one.who }] : [],
  );
const paper = () => document.querySelector("article")?.textContent ?? "";
const row = (name: string) => tab.getByRole("row", { name: new RegExp(`^${name}`) });

test("every position, every fault and what was not tested stand on it", {
  timeout: 30_000,
}, async () => {
  await openSheet();
  await expect.element(heading()).toHaveTextContent("The sheet to hand over");
  await expect.element(row("1 host")).toHaveTextContent(/Healthy.*headphones 1.*−41 dBFS/);
  await expect.element(row("4 guest")).toHaveTextContent(/Wrong.*return is lost/);
  await expect.element(row("5 desk")).toHaveTextContent("Nobody there");
  await expect.element(row("6 second reader")).toHaveTextContent("Not heard");
  expect(paper()).toMatch(/3 fiddle: .*headphones 3 .*Mended after: /);
  expect(paper()).toMatch(/4 guest: .*Still there\./);
  expect(paper()).toContain("Not heard: 5 desk, 6 second reader");
  expect(paper()).toContain("Both sides inverted together");
});

test("how knobs stand and how loud that should be, and noises that were looked for", {
  timeout: 30_000,
}, async () => {
  await openSheet("en", evenSaid(6));
  await expect.element(row("1 host")).toHaveTextContent(/amplifier, output 1 at 2\.0/);
  await expect.element(row("1 host")).toHaveTextContent(/\d+ dB \(\d+–\d+\)/);
  await expect.element(row("2 reader")).toHaveTextContent(/output 2 at 2\.3.*–/);
  expect(paper()).toContain("Knobs on every way: laptop, phones at 8.0; mixer, phones at 5.0");
  expect(paper()).toMatch(/1 host, hiss: .* \(99 in 100\)\./);
  expect(paper()).toMatch(/2 reader, distortion: .*Since then: .*; not looked for again\./);
  expect(paper()).toContain("Hum, crackle and distortion; hiss, except at 1 host");
  await clean("sheet of noises and levels");
});

test("its name and who did it are written in place, each an entry; what is not changed is none", async () => {
  const opened = await openSheet();
  const [first] = titles(opened);
  const name = tab.getByLabelText("What this session is called");
  await expect.element(name).toHaveValue(first?.name ?? "");
  await name.click();
  await keys("{Enter}");
  expect(titles(opened)).toHaveLength(1);
  await name.fill("  Sunday, second house ");
  await keys("{Enter}");
  await expect.poll(() => titles(opened).at(-1)?.name).toBe("Sunday, second house");
  await tab.getByLabelText("Who did it").fill("Ines");
  await keys("{Enter}");
  await expect.poll(() => titles(opened).at(-1)).toEqual({ name: undefined, who: "Ines" });
  await expect
    .element(tab.getByLabelText("What this session is called"))
    .toHaveValue("Sunday, second house");
  await tab.getByLabelText("What this session is called").fill("");
  await keys("{Enter}");
  await expect
    .element(tab.getByLabelText("What this session is called"))
    .toHaveValue("Tallow Hall story evening");
  expect(titleOf(opened.log())).toEqual({ who: "Ines" });
  const entries = opened.log().length;
  await tab.getByLabelText("What this session is called").fill("");
  await keys("{Enter}");
  await expect
    .element(tab.getByLabelText("What this session is called"))
    .toHaveValue("Tallow Hall story evening");
  expect(opened.log()).toHaveLength(entries);
});

test("in German it says the same, with numbers as they are written there", async () => {
  await openSheet("de");
  await expect.element(row("1 host")).toHaveTextContent("In Ordnung");
  await expect.element(row("5 desk")).toHaveTextContent("Niemand da");
  expect(paper()).toMatch(/Samstag, 21\. November 2026|Sonntag, 22\. November 2026/);
});

test.each([
  ["dark", 1280, 800],
  ["light", 320, 640],
] as const)("it is accessible, %s and %i wide", async (scheme, width, height) => {
  await cdp().send("Emulation.setEmulatedMedia", {
    features: [
      { name: "prefers-color-scheme", value: scheme },
      { name: "prefers-reduced-motion", value: "reduce" },
    ],
  });
  await tab.viewport(width, height);
  await openSheet();
  await clean("sheet");
});
