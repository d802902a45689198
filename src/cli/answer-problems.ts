import type { Results } from "#core/checks/finding.ts";
import type { BuiltRig } from "#core/rig/rig.ts";
import { oneOf, type Path, type Problem } from "./problem.ts";

/** A position that a rig lacks; the path is of what names it by `position`. */
export const seatProblems = (
  { positions }: BuiltRig,
  position: string,
  at: Path,
): readonly Problem[] => {
  const ids = positions.map(({ id }) => id);
  return ids.includes(position)
    ? []
    : [{ path: [...at, "position"], expected: oneOf(ids), found: position }];
};

/** Answers that the closed lists of some questions lack. */
export const answerProblems = (
  lists: readonly (readonly string[])[],
  results: Results,
  at: Path,
): readonly Problem[] =>
  results.flatMap((given, question): Problem[] => {
    const list = lists[question];
    if (list === undefined)
      return [{ path: [...at, question], expected: `answers to ${lists.length} questions` }];
    return given.flatMap((answer, index) =>
      list.includes(answer)
        ? []
        : [{ path: [...at, question, index], expected: oneOf(list), found: answer }],
    );
  });
