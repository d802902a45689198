import type { Heard } from "#core/listening/heard.ts";
import type { Patch } from "#core/patching/patch.ts";
import type { Prediction } from "#core/patching/prediction.ts";
import { outputsOf } from "#core/patching/sockets-of.ts";
import type { RigPart } from "#core/rig/rig.ts";
import { english } from "#core/words/english.ts";
import type { Plan } from "./plan.ts";
import { panWorks, supplyOf } from "./plan-foresee.ts";

const words = english.patching;

export const nameOf = ({ kind }: Pick<RigPart, "kind">): string => words.kinds[kind].name;

/** What is between: 'stereo jack lead', 'mono adapter and stereo jack lead'. */
export function patchName({ wires, plugged }: Patch): string {
  const [one, other] = wires.map(nameOf);
  if (one === undefined) return plugged.length === 0 ? "nothing yet" : "no lead, straight in";
  if (other === undefined) return one;
  return one === other ? `two of: ${one}` : wires.map(nameOf).join(" and ");
}

/** Decibels as they are read: '+5.9 dB', '−6.1 dB'. */
function decibels(level: number): string {
  const text = Math.abs(level).toFixed(1);
  return `${level < 0 && text !== "0.0" ? "−" : "+"}${text} dB`;
}

/** Weaker than this and nothing arrives. */
const silent = -30;
/** What is told of a level, and of a difference between the ears, decibels. */
const [told, apart] = [1, 3];

/** How loud it arrives. Nobody is told to turn up what is wrong: what mends it would be loud. */
export function levelWords({ level: [left, right] }: Prediction): string {
  const heard = [left, right].filter((one) => one > silent);
  const most = Math.max(...heard);
  if (heard.length === 0) return "Nothing arrives.";
  if (heard.length === 2 && Math.abs(left - right) > apart)
    return `Left ear ${decibels(left)}, right ear ${decibels(right)}.`;
  if (Math.abs(most) < told) return "As loud as the output gives it.";
  const by = `${Math.abs(most).toFixed(1)} dB`;
  return most < 0
    ? `${by} quieter than the output gives it.`
    : `${by} louder than the output gives it on one leg, with as much less headroom.`;
}

const places: Readonly<Partial<Record<Heard, string>>> = {
  "all round": "all round, in no place",
  nothing: "not heard at all",
  middle: "in the middle",
  "left ear": "in the left ear",
  "right ear": "in the right ear",
};

const placed = (heard: Heard): string => places[heard] ?? heard;

export function panWords(prediction: Prediction): string {
  const { left, middle, right } = prediction.panning;
  if (!panWorks(prediction))
    return left === "nothing"
      ? "Pan does nothing."
      : `Pan does nothing: all is heard ${placed(left)}.`;
  if (left === "left ear" && middle === "middle" && right === "right ear")
    return "Pan works: left, middle and right are where they belong.";
  return `Panned left: ${placed(left)}. Middle: ${placed(middle)}. Right: ${placed(right)}.`;
}

export function humWords(
  prediction: Prediction,
  { from, into }: Pick<Plan, "from" | "into">,
): string {
  const earthed = [from, into].filter((part) => supplyOf(part) === "mains-earthed").length;
  const said = words.hums[prediction.hum];
  if (prediction.hum === "loud") return `${said} ${words.humWhy.return}`;
  if (prediction.hum === "none") return said;
  return `${said} ${earthed === 2 ? words.humWhy.earths : words.humWhy.leakage}`;
}

export function strainWords({ strains }: Prediction): string {
  const [first] = strains;
  if (first === undefined) return "Easy on the output.";
  const sockets = [...new Set(strains.map(({ socket }) => socket))].join(" and ");
  return `Hard on ${sockets}: it drives ${ohmsOf(first.ohms)}, which is a short to it.`;
}

const ohmsOf = (ohms: number): string => `${ohms < 1 ? ohms.toFixed(1) : Math.round(ohms)} Ω`;

/** Where something goes, said in full: 'main left and main right of the small mixer'. */
export const outputsWords = ({ from }: Pick<Plan, "from">, sockets: readonly string[]): string => {
  const order = outputsOf(from).map(({ name }) => name);
  const sorted = [...sockets].sort((a, b) => order.indexOf(a) - order.indexOf(b));
  return `${sorted.join(" and ")} of the ${nameOf(from)}`;
};
