import type { Noise, Trial } from "#core/checks/noise.ts";
import type { Rig } from "#core/rig/rig.ts";
import { fromHeadphoneSocket } from "#core/rig/rigs.ts";
import { add, type Log, rigIn, type Said } from "#core/session/log.ts";

/** Seats at a table of any size, made up for this program. */
const who = ["host", "reader", "fiddle", "guest", "desk", "second reader", "bell ringer", "door"];

/** What was pressed in a session, a quarter of a minute apart. */
class Pressed {
  log: Log = [];
  #at = Date.UTC(2026, 10, 21, 16, 5);

  say(said: Said): void {
    this.#at += 15_000;
    this.log = add(this.log, said, this.#at);
  }

  hear(position: string, check: "left" | "right" | "pair", ...answers: string[]): void {
    const results = answers.map((one) => [one]);
    this.say({ entry: "finding", finding: { asked: { check, position }, results }, level: -41 });
  }

  well(position: string): void {
    this.hear(position, "left", "left ear");
    this.hear(position, "right", "right ear");
    this.hear(position, "pair", "middle", "all round");
  }

  /** One side is dead there, which is named; the headphones are replaced, and it is well. */
  mended(position: string, worn: string): void {
    for (let times = 0; times < 2; times++) {
      this.hear(position, "left", "nothing");
      this.hear(position, "right", "right ear");
      this.hear(position, "pair", "right ear", "right ear");
    }
    this.say({ entry: "move", move: { move: "replaced", place: worn } });
    this.well(position);
  }
}

/** An evening's session with so many positions: most are well, one was mended, one is still wrong, one was never heard, one is empty. */
export function evening(positions: number): Log {
  const names = Array.from({ length: positions }, (_, at) => who[at] ?? `chair ${at + 1}`);
  const pressed = new Pressed();
  pressed.say({ entry: "drawing", rig: fromHeadphoneSocket("Tallow Hall story evening", names) });
  pressed.say({ entry: "titled", name: "Tallow Hall, Saturday soundcheck" });
  pressed.well("position 1");
  pressed.well("position 2");
  pressed.mended("position 3", "headphones 3");
  for (let at = 4; at <= positions - 3; at++) pressed.well(`position ${at}`);
  const last = `position ${positions - 2}`;
  pressed.hear(last, "left", "all round");
  pressed.hear(last, "right", "all round");
  pressed.hear(last, "pair", "nothing", "all round");
  pressed.say({ entry: "absent", position: `position ${positions - 1}` });
  return pressed.log;
}

type Settings = NonNullable<Rig["parts"][number]["settings"]>;

/** The rig of a log with more said of its parts: one more drawing. */
export function saidOf(log: Log, said: Readonly<Record<string, Settings>>, time = 0): Log {
  const rig = rigIn(log);
  if (rig === undefined) throw new Error("there is no rig");
  const parts = rig.parts.map((part) => ({
    ...part,
    ...(said[part.id] === undefined ? {} : { settings: { ...part.settings, ...said[part.id] } }),
  }));
  return add(log, { entry: "drawing", rig: { ...rig, parts } }, time);
}

/** What was noticed of a noise. */
export const noticed = (
  position: string,
  noise: Noise,
  trial: Trial,
  ...given: readonly string[]
): Said => ({
  entry: "finding",
  finding: { asked: { check: "noise", position, noise, trial }, results: [given] },
});

/** A torn driver, as nothing but other headphones takes it away. */
export const torn = (position: string): readonly Said[] =>
  [0, 1].map(() => noticed(position, "distortion", { try: "other headphones" }, "gone"));

/** The same evening once every knob was set and the amplifier's numbers were typed, and two noises were looked for, one of which a hand went to. */
export function evenSaid(positions: number): Log {
  const log = evening(positions);
  const time = (log.at(-1)?.at ?? 0) + 60_000;
  const outputs = Array.from({ length: positions }, (_, at) => [
    `output ${at + 1}: knob`,
    0.2 + 0.03 * (at % 8),
  ]);
  const set = saidOf(
    log,
    {
      laptop: { "phones: knob": 0.8 },
      mixer: { "phones: knob": 0.5 },
      amplifier: { "most volts": 4, gain: 12, ...Object.fromEntries(outputs) },
    },
    time,
  );
  const knob: Trial = { try: "knob down", part: "amplifier", socket: "output 1" };
  return [
    noticed("position 1", "hiss", knob, "the same"),
    ...torn("position 2"),
    { entry: "move", move: { move: "replaced", place: "headphones 2" } } as const,
  ].reduce((so, one) => add(so, one, time), set);
}
