import type { Page } from "playwright";
import { first } from "#ui/words/english/first.ts";

/** Called wherever a screen stands that is to be looked at. */
export type Stand = (name: string) => Promise<void>;

const press = (page: Page, name: string | RegExp): Promise<void> =>
  page
    .getByRole("button", { name, exact: typeof name === "string" })
    .first()
    .click({ timeout: 8000 });

/** Plays, and waits until it can be answered. */
async function listened(page: Page): Promise<void> {
  const hands = page.getByRole("button", { name: "Hands are off the gear" });
  if (await hands.isVisible()) await hands.click();
  await press(page, "Play");
  await page
    .locator("section:not(.listening) :is(.spot, .push)")
    .first()
    .waitFor({ timeout: 15_000 });
}

/** The bench rig whose number hides a fault, at a seat that has it. */
async function atBench(page: Page, number: number): Promise<void> {
  await page.getByLabel(first.start.number).fill(String(number));
  await press(page, first.start.bench);
}

/** From the bench to a verdict: whoever sits there hears everything all round, and nobody may touch anything. */
async function round(page: Page, stand: Stand, number: number): Promise<void> {
  await atBench(page, number);
  await page.getByRole("button", { name: /^4 guest/ }).waitFor();
  await stand("board before");
  await press(page, /^4 guest/);
  await stand("play");
  const seen = new Set<string>();
  for (let step = 0; step < 20; step++) {
    const kind = (await page.locator("main section").first().getAttribute("class")) ?? "";
    if (!seen.has(kind) && kind !== "ask") await stand(kind);
    seen.add(kind);
    if (/verdict|healthy/.test(kind)) break;
    await answer(page, kind, seen.has("question") ? undefined : () => stand("question"));
    seen.add("question");
  }
  await press(page, first.board);
  await stand("board with trouble");
  await press(page, "lift the curtain");
  await stand("curtain");
}

async function answer(page: Page, kind: string, question?: () => Promise<void>): Promise<void> {
  if (kind.startsWith("do")) return press(page, "Not possible here");
  if (/look|twist/.test(kind)) return page.locator(".sight").first().click({ timeout: 8000 });
  await listened(page);
  await question?.();
  for (const name of ["all round", "all round", "both cups", "never in the middle"]) {
    const button = page.getByRole("button", { name, exact: true });
    if (await button.isVisible()) await button.click();
    await page.waitForTimeout(100); // the next question, or the next screen
  }
}

async function handsUp(page: Page, stand: Stand): Promise<void> {
  await press(page, "Tallow Hall story evening");
  await press(page, "All at once, hands up");
  await stand("hands up");
  await press(page, "Play to all");
  await page.getByRole("button", { name: "play again" }).waitFor({ timeout: 15_000 });
  await stand("hands up, pointing");
}

async function complaint(page: Page, stand: Stand): Promise<void> {
  await press(page, first.start.wrong);
  await stand("complaint");
  await press(page, "Only one ear works");
  await stand("complaint, further");
}

async function noise(page: Page, stand: Stand): Promise<void> {
  await press(page, first.start.wrong);
  for (const name of ["It hums", /^a headphone amplifier/, /^headphones/, /^3/, /^nobody asked/])
    await press(page, name);
  await page.locator(".noise-answers").waitFor({ timeout: 15_000 });
  await stand("noise");
  for (let step = 0; step < 12; step++) {
    if (await page.locator(".noise.found").isVisible()) break;
    await page.locator(".noise-answers .point").first().click({ timeout: 8000 });
    await page.waitForTimeout(200); // the next to try, or the end
  }
  await stand("noise, found");
  await press(page, "Another noise");
  await stand("noise, which");
}

async function plan(page: Page, stand: Stand): Promise<void> {
  await press(page, first.start.plan);
  await page.getByText("What is drawn gives it").waitFor({ timeout: 15_000 });
  await stand("plan");
  await press(page, /^main left,/);
  await press(page, /^actively balanced/);
  await page.getByText("Use this one").waitFor({ timeout: 15_000 });
  await stand("plan, a lead to take");
  await press(page, "small mixer");
  await stand("plan, tray");
}

async function prove(page: Page, stand: Stand): Promise<void> {
  await press(page, first.start.prove);
  await stand("prove, one end");
  await press(page, /^stereo jack three/);
  await press(page, /^two mono jacks/);
  await stand("prove, kinds");
  await press(page, /^insert Y lead/);
  await stand("prove, ways");
  await press(page, /^with a multimeter/);
  await stand("prove, meter");
  await press(page, /^no beep/);
  await stand("prove, suspected");
}

async function levels(page: Page, stand: Stand): Promise<void> {
  await press(page, "Tallow Hall story evening");
  await press(page, "How loud, how much hiss");
  await page.locator(".level-diagram").waitFor({ timeout: 15_000 });
  await stand("levels");
  await press(page, "Set the knobs so");
  await press(page, "numbers of headphones 1");
  for (const one of await page.locator(".levels details > summary").all()) await one.click();
  await stand("levels, all of it");
}

/** A screen that one press of the first one leads to. */
const one =
  (name: string, button: string, then?: (page: Page) => Promise<void>) =>
  async (page: Page, stand: Stand): Promise<void> => {
    await press(page, button);
    await page.getByRole("heading", { level: 1 }).waitFor();
    await stand(name);
    await then?.(page);
    if (then) await stand(`${name}, on`);
  };

/** Every way through the built page, each from the first screen; `number` is a bench rig's whose seat 4 has lost its return. */
export const ways = (number: number): readonly ((page: Page, stand: Stand) => Promise<void>)[] => [
  async (page, stand) => {
    await stand("start");
    await press(page, /look and language/i);
    await stand("start, look");
  },
  (page, stand) => round(page, stand, number),
  handsUp,
  levels,
  complaint,
  noise,
  plan,
  prove,
  one("listen", first.start.hear),
  one("sounds", first.start.sounds),
  one("sound out", first.start.soundOut),
  one("training", first.start.train),
  one("measure", first.start.measure),
  one("flex", first.start.flex),
];
