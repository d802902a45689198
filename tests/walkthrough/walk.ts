import { earCheck } from "#core/checks/catalogue.ts";
import type { Asked, Finding } from "#core/checks/finding.ts";
import { asItShouldBe, sightsOf } from "#core/checks/look.ts";
import type { Advice } from "#core/diagnosis/advice.ts";
import { questionsOf } from "#core/diagnosis/evidence.ts";
import { relativeGains } from "#core/rig/ear-matrix.ts";
import type { Gains } from "#core/rig/effect.ts";
import type { Rig } from "#core/rig/rig.ts";
import { build } from "#core/rig/rig.ts";
import type { RigFault } from "#core/rig/rig-faults.ts";
import { type Derived, derive } from "#core/session/derive.ts";
import { add, type Log } from "#core/session/log.ts";
import { pairOrder } from "#core/signals/burst-pair.ts";
import type { SignalName } from "#core/signals/catalogue.ts";
import { render } from "#core/signals/render.ts";
import { fromDecibels } from "#core/units/decibels.ts";
import type { Random } from "#core/units/random.ts";
import { halves, type Pointed, type Recording, whereWas } from "#tests/robot/ears.ts";

const rate = 16_000;

/** How one walk ended. */
export interface Walked {
  readonly checks: number;
  readonly derived: Derived;
  readonly log: Log;
  readonly position: string;
  readonly end: "healthy" | "sure" | "unsure" | "lost";
}

/** A world to walk: what is planted, how often the person's finger slips, and what else they hear. */
export interface World {
  readonly rig: Rig;
  readonly planted: readonly RigFault[];
  readonly slips: number;
  readonly random: Random;
  /** Gains heard in place of the rig's own: a plant that is on no list. */
  readonly gains?: (signal: SignalName) => Gains;
  /** What happens to a recording on its way into the person: the controls. */
  readonly spoilt?: (recording: Recording) => Recording;
}

function gainsAt(
  { rig, planted, gains, random }: World,
  position: string,
  signal: SignalName,
): Gains {
  if (gains !== undefined) return gains(signal);
  const there = planted.filter(({ comesAndGoes }) => !comesAndGoes || random() < 0.5);
  return relativeGains(build(rig), position, there);
}

/** What the cups play: the signal's samples through the four gains. */
function heardAt(world: World, position: string, name: SignalName, seed: number): Recording {
  const sound = render(name, rate, seed);
  const [ll, lr, rl, rr] = gainsAt(world, position, name);
  const mix = (a: number, b: number) =>
    sound.left.map((sample, at) => a * sample + b * (sound.right[at] ?? 0));
  return (world.spoilt ?? ((recording) => recording))({
    left: mix(ll, lr),
    right: mix(rl, rr),
    rate,
  });
}

const mirrors = ({ planted }: World, position: string): boolean =>
  planted.filter(
    ({ name, part }) =>
      name === "mirrors left and right" && (part === "operator" || part.startsWith(`${position}:`)),
  ).length %
    2 ===
  1;

const other = (text: string): string =>
  text.includes("left") ? text.replace("left", "right") : text.replace("right", "left");

/** The word of the program's list for what a person pointed at. */
function wordFor({ place, faint }: Pointed, mirrored: boolean): string {
  if (place === "nothing at all") return "nothing";
  const said = mirrored ? other(place) : place;
  return faint ? `faint, ${said}` : said;
}

function answersByEar(world: World, check: string, position: string): string[] {
  const { signal } = earCheck(check);
  const seed = Math.floor(world.random() * 1e6);
  const recording = heardAt(world, position, signal, seed);
  const normal = fromDecibels(-26);
  if (check === "silence")
    return [whereWas(recording, normal).place === "nothing at all" ? "nothing" : "something"];
  if (check === "cup") return [cupFor(world, position, whereWas(recording, normal))];
  if (check !== "pair") return [wordFor(whereWas(recording, normal), mirrors(world, position))];
  const said = halves(recording).map((half) =>
    wordFor(whereWas(half, normal), mirrors(world, position)),
  );
  return pairOrder(seed) === "in phase first" ? said : said.reverse();
}

/** A hand goes to where the sound is; the letter on that cup is read off. */
function cupFor({ planted }: World, position: string, { place }: Pointed): string {
  if (place === "nothing at all") return "neither cup";
  if (place === "middle" || place === "all round") return "both cups";
  const backwards = planted.some(
    ({ name, part }) => name === "worn backwards" && part.startsWith(`${position}:`),
  );
  return place.includes("left") !== backwards ? "cup marked L" : "cup marked R";
}

/** What a look shows. */
function answersByEye(derived: Derived, world: World, place: string): string[] {
  const look = derived.model.looks.find((one) => one.place === place);
  const [shown] = look === undefined ? [] : sightsOf(look, world.planted);
  return [shown ?? asItShouldBe];
}

function saidTo(derived: Derived, world: World, asked: Asked): string[] {
  if (asked.check === "look") return answersByEye(derived, world, asked.place);
  if ("position" in asked) return answersByEar(world, asked.check, asked.position);
  throw new Error(`nobody can answer ${asked.check} here`);
}

function answer(derived: Derived, world: World, asked: Asked): Finding {
  const said = saidTo(derived, world, asked);
  const lists = "position" in asked ? questionsOf(asked).map(({ answers }) => answers) : [];
  const slipped = said.map((one, at) => {
    const list = lists[at];
    if (list === undefined || world.random() >= world.slips) return one;
    return list[Math.floor(world.random() * list.length)] ?? one;
  });
  return { asked, results: slipped.map((one) => [one]) };
}

const most = 30;

/** A log that draws the rig and says nothing else yet. */
export const drawn = (rig: Rig): Log => add([], { entry: "drawing", rig }, 0);

/** Walks one position of a world from what a log knows to a verdict, answering whatever the program asks. */
export function walk(world: World, position: string, before: Log = drawn(world.rig)): Walked {
  let log = before;
  for (let checks = 0; ; checks++) {
    const derived = derive(log);
    if (derived === undefined) throw new Error("the log draws no rig");
    const { advice } = derived.standing(position);
    const asked = advice.advice === "ask" && checks < most ? advice.option.asked : undefined;
    if (asked === undefined) return { checks, derived, log, position, end: endOf(advice) };
    log = add(log, { entry: "finding", finding: answer(derived, world, asked) }, 0);
  }
}

/** Lost: it would go on asking. */
function endOf(advice: Advice): Walked["end"] {
  if (advice.advice === "ask") return "lost";
  if (advice.advice === "healthy") return "healthy";
  return advice.sure ? "sure" : "unsure";
}
