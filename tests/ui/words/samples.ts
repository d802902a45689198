/** What the functions of the records are called with: by their place, else names and counts. */
const samples: Readonly<Record<string, readonly (readonly unknown[])[]>> = {
  "marks.and": [[["sample one"]], [["sample one", "sample two"]]],
  "plan.advice.rightFor": [[0.004], [0.62], [0.999]],
  "plan.advice.outputsOf": [[["sample one", "sample two"], "sample box"]],
  "plan.advice.whereTo": [
    ["sample out", [], "sample box"],
    ["sample out", ["sample one", "sample two"], "sample box"],
  ],
  "plan.pins.to": [["sample tip", ["sample one", "sample two"]]],
  "planFacts.strain.hard": [[["sample one", "sample two"], "sample Ω"]],
};

const names = ["sample one", "sample two", "sample three", "sample four", "sample five"];

/** Calls of one function: names in every place where nothing else was written down. */
export function callsOf(at: string): readonly (readonly unknown[])[] {
  if (at.startsWith("figures."))
    return [[-123.46], [0], [0.04], [0.8], [1.25], [64]].map((one) => [...one, 1]);
  return samples[at] ?? [names];
}
