import { capital } from "#core/report/phrases.ts";
import { withThe } from "./prove.ts";

const orElse = (place: string | undefined, otherwise: string): string => place ?? otherwise;
const bentMost = "the plug whose cord is bent most, then the other";

/** A lead on the bench: how it is plugged to be proved, what a load box is, and what to solder. */
export const proveBench = {
  titles: {
    ear: "Put it between gear that is known to be good.",
    return: "Out of the sound card, through the lead, and back in.",
    "load box": "Out of the sound card, through the lead, into the load box.",
    meter: "Unplug it at both ends.",
  },
  compare:
    "If you have one like it that is known to be good, plug that in first: what this one loses is told against it.",
  plugged: "It is plugged in",
  headphones: "Good headphones into the amplifier, L on the left ear.",
  goodLead: "A good lead into the socket of this one.",
  /** Which plug goes in: an end of the lead, one of its plugs, or that of the good lead. */
  plug: (letter: string, mark: string | undefined) =>
    mark === undefined ? letter : `The ${mark} plug of ${letter}`,
  thatLead: "That lead",
  fromPlayer: (plug: string, side: "left" | "right" | undefined) =>
    `${plug} into the ${side === undefined ? "headphone socket" : `${side} output`} of what plays.`,
  fromCard: (plug: string, side: "left" | "right" | undefined) =>
    `${plug} into the ${side === undefined ? "headphone socket" : `${side} output`} of the sound card.`,
  far: {
    ear: (plug: string, side: "left" | "right" | undefined) =>
      `${plug} into the ${side ?? "stereo"} input of a headphone amplifier.`,
    return: (plug: string, side: "left" | "right" | undefined) =>
      side === undefined
        ? `${plug} into the sound card's line inputs, tip to the first and ring to the second.`
        : `${plug} into the sound card's ${side} line input.`,
    "load box": (plug: string, side: "left" | "right" | undefined) =>
      `${plug} into the ${side === undefined ? "" : `${side} `}socket of the load box.`,
    meter: (plug: string) => `${plug} into nothing.`,
  },
  loadBox: {
    label: (signals: readonly string[], back: string) =>
      `From ${signals.join(" and from ")} a resistor of 33 ohms each to one point, that point on the ${back} alone; each resistor is read by a balanced input.`,
    hot: (input: number) => `input ${input}, hot`,
    cold: "cold",
    resistors: ([one = "", other]: readonly string[], sockets: number) =>
      `${sockets > 1 ? "Two sockets, each with: a" : "A"} resistor of 33 Ω, 1 %, from the ${one} to a point${other === undefined ? "" : `; another from the ${other} to the same point`}.`,
    point: (back: string) =>
      `That point on the ${back} of the socket and on nothing else: no case, no ground of an input.`,
    inputs: (signals: readonly string[]) =>
      `Each resistor on a balanced input of its own: hot on the ${signals.join(" or the ")}, cold on the point. The input's own ground stays on nothing.`,
    why: "An interface that feeds its own inputs has joined their grounds: without the box a lead whose return is lost measures as whole. With it the return is the only way back.",
    cautions: [
      "Solder it out of everything, in fresh air, with something before your eyes.",
      "Phantom power off at both inputs before anything is plugged in.",
      "Never at a loudspeaker's output: the resistors burn.",
    ],
  },
  /** Where on a lead a fault sits: after 'in' or 'at'. */
  place: {
    lead: "the lead",
    plug: (end: string) => `the plug at ${end}`,
    socket: (end: string) => `the socket at ${end}`,
  },
  noFault: "no fault of this lead goes with what was found",
  mend: {
    unlisted:
      "See that both its ends are plugged as they should be and that it is a lead of this kind, and check again. Contact by contact a multimeter shows what it is.",
    /** `where` is a plug, by `place`, or nobody can say. */
    exchanged: (moved: readonly { to: string; on: string; from: string }[], where?: string) =>
      `Resolder at ${orElse(where, "the end that is not soldered as drawn; open both and look")}: ${moved
        .map(({ to, on, from }) => `${to} hangs on ${on} and belongs on ${from}`)
        .join("; ")}.`,
    open: (one: string, other: string, joint: string, where?: string) =>
      `${capital(`${one} and ${other}`)} are not joined. Open ${orElse(where, bentMost)}: resolder ${withThe(joint)}, or cut the cord back a hand's width where it is broken inside.`,
    comesAndGoes: (one: string, other: string) =>
      `${capital(`${one} and ${other}`)} come and go. Bend a hand's width at a time to find where; mostly at the strain relief: cut the cord back and solder it anew.`,
    resistive: (one: string, other: string, ohms: string, joint: string, where?: string) =>
      `${capital(`${one} and ${other}`)} are joined through ${ohms}. Clean both contacts and read again; if it stays, resolder ${withThe(joint)} at ${orElse(where, "both ends")}.`,
    joined: (one: string, other: string, where?: string) =>
      `${capital(`${one} and ${other}`)} touch and should not. Open ${orElse(where, "both plugs")}: look for a strand of the screen, a bridge of solder, or molten plastic.`,
  },
};
