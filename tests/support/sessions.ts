import { fromHeadphoneSocket } from "#core/rig/rigs.ts";
import { add, type Log, type Said } from "#core/session/log.ts";

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
