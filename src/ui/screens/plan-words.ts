import type { Heard } from "#core/listening/heard.ts";
import type { Patch } from "#core/patching/patch.ts";
import type { Prediction } from "#core/patching/prediction.ts";
import { outputsOf } from "#core/patching/sockets-of.ts";
import type { RigPart } from "#core/rig/rig.ts";
import type { Words } from "#ui/words/use-words.ts";
import type { Plan } from "./plan.ts";
import { panWorks, supplyOf } from "./plan-foresee.ts";

export const nameOf = ({ language }: Words, { kind }: Pick<RigPart, "kind">): string =>
  language.patching.kinds[kind].name;

/** What is between: 'stereo jack lead', 'mono adapter and stereo jack lead'. */
export function patchName(words: Words, { wires, plugged }: Patch): string {
  const { nothing, straight, twoOf } = words.plan.lead;
  const names = wires.map((wire) => nameOf(words, wire));
  const [one, other] = names;
  if (one === undefined) return plugged.length === 0 ? nothing : straight;
  return one === other ? twoOf(one) : words.marks.and(names);
}

/** Weaker than this and nothing arrives. */
const silent = -30;
/** What is told of a level, and of a difference between the ears, decibels. */
const [told, apart] = [1, 3];

/** How loud it arrives. Nobody is told to turn up what is wrong: what mends it would be loud. */
export function levelWords(
  { figures: { decibels, signedDecibels }, planFacts: { level: words } }: Words,
  { level: [left, right] }: Prediction,
): string {
  const heard = [left, right].filter((one) => one > silent);
  const most = Math.max(...heard);
  if (heard.length === 0) return words.nothing;
  if (heard.length === 2 && Math.abs(left - right) > apart)
    return words.ears(signedDecibels(left), signedDecibels(right));
  if (Math.abs(most) < told) return words.asGiven;
  return (most < 0 ? words.quieter : words.louder)(decibels(Math.abs(most)));
}

export function panWords({ language, planFacts }: Words, prediction: Prediction): string {
  const { left, middle, right } = prediction.panning;
  const { pan } = planFacts;
  const places: Readonly<Partial<Record<Heard, string>>> = planFacts.places;
  const placed = (heard: Heard): string => places[heard] ?? language.heard[heard];
  if (!panWorks(prediction)) return left === "nothing" ? pan.nothing : pan.allHeard(placed(left));
  if (left === "left ear" && middle === "middle" && right === "right ear") return pan.works;
  return pan.panned(placed(left), placed(middle), placed(right));
}

export function humWords(
  { language: { patching } }: Words,
  prediction: Prediction,
  { from, into }: Pick<Plan, "from" | "into">,
): string {
  const earthed = [from, into].filter((part) => supplyOf(part) === "mains-earthed").length;
  const said = patching.hums[prediction.hum];
  if (prediction.hum === "loud") return `${said} ${patching.humWhy.return}`;
  if (prediction.hum === "none") return said;
  return `${said} ${earthed === 2 ? patching.humWhy.earths : patching.humWhy.leakage}`;
}

export function strainWords(
  { figures, marks, planFacts: { strain } }: Words,
  { strains }: Prediction,
): string {
  const [first] = strains;
  if (first === undefined) return strain.none;
  const sockets = [...new Set(strains.map(({ socket }) => marks.socket(socket)))];
  return strain.hard(sockets, `${figures.fixed(first.ohms, first.ohms < 1 ? 1 : 0)} Ω`);
}

/** Where something goes, said in full: 'main left and main right of the small mixer'. */
export const outputsWords = (
  words: Words,
  { from }: Pick<Plan, "from">,
  sockets: readonly string[],
): string => {
  const order = outputsOf(from).map(({ name }) => name);
  const sorted = [...sockets].sort((a, b) => order.indexOf(a) - order.indexOf(b));
  return words.plan.advice.outputsOf(sorted.map(words.marks.socket), nameOf(words, from));
};
