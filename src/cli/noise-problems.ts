import type { Noticed } from "#core/checks/finding.ts";
import { answersTo, type Trial } from "#core/checks/noise.ts";
import { isPart } from "#core/rig/plug-troubles.ts";
import type { BuiltRig } from "#core/rig/rig.ts";
import { answerProblems, seatProblems } from "./answer-problems.ts";
import { oneOf, type Path, type Problem } from "./problem.ts";
import { noPart } from "./rig-problems.ts";

/** What a trial against a noise names that a rig lacks, and answers that its list lacks. */
export function noticedProblems(
  now: BuiltRig,
  { asked, results }: Noticed,
  at: Path,
): readonly Problem[] {
  const place = [
    ...seatProblems(now, asked.position, [...at, "asked"]),
    ...trialProblems(now, asked.trial, [...at, "asked", "trial"]),
  ];
  const list = answersTo(asked.trial.try);
  return place.length > 0 ? place : answerProblems([list], results, [...at, "results"]);
}

function trialProblems(now: BuiltRig, trial: Trial, at: Path): readonly Problem[] {
  if ("position" in trial) return seatProblems(now, trial.position, at);
  if (!("part" in trial)) return [];
  if (!isPart(now, trial.part)) return [noPart([...at, "part"], trial.part)];
  if (!("socket" in trial)) return [];
  const outputs = now
    .part(trial.part)
    .sockets.flatMap(({ name, side }) => (side === "out" ? [name] : []));
  return outputs.includes(trial.socket)
    ? []
    : [{ path: [...at, "socket"], expected: oneOf(outputs), found: trial.socket }];
}
