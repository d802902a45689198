import { wavOfCapture } from "#pack/wav.ts";
import { captured } from "#tests/browser/support/returned.ts";
import { board } from "#ui/words/english/board.ts";
import { first } from "#ui/words/english/first.ts";
import { help } from "#ui/words/english/help.ts";
import { rig as rigWords } from "#ui/words/english/rig.ts";
import { sessions as sessionWords } from "#ui/words/english/sessions.ts";
import { press, type Way } from "./pressing.ts";
import { round } from "./round.ts";

const start: Way = async (page, stand) => {
  await stand("start");
  await press(page, /look and language/i);
  await stand("start, look");
  await press(page, first.whatIsThis);
  await page.getByText(help.toWords).waitFor();
  await stand("start, help");
  await press(page, help.toWords);
  await stand("words");
};

const handsUp: Way = async (page, stand) => {
  await press(page, "Tallow Hall story evening");
  await press(page, board.allAtOnce);
  await stand("hands up");
  await press(page, "Play to all");
  await page.getByRole("button", { name: "play again" }).waitFor({ timeout: 15_000 });
  await stand("hands up, pointing");
};

const rig: Way = async (page, stand) => {
  await press(page, "Tallow Hall story evening");
  await press(page, board.theRig);
  await page.locator(".rig-picture").waitFor();
  await stand("rig");
  await press(page, /^amplifier, headphone amplifier/);
  await stand("rig, in hand");
  await press(page, rigWords.change);
  await stand("rig, change");
};

const complaint: Way = async (page, stand) => {
  await press(page, first.start.wrong);
  await stand("complaint");
  await press(page, "Only one ear works");
  await stand("complaint, further");
};

const noise: Way = async (page, stand) => {
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
};

const plan: Way = async (page, stand) => {
  await press(page, first.start.plan);
  await page.getByText("What is drawn gives it").waitFor({ timeout: 15_000 });
  await stand("plan");
  await press(page, /^main left,/);
  await press(page, /^actively balanced/);
  await page.getByText("Use this one").waitFor({ timeout: 15_000 });
  await stand("plan, a lead to take");
  await press(page, "small mixer");
  await stand("plan, tray");
};

const prove: Way = async (page, stand) => {
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
};

const training: Way = async (page, stand) => {
  await press(page, first.start.train);
  await page.locator(".choices button").first().waitFor({ timeout: 15_000 });
  await stand("training");
  await page.locator(".choices button").first().click();
  await page.locator(".outcome").waitFor();
  await stand("training, named");
};

/** Out of a recording, made with a lead whose right side is soft and leaks into the left. */
const measure: Way = async (page, stand) => {
  await press(page, first.start.measure);
  const file = page.locator("input[type=file]");
  await file.waitFor({ state: "attached", timeout: 15_000 });
  await stand("measure");
  const buffer = Buffer.from(wavOfCapture(captured([1, 0.05, 0, 0.3])));
  await file.setInputFiles({ name: "evening.wav", mimeType: "audio/wav", buffer });
  await page.getByText("The signal is in this recording once.").waitFor({ timeout: 60_000 });
  await stand("measure, result");
};

/** What the ways before it have left on the disk. */
const sessions: Way = async (page, stand) => {
  await press(page, first.start.sessions);
  await page.locator(".session").nth(2).waitFor({ timeout: 15_000 });
  await page.waitForTimeout(1500); // each row's picture is worked out in its turn
  await stand("sessions");
  await page.locator(".session summary").last().click();
  await stand("sessions, more");
  await page.locator(".session").last().getByRole("button", { name: sessionWords.compare }).click();
  await stand("sessions, with which");
  await page.getByRole("button", { name: "Tallow Hall story evening" }).first().click();
  await page.locator(".compared li").first().waitFor({ timeout: 15_000 });
  await stand("sessions, compared");
};

const levels: Way = async (page, stand) => {
  await press(page, "Tallow Hall story evening");
  await press(page, "How loud, how much hiss");
  await page.locator(".level-diagram").waitFor({ timeout: 15_000 });
  await stand("levels");
  await press(page, "Set the knobs so");
  await press(page, "numbers of headphones 1");
  for (const one of await page.locator(".levels details > summary").all()) await one.click();
  await stand("levels, all of it");
};

/** A screen that one press of the first one leads to. */
const one =
  (name: string, button: string): Way =>
  async (page, stand) => {
    await press(page, button);
    await page.getByRole("heading", { level: 1 }).waitFor();
    await stand(name);
  };

/** Every way through the built page; `number` is a bench rig's whose seat 4 has lost its return. */
export const ways = (number: number): readonly Way[] => [
  start,
  round(number),
  handsUp,
  levels,
  rig,
  complaint,
  noise,
  plan,
  prove,
  training,
  measure,
  one("listen", first.start.hear),
  one("sounds", first.start.sounds),
  one("sound out", first.start.soundOut),
  one("flex", first.start.flex),
  sessions,
];
