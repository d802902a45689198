import { centredNear, neverCentred } from "#core/checks/balance.ts";
import { earCheck } from "#core/checks/catalogue.ts";
import type { Asked, Finding } from "#core/checks/finding.ts";
import { asItShouldBe, sightsOf } from "#core/checks/look.ts";
import { predictTwist, twistAnswers } from "#core/checks/twist.ts";
import type { Advice } from "#core/diagnosis/advice.ts";
import { questionsOf } from "#core/diagnosis/evidence.ts";
import { earMatrix } from "#core/rig/ear-matrix.ts";
import { type Gains, signed } from "#core/rig/effect.ts";
import type { Rig } from "#core/rig/rig.ts";
import { build } from "#core/rig/rig.ts";
import { stepsTo } from "#core/rig/steps.ts";
import { type Derived, derive } from "#core/session/derive.ts";
import { add, type Log } from "#core/session/log.ts";
import { pairOrder } from "#core/signals/burst-pair.ts";
import type { SignalName } from "#core/signals/catalogue.ts";
import { render } from "#core/signals/render.ts";
import { size } from "#core/units/complex.ts";
import { fromDecibels } from "#core/units/decibels.ts";
import { halves, type Pointed, type Recording, whereWas } from "#tests/robot/ears.ts";
import { begun, moved, type Now, type World } from "./world.ts";

const rate = 16_000;

/** How one walk ended. */
export interface Walked {
  /** Checks and moves, and the seconds they took. */
  readonly checks: number;
  readonly seconds: number;
  /** Something that was planted was mended on the way. */
  readonly mended: boolean;
  readonly derived: Derived;
  readonly log: Log;
  readonly position: string;
  readonly end: "healthy" | "sure" | "unsure" | "lost";
}

function gainsAt(
  { rig, there, state, gains, random }: Now,
  position: string,
  signal: SignalName,
): Gains {
  if (gains !== undefined) return gains(signal);
  const shown = there.filter(({ comesAndGoes }) => !comesAndGoes || random() < 0.5);
  const healthy = Math.max(...earMatrix(build(rig), position, []).flat().map(size));
  return signed(earMatrix(build(state.rig), position, shown), healthy);
}

/** What the cups play: the signal's samples, the right side pushed up by so many decibels, through the four gains. */
function heardAt(
  world: Now,
  position: string,
  name: SignalName,
  seed: number,
  push = 0,
): Recording {
  const sound = render(name, rate, seed);
  const [left, right] = [fromDecibels(Math.min(0, -push)), fromDecibels(Math.min(0, push))];
  const [ll = 0, lr = 0, rl = 0, rr = 0] = gainsAt(world, position, name).map((gain, at) =>
    at % 2 === 0 ? gain * left : gain * right,
  );
  const mix = (a: number, b: number) =>
    sound.left.map((sample, at) => a * sample + b * (sound.right[at] ?? 0));
  return (world.spoilt ?? ((recording) => recording))({
    left: mix(ll, lr),
    right: mix(rl, rr),
    rate,
  });
}

const mirrors = ({ there }: Now, position: string): boolean =>
  there.filter(
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

function answersByEar(world: Now, check: string, position: string): string[] {
  const { signal } = earCheck(check);
  const seed = Math.floor(world.random() * 1e6);
  const recording = heardAt(world, position, signal, seed);
  const normal = fromDecibels(-26);
  if (check === "silence")
    return [whereWas(recording, normal).place === "nothing at all" ? "nothing" : "something"];
  if (check === "balance") return [centredBy(world, position, normal)];
  if (check === "cup") return [cupFor(world, position, whereWas(recording, normal))];
  if (check !== "pair") return [wordFor(whereWas(recording, normal), mirrors(world, position))];
  const said = halves(recording).map((half) =>
    wordFor(whereWas(half, normal), mirrors(world, position)),
  );
  return pairOrder(seed) === "in phase first" ? said : said.reverse();
}

const pushes = [0, 2, -2, 4, -4, 6, -6, 8, -8, 10, -10, 12, -12];

/** Pushes it one way and the other until it is in the middle, and takes the best. */
function centredBy(world: Now, position: string, normal: number): string {
  const power = (samples: Float32Array) => samples.reduce((sum, x) => sum + x * x, 1e-12);
  const all = pushes.map((push) => {
    const heard = heardAt(world, position, "balance-tone", 1, push);
    const aside = Math.abs(Math.log(power(heard.left) / power(heard.right)));
    return { push, aside, place: whereWas(heard, normal).place };
  });
  const best = all.reduce((one, next) => (next.aside < one.aside - 1e-6 ? next : one));
  return best.place === "middle" ? (centredNear(best.push)[0] ?? neverCentred) : neverCentred;
}

/** A hand goes to where the sound is; the letter on that cup is read off. */
function cupFor({ there, state }: Now, position: string, { place }: Pointed): string {
  if (place === "nothing at all") return "neither cup";
  if (place === "middle" || place === "all round") return "both cups";
  const turned = state.rig.positions.find(({ id }) => id === position)?.turned === true;
  const backwards =
    turned !==
    there.some(({ name, part }) => name === "worn backwards" && part.startsWith(`${position}:`));
  return place.includes("left") !== backwards ? "cup marked L" : "cup marked R";
}

/** What a look shows. */
function answersByEye(derived: Derived, world: Now, place: string): string[] {
  const look = derived.model.looks.find((one) => one.place === place);
  const [shown] = look === undefined ? [] : sightsOf(look, world.there);
  return [shown ?? asItShouldBe];
}

/** Whether anything changes when a plug is twisted. */
function twistOf({ there, random }: Now, part: string, plug: string): string {
  const here = there.filter((one) => one.part === part && (one.at === plug || one.at === "body"));
  const [, changes = 0] = predictTwist(here);
  return twistAnswers[random() < changes ? 1 : 0];
}

function saidTo(derived: Derived, world: Now, asked: Asked): string[] {
  if (asked.check === "look") return answersByEye(derived, world, asked.place);
  if (asked.check === "twist") return [twistOf(world, asked.part, asked.plug)];
  if ("position" in asked) return answersByEar(world, asked.check, asked.position);
  throw new Error("nobody can answer that here");
}

function answer(derived: Derived, world: Now, asked: Finding["asked"]): Finding {
  if (asked.check === "matrix" || asked.check === "continuity" || asked.check === "noise")
    throw new Error("nobody measures here");
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

/** Walks one position of a world from what a log knows to a verdict, answering whatever the program asks and moving what it says. */
export function walk(world: World, position: string, before: Log = drawn(world.rig)): Walked {
  let log = before;
  let now = begun(world);
  let seconds = 0;
  for (let checks = 0; ; checks++) {
    const derived = derive(log);
    if (derived === undefined) throw new Error("the log draws no rig");
    const { advice, choice } = derived.standing(position);
    if (checks >= most || advice.advice === "healthy" || advice.advice === "verdict") {
      const reach = stepsTo(build(now.state.rig), position);
      const left = now.there.filter((fault) => reach.some((step) => step.owns(fault)));
      const mended = left.length < world.planted.length;
      return { checks, seconds, mended, derived, log, position, end: endOf(advice) };
    }
    if (advice.advice === "ask") {
      const { asked } = advice.option;
      seconds += advice.option.seconds;
      log = add(log, { entry: "finding", finding: answer(derived, now, asked) }, 0);
    } else {
      seconds += choice?.best?.cost ?? 8;
      now = moved(now, advice.move);
      log = add(log, { entry: "move", move: advice.move }, 0);
    }
  }
}

/** Lost: it would go on asking. */
function endOf(advice: Advice): Walked["end"] {
  if (advice.advice === "verdict") return advice.sure ? "sure" : "unsure";
  return advice.advice === "healthy" ? "healthy" : "lost";
}
