import { cleanup } from "@testing-library/preact";
import { afterEach, beforeEach, expect, test, vi } from "vitest";
import { page as tab } from "vitest/browser";
import { caseText } from "#core/session/case.ts";
import { evenings } from "../support/evenings.ts";
import { button, heading, open, press } from "../support/open.tsx";

afterEach(cleanup);

const files: Blob[] = [];
beforeEach(() => {
  files.length = 0;
  vi.spyOn(URL, "createObjectURL").mockImplementation((file) => {
    files.push(file as Blob);
    return "#";
  });
  return () => vi.restoreAllMocks();
});

const text = () => document.querySelector("main")?.textContent ?? "";

async function openSessions(shelf = evenings()) {
  open({ shelf });
  await press("All sessions");
  await expect.element(heading()).toHaveTextContent("sessions");
  return shelf;
}

/** Brings in a session that is like none of the evenings. */
function bringOneIn(): void {
  const content = caseText(evenings().log("a").slice(0, 3), { id: "elsewhere", written: 1 });
  const input = document.querySelector<HTMLInputElement>("input[type=file]");
  const given = new DataTransfer();
  given.items.add(new File([content], "elsewhere.json"));
  if (input) input.files = given.files;
  input?.dispatchEvent(new Event("change", { bubbles: true }));
}

test("where the sessions cannot be read the list says so, and not that there are none", async () => {
  const shelf = evenings();
  const { shelf: refusing } = open({ shelf });
  await expect.element(button("All sessions")).toBeVisible();
  refusing.refuse("blocked");
  await press("All sessions");
  await expect.element(heading()).toHaveTextContent("The sessions could not be read");
  expect(text()).toContain("older copy");
  refusing.refuse(undefined);
  await press("Look again");
  await expect.element(heading()).toHaveTextContent("3 sessions");
});

test("one that was brought in is not the one that was in hand last", async () => {
  const shelf = await openSessions();
  bringOneIn();
  await expect.poll(text).toContain("was brought in");
  const cards = await shelf.cards();
  const opened = "value" in cards ? cards.value.map((card) => card.opened) : [];
  expect(opened.sort()).toEqual([0, 0.001, 0.002, 0.003]);
});

test("one that cannot be kept is refused, and says to leave the file", async () => {
  await openSessions({ ...evenings(), add: async () => ({ trouble: "full" }) });
  bringOneIn();
  await expect.poll(text).toContain("could not be kept here");
  await expect.element(heading()).toHaveTextContent("3 sessions");
});

test("one that cannot be understood stands in the list, is saved as it lies there, and taken away", async () => {
  const shelf = evenings();
  shelf.lay("odd", [{ id: "1", at: 1, entry: "danced", to: "a waltz" }]);
  await openSessions(shelf);
  await expect.element(heading()).toHaveTextContent("4 sessions");
  const row = tab.getByRole("listitem").filter({ hasText: "cannot be understood" });
  await row.getByRole("button", { name: "Save as a file" }).click();
  expect(await files[0]?.text()).toContain("a waltz");
  await row.getByRole("button", { name: "Delete" }).click();
  await expect.element(heading()).toHaveTextContent("3 sessions");
  await press("Bring it back");
  await expect.element(heading()).toHaveTextContent("4 sessions");
});
