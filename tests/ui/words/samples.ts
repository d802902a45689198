const names = ["sample one", "sample two", "sample three", "sample four", "sample five"];
const sided = [undefined, "left", "right"].map((side) => ["sample plug", side]);

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
  "prove.how.cannotSee": [
    [["sample one"], 0],
    [["sample one", "sample two"], 3],
  ],
  "prove.meter.left": [[1], [5]],
  "prove.unseen.dirt": [[30]],
  "prove.end": [
    ["A", undefined],
    ["A", "sample mark"],
  ],
  "prove.result.faults": [[["sample one", "sample two"]]],
  "prove.result.likeliest": [[["sample one", "sample two"], "sample sure", "sample odds"]],
  "prove.result.itIsNow": [[["sample one", "sample two"]]],
  "proveBench.plug": [
    ["A", undefined],
    ["A", "sample mark"],
  ],
  "proveBench.fromPlayer": sided,
  "proveBench.fromCard": sided,
  "proveBench.far.ear": sided,
  "proveBench.far.return": sided,
  "proveBench.far.load box": sided,
  "proveBench.loadBox.label": [
    [["sample one"], "sample back"],
    [["sample one", "sample two"], "sample back"],
  ],
  "proveBench.loadBox.resistors": [
    [["sample one"], 1],
    [["sample one", "sample two"], 2],
  ],
  "proveBench.loadBox.inputs": [[["sample one"]], [["sample one", "sample two"]]],
  "proveBench.mend.exchanged": [
    [[{ to: "sample to", on: "sample on", from: "sample from" }]],
    [[{ to: "sample to", on: "sample on", from: "sample from" }], "sample where"],
  ],
  "proveBench.mend.open": [names.slice(0, 3), names],
  "proveBench.mend.resistive": [names.slice(0, 4), names],
  "proveBench.mend.joined": [names.slice(0, 2), names],
  "planFacts.strain.hard": [[["sample one", "sample two"], "sample Ω"]],
};

/** Calls of one function: names in every place where nothing else was written down. */
export function callsOf(at: string): readonly (readonly unknown[])[] {
  if (at.startsWith("figures."))
    return [[-123.46], [0], [0.04], [0.8], [1.25], [64]].map((one) => [...one, 1]);
  return samples[at] ?? [names];
}
