import { signals } from "#core/signals/catalogue.ts";
import { render } from "#core/signals/render.ts";
import { wavOf } from "#pack/wav.ts";
import { type Desk, openDesk, pause } from "#tests/sink/desk.ts";
import { heldBy, inUseBy } from "#tests/sink/heap.ts";
import { inChromium, inFirefox, type OpenIn } from "#tests/sink/listeners.ts";
import { pathDelays } from "#tests/sink/path.ts";
import { type Served, servePlayer } from "#tests/sink/player-page.ts";
import { shares, type Used, usedBy } from "#tests/sink/processor.ts";
import { type Tap, taps } from "#tests/sink/taps.ts";
import { onPath } from "#tests/support/programs.ts";
import { markdown } from "./tables.ts";

/** `npm run bench:sound -- [seconds a row] [presses]`: what real playing costs, and how soon it is heard; at a device of PulseAudio. */
const [given = "20", presses = "24"] = process.argv.slice(2);
const seconds = Number(given);
const name = "rotation";
const rate = 48_000;

const percent = (part: number): string => `${(100 * part).toFixed(2)} %`;
const ms = (time: number): string => time.toFixed(1);

async function withDesk<T>(open: OpenIn, served: Served, use: (desk: Desk) => Promise<T>) {
  const desk = await openDesk(open, served);
  return use(desk).finally(desk.close);
}

/** Parts of a core used over the time of a row. */
async function used({ page }: Desk): Promise<Used> {
  const { pid = Number.NaN } = page;
  await pause(2);
  const from = await usedBy(pid);
  const start = performance.now();
  await pause(seconds);
  const to = await usedBy(pid);
  return shares(from, to, (performance.now() - start) / 1000);
}

/** What scripts hold and what they have in use, before and after something. */
async function grown({ page }: Desk, meanwhile: () => Promise<Used>) {
  const held = await heldBy(page);
  const inUse = await inUseBy(page);
  const share = await meanwhile();
  const garbage = ((await inUseBy(page)) ?? Number.NaN) - (inUse ?? Number.NaN);
  return { share, garbage, held: ((await heldBy(page)) ?? Number.NaN) - (held ?? Number.NaN) };
}

async function rowsOfUse(served: Served) {
  const ours = await withDesk(inChromium, served, async (desk) => {
    const before = await used(desk);
    await desk.page.ask(`stage.choose("${name}", 1, { loop: true })`);
    await desk.page.click("#play");
    const playing = await grown(desk, () => used(desk));
    await desk.page.click("#silence");
    return { before, playing, silent: await used(desk) };
  });
  const file = await withDesk(inChromium, served, async (desk) => {
    await desk.page.ask(`stage.playFile("${loopFile()}")`);
    return grown(desk, () => used(desk));
  });
  return { ...ours, file };
}

/** The part that is played over and over, as the address of a file. */
function loopFile(): string {
  const { left, right } = render(name, rate, 1);
  const { from, to } = signals[name].loop?.(rate) ?? { from: 0, to: left.length };
  const part = { left: left.subarray(from, to), right: right.subarray(from, to), rate };
  return `data:audio/wav;base64,${Buffer.from(wavOf(part)).toString("base64")}`;
}

const middleAndWorst = (values: readonly number[]): readonly string[] => {
  const sorted = [...values].sort((a, b) => a - b);
  return [ms(sorted[Math.floor(sorted.length / 2)] ?? Number.NaN), ms(sorted.at(-1) ?? Number.NaN)];
};

const tapRows = (what: string, all: readonly Tap[]): readonly (readonly string[])[] => [
  [`${what}: press to start of the source`, ...middleAndWorst(all.map((one) => one.inPage))],
  [`${what}: press to the device`, ...middleAndWorst(all.map((one) => one.toSound))],
  [
    `${what}: the browser states of itself and its device`,
    ...middleAndWorst(all.map((one) => one.stated)),
  ],
  [`${what}: what remains`, ...middleAndWorst(all.map((one) => one.toSound - one.stated))],
  [
    `${what}: press of silence to the last sample`,
    ...middleAndWorst(all.map((one) => one.toSilence)),
  ],
];

async function rowsOfTaps(served: Served) {
  const rows = await withDesk(inChromium, served, async (desk) => {
    const path = await pathDelays(desk, 20);
    return [
      ...tapRows("Chromium, first press of a page", await taps(desk, Number(presses), true)),
      ...tapRows("Chromium, later", (await taps(desk, Number(presses) + 1, false)).slice(1)),
      ["a click by a plain program, written to recorded", ...middleAndWorst(path)],
    ];
  });
  const fox = onPath("firefox-esr", "firefox");
  if (fox === undefined) return rows;
  const foxes = await withDesk(inFirefox(fox), served, (desk) =>
    taps(desk, Number(presses) + 1, false),
  );
  return [...rows, ...tapRows("Firefox, later", foxes.slice(1))];
}

const served = await servePlayer();
try {
  const { before, playing, silent, file } = await rowsOfUse(served);
  const row = (what: string, { page, audio, whole }: Used) => [
    what,
    percent(page),
    percent(audio),
    percent(whole),
    (whole / file.share.whole).toFixed(2),
  ];
  console.log(
    markdown(
      [`Chromium, ${seconds} s`, "page", "sound service", "whole browser", "against the file"],
      [
        row("nothing played yet", before),
        row(`the player, ${name} over and over`, playing.share),
        row("silenced, its context kept", silent),
        row("the same samples as a file in an audio element", file.share),
      ],
    ),
  );
  const bytes = (one: { held: number; garbage: number }) => [`${one.held}`, `${one.garbage}`];
  console.log(
    `\n${markdown(
      [`bytes more after ${seconds} s`, "held", "in use, garbage too"],
      [
        ["the player", ...bytes(playing)],
        ["the file", ...bytes(file)],
      ],
    )}`,
  );
  console.log(`\n${markdown(["milliseconds", "median", "worst"], await rowsOfTaps(served))}`);
} finally {
  await served.close();
}
