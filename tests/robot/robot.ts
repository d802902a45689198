import type { Page } from "playwright";
import { halves, type Pointed, type Recording, whereWas } from "./ears.ts";
import { look, make, shown, unmutes } from "./hand.ts";
import { press, pressOn, say } from "./press.ts";
import { pushToTheMiddle } from "./push.ts";
import { listen, normalOf } from "./tap.ts";
import { touch } from "./touch.ts";

/** A person at the built page, who hears what leaves the browser, decides from the samples, and reads the screen by role and name. */
export interface Walked {
  /** How many answers it gave. */
  readonly checks: number;
  /** How many moves it made. */
  readonly moves: number;
  /** It ends healthy, and behind the curtain stands that what was wrong is gone, or laid aside. */
  readonly cured: boolean;
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
  /** Says of every move that comes before a verdict that it is not possible here. */
  readonly refuses?: boolean;
}

/** More presses than this lead nowhere. */
const most = 45;

/** Plays one rig to its end. */
export async function walk(page: Page, person: Walk): Promise<Walked> {
  await begin(page, person);
  return goOn(page, person);
}

/** From a verdict: does what it says, and goes on to the next end. Says how loud the page plays afterwards, as an amplitude. */
export async function mend(page: Page, person: Walk): Promise<Walked & { normal: number }> {
  await press(page, "Done, check again");
  await page.locator(".ask").waitFor();
  const normal = await normalOf(page);
  return { ...(await goOn(page, person)), normal };
}

/** From whatever the page asks now to the next end. */
export async function goOn(page: Page, person: Walk): Promise<Walked> {
  const did = { answer: 0, move: 0, press: 0 };
  for (let steps = 0; steps < most; steps++) {
    await settled(page);
    // It went on by itself.
    if (await shown(page, "look again")) await press(page, "look again");
    const one = await step(page, person);
    if (one === "end") return ended(page, person, did);
    did[one]++;
  }
  return { ...(await lastScreen(page)), ...counts(did), cured: false, end: "lost" };
}

type Did = Readonly<Record<"answer" | "move" | "press", number>>;
const counts = ({ answer, move }: Did) => ({ checks: answer, moves: move });

async function ended(page: Page, person: Walk, did: Did): Promise<Walked> {
  const wrong = page.locator(".verdict, .proved .tape.yellow").first();
  const end = (await wrong.isVisible()) ? "verdict" : "healthy";
  const last = await lastScreen(page);
  const cured = end === "healthy" && did.move > 0 && (await isGone(page, person));
  return { ...last, ...counts(did), cured, end };
}

/** Where a page with a rig without gear is not sure, makes the move that it proposes all the same. */
async function goesOn(page: Page, { rig, refuses }: Walk): Promise<boolean> {
  if (typeof rig !== "number" || refuses) return false;
  const { heading } = await lastScreen(page);
  const done = page.locator(".verdict .main");
  if (!(await done.isVisible())) return false; // nothing that would mend it is possible here
  const text = (await done.textContent()) ?? "";
  if (heading !== "Not sure." || !text.startsWith("Done")) return false;
  await press(page, text);
  return true;
}

/** Looks behind the curtain of a rig without gear. */
async function isGone(page: Page, { rig }: Walk): Promise<boolean> {
  if (typeof rig !== "number") return false;
  await press(page, "board");
  await press(page, "lift the curtain");
  await page.locator(".curtain").waitFor();
  return /You set it right|You took it off the way/.test((await lastScreen(page)).text);
}

/** From the first screen to the position. */
async function begin(page: Page, { url, rig, position }: Walk): Promise<void> {
  await page.goto(url);
  if (typeof rig === "number") await page.getByLabel("rig number").fill(String(rig));
  await press(page, typeof rig === "number" ? "A rig to try without gear" : rig);
  await pressOn(page.getByRole("button", { name: new RegExp(`^${position}`) }));
}

const needed = ".verdict, .healthy, .proved, .look, .ask, .do";
/** Waits until the screen asks for something. */
const settled = (page: Page): Promise<void> =>
  page.locator(needed).first().waitFor({ timeout: 15_000 });

async function lastScreen(page: Page): Promise<{ heading: string; text: string }> {
  return {
    heading: (await page.getByRole("heading", { level: 1 }).textContent()) ?? "",
    text: (await page.getByRole("main").textContent()) ?? "",
  };
}

/** Does what the screen asks for; says what that was. */
async function step(page: Page, person: Walk): Promise<keyof Did | "end"> {
  if (await page.locator(".healthy, .proved").first().isVisible()) return "end";
  if (await page.locator(".verdict").isVisible())
    return (await goesOn(page, person)) ? "move" : "end";
  const { spoilt = (recording: Recording) => recording, mirrors = () => false } = person;
  if (await page.locator(".look").isVisible()) {
    await ((await page.locator(".balance").isVisible())
      ? pushToTheMiddle(page, spoilt)
      : look(page));
    return "answer";
  }
  if (await page.locator(".do").isVisible()) return make(page, person.refuses === true);
  if (await unmutes(page)) return "press";
  const at = (await page.locator(".ask .tape").first().textContent()) ?? "";
  await answerByEar(page, spoilt(await listen(page)), mirrors(at));
  return "answer";
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
    return say(page, where.place === "nothing at all" ? "nothing" : "something");
  return said(recording);
}

async function point(page: Page, { place, faint }: Pointed, mirrors: boolean): Promise<void> {
  if (faint) await press(page, "there, but faint");
  await say(page, mirrors ? exchanged(place) : place);
}

const exchanged = (place: string): string =>
  place.includes("left") ? place.replace("left", "right") : place.replace("right", "left");
