import { expect, test } from "vitest";
import { answersTo, type Noise, type Trial } from "#core/checks/noise.ts";
import type { Cause, CauseName } from "#core/noises/cause.ts";
import { type Hunt, huntAt } from "#core/noises/hunt.ts";
import { build, type Rig } from "#core/rig/rig.ts";
import { fromHeadphoneSocket, straightIn } from "#core/rig/rigs.ts";
import { standIn } from "#core/rig/stand-ins.ts";
import { noticed } from "#tests/core/noises/simulated.ts";

const desk = fromHeadphoneSocket("a desk", ["host", "guest"]);

/** A report as trials and what became of the noise; the rest of what the hunt asks nobody could tell. The set-ups restated in parts of ours. */
interface Restated {
  readonly rig: Rig;
  readonly noise: Noise;
  readonly told: readonly (readonly [Trial, string])[];
  readonly cause: readonly CauseName[];
}

// Sources: the address beside each; those that score stand in field-cases.json as well.
const restated: Readonly<Record<string, Restated>> = {
  // http://soundonsound.com/sound-advice/q-whats-causing-distortion-my-ear-monitors: 'distortion that follows the send level rather than the knob is input overload.'
  "FC-55": {
    rig: standIn({ feed: "amplifier after a mixer", listeners: 1 }),
    noise: "distortion",
    told: [[{ try: "quieter source" }, "gone"]],
    cause: ["input overloaded"],
  },
  // http://forum.cakewalk.com/M/tm.aspx?fp=617&m=3617228: the crackle went with the lead when two were exchanged; a new one cured it. Restated: it crackles as the lead is moved.
  "FC-56": {
    rig: desk,
    noise: "crackle",
    told: [
      [{ try: "lead bent", part: "feed lead" }, "it goes with it"],
      [{ try: "other headphones" }, "the same"],
    ],
    // Whether it is a wire or a plug of it nothing told: both are the lead.
    cause: ["lead breaking", "plugs not clean"],
  },
  // https://github.com/shorepine/tulipcc/issues/1198: a lead that carried no sound closed the loop: with it out the hum was gone.
  "FC-57": {
    rig: desk,
    noise: "hum",
    told: [[{ try: "other leads out" }, "gone"]],
    cause: ["loop by another lead", "ground loop"],
  },
  // https://github.com/the-darkvoid/XPS9360-macOS/issues/77: steady in silence, whenever the laptop's amplifier is awake, whatever plays.
  "FC-64": {
    rig: straightIn,
    noise: "hiss",
    told: [
      [{ try: "programme stopped" }, "the same"],
      [{ try: "knob down", part: "laptop", socket: "phones" }, "the same"],
    ],
    cause: ["behind the last knob", "behind the knob", "the box itself"],
  },
};

/** What was told, and 'can't tell' to whatever else is asked. */
function hunted({ rig, noise, told }: Restated): Hunt {
  const built = build(rig);
  const position = rig.positions[0]?.id ?? "";
  const findings = told.map(([trial, answer]) => noticed(position, noise, trial, [answer]));
  for (let asked = 0; asked < 20; asked += 1) {
    const hunt = huntAt(built, position, noise, findings);
    if (hunt === undefined) throw new Error("nothing to hunt");
    if (hunt.next === undefined) return hunt;
    const { trial } = hunt.next;
    const all = answersTo(trial.try);
    findings.push(noticed(position, noise, trial, [...all]));
  }
  throw new Error("it goes on and on");
}

test.for(Object.entries(restated))("%s: where the noise came in leads", ([id, one]) => {
  const { suspects } = hunted(one);
  const [first] = suspects;
  const names = (causes: readonly Cause[] = []) =>
    causes
      .map((each) => ("part" in each ? `${each.part}: ${each.cause}` : each.cause))
      .join(" or ");
  const percent = Math.round(100 * (first?.probability ?? 0));
  console.info(`${id}: ${names(first?.causes)}, ${percent} %, as reported and restated`);
  expect(first?.causes.some(({ cause }) => one.cause.includes(cause))).toBe(true);
});
