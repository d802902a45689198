import type { Page } from "playwright";
import { halves, type Pointed, type Recording, whereWas } from "./ears.ts";
import { layTap, type TapPage } from "./tap.ts";

/**
 * A person at the built page: it hears what leaves the browser, decides from the samples, reads the screen by role and name, and
 * presses. It knows no more than somebody who was handed the program.
 */
export interface Walked {
  /** How many answers it gave. */
  readonly checks: number;
  /** The heading and the lines of the last screen. */
  readonly heading: string;
  readonly text: string;
  readonly end: "verdict" | "healthy" | "lost";
}

/** What the controls do to a person, or to the sound on its way. */
type Spoilt = (recording: Recording) => Recording;

export interface Walk {
  readonly url: string;
  /** The number typed into the first screen for a rig without gear, or the name on the tape of one with gear. */
  readonly rig: number | string;
  /** The position somebody complains at, as on its tape. */
  readonly position: string;
  readonly spoilt?: Spoilt;
  /** Whether left is said for right at a position. */
  readonly mirrors?: (position: string) => boolean;
}

const most = 30;

/** Lays the tap; once a page, before it loads anything. */
export async function prepare(page: Page): Promise<void> {
  // A compiler may name functions by a function of its own, which the page lacks.
  await page.addInitScript({ content: `globalThis.__name ??= (one) => one;(${layTap})()` });
}

/** Plays one rig to its end. */
export async function walk(page: Page, person: Walk): Promise<Walked> {
  await begin(page, person);
  return toTheEnd(page, person);
}

/** From a verdict: does what it says, and goes on to the next end. Says how loud the page plays afterwards, as an amplitude. */
export async function mend(page: Page, person: Walk): Promise<Walked & { normal: number }> {
  await press(page, "Done, check again");
  await page.locator(".ask").waitFor();
  const normal = await normalOf(page);
  return { ...(await toTheEnd(page, person)), normal };
}

async function toTheEnd(page: Page, person: Walk): Promise<Walked> {
  for (let checks = 0; checks < most; ) {
    await settled(page);
    const end = await endOf(page);
    if (end !== undefined) return { ...(await lastScreen(page)), checks, end };
    if (await step(page, person)) checks++;
  }
  return { ...(await lastScreen(page)), checks: most, end: "lost" };
}

/** From the first screen to the position. */
async function begin(page: Page, { url, rig, position }: Walk): Promise<void> {
  await page.goto(url);
  if (typeof rig === "number") await page.getByLabel("rig number").fill(String(rig));
  await press(page, typeof rig === "number" ? "A rig to try without gear" : rig);
  await page.getByRole("button", { name: new RegExp(`^${position}`) }).click();
}

/** As long as a button may take to hold still, milliseconds. With eight pages on two cores a page may go without a frame for longer. */
const patience = 8000;

/** Waits for a button to stand still, as a hand would; where its page gets no frames to tell by, presses all the same. */
async function press(page: Page, name: string): Promise<void> {
  const button = page.getByRole("button", { name, exact: true });
  await button.waitFor();
  await button.click({ timeout: patience }).catch(() => button.click({ force: true }));
}

const shown = (page: Page, name: string): Promise<boolean> =>
  page.getByRole("button", { name, exact: true }).first().isVisible();

/** Waits until the screen asks for something. */
const settled = (page: Page): Promise<void> =>
  page.locator(".verdict, .healthy, .look, .ask").first().waitFor({ timeout: 15_000 });

async function endOf(page: Page): Promise<"verdict" | "healthy" | undefined> {
  if (await page.locator(".verdict").isVisible()) return "verdict";
  return (await page.locator(".healthy").isVisible()) ? "healthy" : undefined;
}

async function lastScreen(page: Page): Promise<{ heading: string; text: string }> {
  return {
    heading: (await page.getByRole("heading", { level: 1 }).textContent()) ?? "",
    text: (await page.getByRole("main").textContent()) ?? "",
  };
}

/** Does what the screen asks for; says whether that was an answer. */
async function step(page: Page, person: Walk): Promise<boolean> {
  if (await page.locator(".look").isVisible()) {
    await look(page);
    return true;
  }
  if (await shown(page, "Hands are off the gear")) {
    await press(page, "Hands are off the gear");
    return false;
  }
  const { spoilt = (recording: Recording) => recording, mirrors = () => false } = person;
  const at = (await page.locator(".ask .tape").first().textContent()) ?? "";
  await answerByEar(page, spoilt(await listen(page)), mirrors(at));
  return true;
}

/** Says what is to be seen; with real gear, where nothing is out of place, that all is as it should be. */
async function look(page: Page): Promise<void> {
  const sight = page.getByText(/^You look: /);
  const text = (await sight.isVisible()) ? await sight.textContent() : undefined;
  await press(page, text?.replace(/^You look: /, "").replace(/\.$/, "") ?? "all as it should be");
}

/** Presses Play and hears it to its end. */
async function listen(page: Page): Promise<Recording> {
  await page.evaluate(() => (globalThis as unknown as TapPage).tap.clear());
  await press(page, "Play");
  await page.getByRole("button", { name: "play again", exact: true }).waitFor({ timeout: 15_000 });
  await page.waitForTimeout(250); // the recorder hands over in blocks
  const { rate, left, right } = await page.evaluate(() =>
    (globalThis as unknown as TapPage).tap.take(),
  );
  return { rate, left: unpacked(left), right: unpacked(right) };
}

/** Numbers from bytes in base64. */
const unpacked = (text: string): Float32Array => {
  const bytes = Uint8Array.from(Buffer.from(text, "base64"));
  return new Float32Array(bytes.buffer);
};

/** The level the page says it plays at, as an amplitude. */
async function normalOf(page: Page): Promise<number> {
  const text = await page.getByText(/dBFS/).first().textContent();
  const level = Number((text ?? "").replace("−", "-").match(/-?\d+(\.\d+)?/)?.[0]);
  return 10 ** (level / 20);
}

async function answerByEar(page: Page, recording: Recording, mirrors: boolean): Promise<void> {
  const normal = await normalOf(page);
  const question = (await page.getByRole("heading", { level: 1 }).textContent()) ?? "";
  const said = (part: Recording) => point(page, whereWas(part, normal), mirrors);
  if (/first/.test(question)) {
    const [first, second] = halves(recording);
    await said(first);
    await page.getByRole("heading", { name: /second/ }).waitFor();
    return said(second);
  }
  const where = whereWas(recording, normal);
  if (await shown(page, "both cups")) return touch(page, where);
  if (await shown(page, "something"))
    return press(page, where.place === "nothing at all" ? "nothing" : "something");
  return said(recording);
}

async function point(page: Page, { place, faint }: Pointed, mirrors: boolean): Promise<void> {
  if (faint) await press(page, "there, but faint");
  await press(page, mirrors ? exchanged(place) : place);
}

const exchanged = (place: string): string =>
  place.includes("left") ? place.replace("left", "right") : place.replace("right", "left");

/** A hand goes to the cup on the side where it is heard; the letter is read off that cup. */
async function touch(page: Page, { place }: Pointed): Promise<void> {
  if (place === "nothing at all") return press(page, "neither cup");
  if (place === "middle" || place === "all round") return press(page, "both cups");
  const cups = ["cup marked L", "cup marked R"].map((name) =>
    page.getByRole("button", { name, exact: true }),
  );
  const boxes = await Promise.all(
    cups.map(async (cup) => ({ cup, x: (await cup.boundingBox())?.x ?? 0 })),
  );
  boxes.sort((a, b) => a.x - b.x);
  const chosen = place.includes("left") ? boxes[0] : boxes.at(-1);
  await chosen?.cup.click();
}
