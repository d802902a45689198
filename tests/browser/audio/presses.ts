import type { Player } from "#audio/player.ts";
import { systemRoute } from "#audio/route.ts";
import { signalNames } from "#core/signals/catalogue.ts";
import { seeded } from "#core/units/random.ts";
import { pause } from "./stage.ts";
import { twoTones } from "./two-tones.ts";

/** Something that a person or the world does, by name. */
export interface Press {
  readonly name: string;
  readonly does: (player: Player, context: AudioContext | undefined) => unknown;
}

const tones = twoTones(0.6, 48_000);

/** Every signal is played by the first scripts in turn, once it may be. */
const plays = signalNames.flatMap((name, at): Press[] =>
  [{}, { loop: true, balanced: true }].map((how) => ({
    name: `hand off, play ${name}${how.loop ? " over and over" : ""}`,
    does: (player) => {
      player.handOff();
      void player.play(name, at, how);
    },
  })),
);

const others: readonly Press[] = [
  { name: "audition", does: (player) => void player.audition(tones, { loop: true }) },
  { name: "hear faulty", does: (player) => player.hear("faulty") },
  { name: "hear healthy", does: (player) => player.hear("healthy") },
  { name: "speak", does: (player) => void player.speak([{ prompt: "position", number: 3 }]) },
  { name: "balance right", does: (player) => player.balance(9) },
  { name: "balance left", does: (player) => player.balance(-4) },
  { name: "louder", does: (player) => player.louder() },
  { name: "louder", does: (player) => player.louder() },
  { name: "softer", does: (player) => player.softer() },
  { name: "silence", does: (player) => player.silence() },
  { name: "to one seat", does: (player) => player.arrive("one") },
  { name: "to another seat", does: (player) => player.arrive("another") },
  { name: "hand on", does: (player) => player.handOn() },
  { name: "hand off", does: (player) => player.handOff() },
  { name: "another output", does: (player) => player.use(systemRoute) },
];

/** What the world does against it. */
export const blows: readonly Press[] = [
  {
    name: "devices change",
    does: () => navigator.mediaDevices.dispatchEvent(new Event("devicechange")),
  },
  { name: "suspended", does: (_, context) => context?.state === "running" && context.suspend() },
  { name: "closed", does: (_, context) => context?.state === "running" && context.close() },
  { name: "broken", does: (_, context) => context?.dispatchEvent(new Event("error")) },
];

/** A script of presses under a seed: mostly sounds and what is done to them; under every second seed now and then a blow. */
export function script(seed: number, length: number): readonly Press[] {
  const chance = seeded(seed);
  const any = (all: readonly Press[]) => all[Math.floor(chance() * all.length)] as Press;
  return Array.from({ length }, (_, at) => {
    if (at % 3 === 0) return plays[(seed * length + at) % plays.length] as Press;
    return seed % 2 === 0 && chance() < 0.2 ? any(blows) : any(others);
  });
}

/** Between two presses: from at once to a third of a second. */
export const hesitate = (chance: () => number) => pause(chance() < 0.2 ? 0 : 330 * chance());
