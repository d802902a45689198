import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { earCheck } from "#core/checks/catalogue.ts";
import { type EarCheckName, earChecks } from "#core/checks/check.ts";
import { wayUnder } from "#core/diagnosis/groups.ts";
import type { Model } from "#core/diagnosis/model.ts";
import type { Rig } from "#core/rig/rig.ts";
import type { RigFault } from "#core/rig/rig-faults.ts";
import { straightIn } from "#core/rig/rigs.ts";
import { derive } from "#core/session/derive.ts";
import { add } from "#core/session/log.ts";
import { seeded } from "#core/units/random.ts";
import { english } from "#core/words/english.ts";
import { drawn, walk } from "#tests/walkthrough/walk.ts";
import { foretold } from "./field-case-patches.ts";
import { newSetUps, setUps } from "./field-case-rigs.ts";
import { answersOf, type FieldCase } from "./field-case-words.ts";

const cases: readonly FieldCase[] = JSON.parse(
  readFileSync("tests/reference/field-cases.json", "utf8"),
);

/** Cases whose cause no check here can tell, and the line under 'not tested' that names it. */
const untestable: Readonly<Record<string, string>> = {
  "FC-37": "both sides inverted together",
  "FC-49": "listening with one cup off",
  "FC-53": "a volume knob that is uneven near its bottom",
  "FC-56": "hiss, hum and crackle",
  "FC-64": "hiss, hum and crackle",
};

function caseOf(id: string): FieldCase {
  const one = cases.find((each) => each.id === id);
  if (one === undefined) throw new Error(`no case ${id}`);
  return one;
}

function heardOf(one: FieldCase, rig: Rig) {
  const answers = answersOf(one);
  const asked = earChecks.filter((check) => answers[check] !== undefined);
  const log = rig.positions.reduce(
    (all, { id }) =>
      asked.reduce(
        (sum, check) =>
          add(
            sum,
            {
              entry: "finding",
              finding: { asked: { check, position: id }, results: answers[check] ?? [] },
            },
            0,
          ),
        all,
      ),
    drawn(rig),
  );
  const derived = derive(log);
  if (derived === undefined) throw new Error("the log draws no rig");
  return { derived, asked, answers, log };
}

/** How likely each answer a case gave was under one fault alone. */
function chances(
  model: Model,
  fault: RigFault,
  asked: readonly EarCheckName[],
  answers: ReturnType<typeof answersOf>,
) {
  const [position] = model.root.positions;
  const branch = model.branches.find(({ faults }) => faults.includes(fault));
  if (position === undefined || branch === undefined) throw new Error(`${fault.id} is nowhere`);
  const way = wayUnder(model, position, branch, [fault]);
  return asked.flatMap((check) =>
    earCheck(check).questions.map((question, at) => {
      const given = answers[check]?.[at] ?? question.answers;
      const p = model.predict(question, position)(way);
      return question.answers.reduce(
        (sum, one, index) => sum + (given.includes(one) ? (p[index] ?? 0) : 0),
        0,
      );
    }),
  );
}

/** Whether a fault is the leading suspect or one that no finding given tells from it. */
function leads(one: FieldCase, rig: Rig, cause: (fault: RigFault) => boolean) {
  const { derived, asked, answers } = heardOf(one, rig);
  const [position = ""] = derived.model.root.positions;
  const first = derived.standing(position).suspects[0]?.group;
  const leader = first?.faults[0];
  if (first === undefined || leader === undefined) throw new Error("nobody is suspected");
  const lead = chances(derived.model, leader, asked, answers);
  const alike = derived.model.branches
    .filter((branch) => rig.positions.length === 1 || branch === first.branch)
    .flatMap(({ faults }) => faults)
    .filter((fault) =>
      chances(derived.model, fault, asked, answers).every(
        (p, at) => Math.abs(p - (lead[at] ?? 0)) <= 0.05,
      ),
    );
  return {
    leader,
    alike,
    inFirst: first.faults.some(cause),
    found: [...first.faults, ...alike].some(cause),
  };
}

const basis = (one: FieldCase) =>
  one.heard_inferred.length === 0
    ? "reported"
    : `inferred: ${one.heard_inferred.length} answers (${one.inferred_basis})`;

// Sources: the address beside each case in field-cases.json; set-ups restated in parts of ours. The leading group of a case is
// what the findings it gave cannot tell from the first suspect; how often the cause is in the first suspect's own group, which a
// further check would single out, is printed as well.
test.for([
  ["first", setUps, 17, 14],
  ["newly covered", newSetUps, 8, 5],
] as const)(
  "the cause of real troubles is in the leading group: %s",
  ([name, some, count, least]) => {
    const results = Object.entries(some).map(([id, [rig, cause]]) => {
      const { leader, alike, found, inFirst } = leads(caseOf(id), rig, cause);
      const how = [
        found && !inFirst ? "alike " : "",
        inFirst ? "first " : "",
        found ? "" : "missed",
      ].join("");
      console.log(
        `${id} ${how} ${caseOf(id).cause_class.padEnd(34)} first: ${leader.id} (${alike.length} alike); ${basis(caseOf(id))}`,
      );
      return { found, inFirst };
    });
    const found = results.filter((one) => one.found).length;
    const first = results.filter((one) => one.inFirst).length;
    console.log(
      `${name}: ${found} of ${results.length} causes in the leading group, ${first} in the first suspect's own`,
    );
    expect(results.length).toBe(count);
    expect(found).toBeGreaterThanOrEqual(least);
  },
);

test.for(Object.entries(foretold))(
  "%s is foretold before anything is plugged in",
  ([id, [prediction, effects]]) => {
    console.log(
      `${id} ${caseOf(id).cause_class}: foretold '${english.effects[prediction.effect]}'; ${basis(caseOf(id))}`,
    );
    expect(effects).toContain(prediction.effect);
  },
);

// Of the cases that the parts newly cover, four in five have their cause in the leading group or are foretold from the patch as it was.
// FC-01 is missed by the diagnosis, which has a single report to go by, and foretold.
test("four in five of the newly covered cases are named or foretold", () => {
  const all = [...new Set([...Object.keys(newSetUps), ...Object.keys(foretold)])];
  const named = all.filter((id) => {
    const [rig, cause] = newSetUps[id] ?? [];
    return foretold[id] !== undefined || (rig && cause && leads(caseOf(id), rig, cause).found);
  });
  console.log(
    `newly covered: ${named.length} of ${all.length} named or foretold; missed ${all.filter((id) => !named.includes(id))}`,
  );
  expect(named.length / all.length).toBeGreaterThanOrEqual(0.8);
});

test.for(Object.entries(untestable))(
  "%s ends in 'nothing found', its cause under 'not tested'",
  ([id, line]) => {
    const one = caseOf(id);
    const { log } = heardOf(one, straightIn);
    // What the report does not say is answered as by somebody whose feed is as it should be.
    const end = walk(
      { rig: straightIn, planted: [], slips: 0, random: seeded(1) },
      "position 1",
      log,
    );
    const { trouble } = end.derived.standing("position 1");
    console.log(
      `${id} ${one.cause_class}: ${end.end}, trouble ${(100 * trouble).toFixed(1)} %; ${basis(one)}`,
    );
    expect(end.end).toBe("healthy");
    expect(english.neverTested).toContain(line);
  },
);
