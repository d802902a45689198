import { earCheck } from "#core/checks/catalogue.ts";
import { type EarCheckName, earChecks } from "#core/checks/check.ts";
import type { Model } from "#core/diagnosis/model.ts";
import type { Rig } from "#core/rig/rig.ts";
import type { RigFault } from "#core/rig/rig-faults.ts";
import { derive } from "#core/session/derive.ts";
import { add } from "#core/session/log.ts";
import { drawn } from "#tests/walkthrough/walk.ts";
import { answersOf, type FieldCase } from "./field-case-words.ts";

/** What a case's words make of a rig: every position answers what they say. */
export function heardOf(one: FieldCase, rig: Rig) {
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
  const way = model.under(position, [fault]);
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
export function leads(one: FieldCase, rig: Rig, cause: (fault: RigFault) => boolean) {
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
