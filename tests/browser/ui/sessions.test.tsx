import { cleanup } from "@testing-library/preact";
import axe from "axe-core";
import { afterEach, beforeEach, describe, expect, test, vi } from "vitest";
import { page as tab } from "vitest/browser";
import { titleOf } from "#core/session/log.ts";
import { readFile } from "#core/session/read-case.ts";
import { drawnAlone, evenings } from "../support/evenings.ts";
import { button, heading, keys, open, press } from "../support/open.tsx";

afterEach(cleanup);

const text = () => document.querySelector("main")?.textContent ?? "";

async function openSessions(shelf = evenings(), tongues?: readonly string[]) {
  const opened = open({ shelf, ...(tongues === undefined ? {} : { tongues }) });
  await press(tongues === undefined ? "All sessions" : "Alle Sitzungen");
  await expect.element(heading()).toHaveTextContent(tongues ? /^\d Sitzungen$/ : /^\d sessions$/);
  return opened;
}

/** The row of a session, with what else can be done there shown. */
async function more(name: string) {
  const summary = tab.getByLabelText(`What else to do with ${name}`);
  await summary.click();
}

test("the sessions stand newest first, each with its day, its rig and how it stands", async () => {
  await openSessions();
  await expect.element(heading()).toHaveTextContent("3 sessions");
  const names = () =>
    [...document.querySelectorAll(".session button.tape")].map((one) => one.textContent);
  expect(names()).toEqual(["A rig without gear", "Second evening", "First evening"]);
  expect(document.querySelectorAll(".session-picture")).toHaveLength(3);
  await expect.poll(text, { timeout: 15_000 }).toContain("1 of 5 healthy");
  expect(text()).toContain("by the late shift");
  expect(text()).toContain("2025");
});

test("one is gone on with", async () => {
  const { shelf } = await openSessions();
  await press("First evening");
  await expect.element(button(/^3 fiddle|^3 /)).toBeVisible();
  await expect
    .poll(async () => {
      const cards = await shelf.cards();
      return "value" in cards && cards.value.find(({ session }) => session === "a")?.opened;
    })
    .toBeGreaterThanOrEqual(1);
});

test("a name is written on the tape, and an escape leaves it", async () => {
  const { shelf } = await openSessions();
  await more("First evening");
  await press("Rename");
  const field = tab.getByLabelText("Name of the session");
  await field.fill("Press night");
  await keys("{Enter}");
  await expect.element(button("Press night")).toHaveFocus();
  expect(titleOf(shelf.log("a")).name).toBe("Press night");
  expect(shelf.log("a").at(-1)).toMatchObject({ entry: "titled", id: "7" });
  await more("Second evening");
  await press("Rename");
  await field.fill("not this");
  await keys("{Escape}");
  await expect.element(button("Second evening")).toHaveFocus();
  expect(titleOf(shelf.log("b")).name).toBe("Second evening");
});

test("tomorrow begins with the rig and the name, and nothing that was found", async () => {
  const { log } = await openSessions();
  await more("Second evening");
  await press("Begin anew with this rig");
  await expect.element(heading()).toHaveTextContent("5 positions to check");
  await expect.poll(() => log().map(({ entry }) => entry)).toEqual(["drawing", "titled"]);
});

test("position 3 lost 4 dB on the right", async () => {
  await openSessions();
  await more("Second evening");
  await press("Compare with another");
  await expect.element(heading()).toHaveTextContent("Compare Second evening with which?");
  await press("First evening");
  await expect.poll(text, { timeout: 15_000 }).toContain("lost 4 dB on the right");
  await expect.element(heading()).toHaveTextContent("1 position changed; 1 of 5 could be compared");
  expect(text()).toContain("Since First evening");
  expect(text()).toContain("was not heard then");
  await press("back");
  await expect.element(heading()).toHaveTextContent("3 sessions");
});

test("where nothing was heard yet it is not said that nothing has changed", async () => {
  await openSessions();
  await more("First evening");
  await press("Compare with another");
  await press("A rig without gear");
  await expect.element(heading(), { timeout: 15_000 }).toHaveTextContent("Nothing heard yet");
  expect(text()).toContain("is not heard yet");
});

test("where nothing was heard then it is not said either", async () => {
  const shelf = evenings();
  shelf.lay("d", drawnAlone);
  await openSessions(shelf);
  await more("First evening");
  await press("Compare with another");
  await press("Tallow Hall story evening");
  await expect.element(heading(), { timeout: 15_000 }).toHaveTextContent("Nothing can be compared");
  expect(text()).toContain("was not heard then");
});

test("one that is deleted can be brought back, also the one in hand", async () => {
  await openSessions();
  await more("Second evening");
  await press("Delete");
  await expect.element(heading()).toHaveTextContent("2 sessions");
  expect(text()).toContain("can be brought back for a day");
  await expect.element(button("Bring it back")).toHaveFocus();
  await press("Bring it back");
  await expect.element(heading()).toHaveTextContent("3 sessions");
  await expect.element(button("Second evening")).toHaveFocus();
});

describe("files", () => {
  const files: Blob[] = [];
  beforeEach(() => {
    files.length = 0;
    vi.spyOn(URL, "createObjectURL").mockImplementation((file) => {
      files.push(file as Blob);
      return "#";
    });
    return () => vi.restoreAllMocks();
  });

  test("one is saved, without the number of what is hidden unless that is asked for", async () => {
    await openSessions();
    await more("A rig without gear");
    await press("Save as a file");
    const plain = readFile((await files[0]?.text()) ?? "");
    expect(plain).toMatchObject({ read: true, about: { id: "c" } });
    expect(await files[0]?.text()).not.toContain("bench");
    await press("Save as a file with the number of what is hidden");
    expect(readFile((await files[1]?.text()) ?? "")).toMatchObject({ about: { bench: 12 } });
  });

  const choose = (name: string, content: string) => {
    const input = document.querySelector<HTMLInputElement>("input[type=file]");
    const given = new DataTransfer();
    given.items.add(new File([content], name));
    if (input) input.files = given.files;
    input?.dispatchEvent(new Event("change", { bubbles: true }));
  };

  test("one that was saved is brought in again, once; a broken one is mended, and says where", async () => {
    const { shelf } = await openSessions();
    await more("First evening");
    await press("Save as a file");
    const saved = (await files[0]?.text()) ?? "";
    choose("same.json", saved);
    await expect.poll(text).toContain("First evening is here already");
    const broken = saved.replace('"check":"right"', '"check":"danced"');
    choose("broken.json", broken);
    await expect.poll(text).toContain("First evening was brought in");
    expect(text()).toContain("number 4 (finding): not understood");
    await expect.element(heading()).toHaveTextContent("4 sessions");
    expect(shelf.log("a")).toHaveLength(6);
  });

  test("what is no session is refused by name", async () => {
    await openSessions();
    choose("dinner.txt", "dinner at eight");
    await expect.poll(text).toContain("not written in JSON");
    choose("deep.json", `[{"more":${"[".repeat(5000)}${"]".repeat(5000)}}]`);
    await expect.poll(text).toContain("more brackets within brackets");
    choose("newer.json", '{"format":"leftwright case","version":9,"log":[]}');
    await expect.poll(text).toContain("A newer copy of this program");
  });

  test("a file may be dropped", async () => {
    await openSessions();
    const given = new DataTransfer();
    given.items.add(new File(["{}"], "x.json"));
    // Whoever drops too soon drops again.
    const dropped = () => {
      document.dispatchEvent(new DragEvent("drop", { dataTransfer: given, cancelable: true }));
      return text();
    };
    await expect.poll(dropped).toContain("This is no session");
  });
});

test.each([
  [1280, 800],
  [390, 844],
])("is accessible at %i by %i, in German too", async (width, height) => {
  await tab.viewport(width, height);
  await openSessions(evenings(), ["de"]);
  await tab.getByLabelText("Mehr zu First evening").click();
  const { violations } = await axe.run(document.body);
  expect(violations.map(({ id, nodes }) => [id, nodes.map(({ html }) => html)])).toEqual([]);
});
