import { cleanup } from "@testing-library/preact";
import { afterEach, expect, test } from "vitest";
import { page as tab } from "vitest/browser";
import { button, heading, keys, open, press } from "../support/open.tsx";

afterEach(cleanup);

const tongues = ["de-AT"];
const body = () => document.body.textContent ?? "";

/** Presses by key: a screen that has just come takes no press of a mouse for a moment. */
async function enter(name: RegExp): Promise<void> {
  await expect.element(button(name)).toBeVisible();
  await expect.element(heading()).toHaveFocus();
  button(name).element().focus();
  await keys("{Enter}");
}

test("a lead is proved by meter in German, by German names alone", async () => {
  const opened = open({ tongues });
  await press("Ein Kabel prüfen");
  await expect.element(heading()).toHaveTextContent("Was ist an einem Ende?");
  await press(/^Stereoklinke/);
  await press(/^Stereoklinke/);
  await expect.element(heading()).toHaveTextContent("Was soll es sein?");
  const [first] = document.querySelectorAll<HTMLElement>("button.pick");
  first?.click();
  await expect.element(heading()).toHaveTextContent("Wie soll geprüft werden?");
  await press(/^mit dem Multimeter/);
  await expect.element(heading()).toHaveTextContent(/^Messen: Schaft A und Schaft B\.$/);
  expect(body()).toContain("Noch 6 Messungen, wenn alles in Ordnung ist");
  for (let read = 0; document.querySelector(".proved") === null && read < 12; read++) {
    const before = opened.log().length;
    const bends = body().includes("Beide Messspitzen halten");
    await enter(bends ? /^Piepton/ : /^kein Piepton/);
    await expect.poll(() => opened.log().length).toBeGreaterThan(before);
    await new Promise((resolve) => setTimeout(resolve, 20));
  }
  await expect.element(heading()).toHaveTextContent("In Ordnung");
  expect(body()).toContain("Kapazität: nicht geprüft");
  await press("letzte Messung zurücknehmen");
  await expect.element(button(/^kein Piepton/)).toBeVisible();
});

test("a plan in German: what arrives, numbers with a comma, and what is not understood", async () => {
  open({ tongues });
  await press(/^Wird es gehen/);
  await expect.element(heading()).toHaveTextContent("Vor dem Einstecken");
  expect(body()).toContain("Linkes Ohr: links. Rechtes Ohr: rechts.");
  await press(/^send,/);
  await expect.poll(body).toContain("Am wahrscheinlichsten: ");
  document.querySelector<HTMLElement>(".name.from")?.click();
  await expect.poll(body).toContain("Was ist vorhanden?");
  await tab.getByText(/^Daten: /).click();
  const fields = () => [...document.querySelectorAll<HTMLInputElement>(".quantity input")];
  await expect.poll(() => fields().length).toBeGreaterThan(0);
  for (const field of fields()) await tab.elementLocator(field).fill("viel");
  await expect.poll(body).toMatch(/»viel« ist unverständlich: eine Zahl von 0,1 bis 1000/);
});
