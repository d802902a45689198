import { rigCalls } from "./rig-samples.ts";

const names = ["sample one", "sample two", "sample three", "sample four", "sample five"];
const two = ["sample one", "sample two"];
const sided = [undefined, "left", "right"].map((side) => ["sample plug", side]);

const sides = [["left"], ["right"]];
const numbered = [
  [0, "sample by"],
  [1, "sample by"],
];

/** What entries of the page's records are called with, by the beginning of their path; what is more special comes first. */
const calls: Readonly<Record<string, readonly (readonly unknown[])[]>> = {
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
  "complaint.quoted": [[["sample one"]], [two]],
  "doing.lookFor": [[["sample one"]], [two]],
  "verdict.orWas": [[[{ text: "sample one", odds: "5 in 100" }]]],
  "verdict.orOthers": [
    [1, "sample odds"],
    [3, "sample odds"],
  ],
  "board.toCheck": [[1], [4]],
  "board.needYou": [[1], [4]],
  "sounding.dose": [
    [1, "−6 dBFS"],
    [30, "−6 dBFS"],
  ],
  "asking.handsUp.done": [
    [1, true],
    [3, false],
  ],
  "measure.level.back": [[two]],
  "measure.level.tooMuchBack": [[two]],
  "measure.level.left": [[7]],
  "measure.processed": [[["sample one"]], [two]],
  "measure.granted.channels": [[1], [2]],
  "measure.granted.line": [["sample device", two]],
  "measure.granted.unsaidLine": [["sample device", two]],
  "returning.side.gone": [[0], [1]],
  "returning.side.told": [
    [0, "sample level", "sample polarity"],
    [1, "sample level", "sample polarity"],
  ],
  "returning.over.none": [
    [0, 2, "sample under"],
    [1, 1, "sample under"],
  ],
  "returning.over.asLoud": [
    [0, 2, undefined],
    [1, 1, -1],
  ],
  "returning.over.under": [
    [0, 2, "sample under", 1],
    [1, 1, "sample under", undefined],
  ],
  "returning.time.late": [
    [0, "sample by"],
    [1, "sample by"],
  ],
  "returning.beside.line": [[1, two]],
  "returning.beside.hum": [[50, 150, "−60"]],
  "returning.recording.channels": [[[1, 2]]],
  "returning.recording.share": [[40, "sample name"]],
  "recording.found": [
    [0, 0],
    [1, 1],
    [5, 3],
  ],
  "recording.trouble.other RIFF": [[undefined], ["AVI"]],
  "recording.trouble.format too short": [[{ bytes: 14 }]],
  "recording.trouble.compressed": [[{ name: "A-law" }], [{ format: 4660 }]],
  "recording.trouble.bits": [[{ bits: 48, float: false }], [{ bits: 16, float: true }]],
  "recording.trouble.too many channels": [[{ channels: 9 }]],
  "recording.trouble.rate": [[{ rate: 7000 }]],
  "recording.trouble.frame size": [[{ is: 5, should: 4 }]],
  "recording.trouble.other kind": [["text"], ["UTF-16 text"], [["MP4", "M4A"]]],
  "flex.event": (
    ["tip", "ring", "tip and ring", "sleeve", "tip to ring", "mixed"] as const
  ).flatMap((fault) => [
    [{ fault, down: undefined, breaks: 1, lasted: "12 ms", going: true, shorted: false }],
    [{ fault, down: "6 dB", breaks: 3, lasted: "12 ms", going: false, shorted: true }],
  ]),
  "flex.count": [[0], [1], [4]],
  "flex.lead.flagged": [[2]],
  "flex.result.eventsAndWorst": [[4, "sample long", "sample worst"]],
  "flex.result.events": [[1, "sample long"]],
  "flex.beside.earlier": [
    [1, "sample until", "sample broken"],
    [4, "sample until", "sample broken"],
  ],
  "flex.beside.disturbed": [
    [1, "sample long"],
    [4, "sample long"],
  ],
  "cups.result.notSettled": [[["left"]], [["right", "pair"]]],
  "cups.heads.dead": [[0], [1]],
  "cups.heads.each": [
    ["left", "both"],
    ["neither", "right"],
  ],
  "cups.gives.one": [
    [0, "left"],
    [1, "left"],
  ],
  "cups.buzz.in": [
    ["2 %", 0],
    ["2 %", 1],
  ],
  "cups.buzz.none": [[two]],
  "cups.buzz.one": [
    [0, two],
    [1, two],
  ],
  "planFacts.strain.hard": [[["sample one", "sample two"], "sample Ω"]],
  ...rigCalls,
  "cups.hold.": sides,
  "cups.work.": sides,
  "cups.refused.": sides,
  "cups.picture.": sides,
  "cups.gives.": numbered,
  "cups.apart.": numbered,
  "marks.": [names],
  "listening.": [names],
  "plan.": [names],
  "planFacts.": [names],
  "prove.": [names],
  "proveBench.": [names],
  "figures.": [-123.46, 0, 0.04, 0.8, 1.25, 64].map((one) => [one, 1]),
};

export const pageSamples = Object.fromEntries(
  Object.entries(calls).map(([path, samples]) => [path, () => samples] as const),
);
