import { monoAdapter, sizeAdapter, stereoToMonoAdapter } from "./adapters.ts";
import { headphoneAmplifier } from "./amplifier.ts";
import { beltPack } from "./belt-pack.ts";
import { mixingConsole } from "./console.ts";
import { linkSender, stageBox } from "./digital-link.ts";
import { headphones } from "./headphones.ts";
import { headset } from "./headset.ts";
import { headsetAdapter, headsetSplitter } from "./headset-adapters.ts";
import { inEars } from "./in-ears.ts";
import { insertY, insertYRingsUnused, insertYRingToSleeve, trsToTwoRca } from "./insert-y.ts";
import { instrument } from "./instrument.ts";
import type { Kind } from "./kind.ts";
import { laptop } from "./laptop.ts";
import {
  extensionLead,
  monoSumLead,
  oneToBoth,
  oneToBothRingUnused,
  oneToRight,
  rcaPairLead,
  trsLead,
  tsLead,
  twoTsToTwoRca,
  twoXlrToTrsLead,
  twoXlrToTrsLeadColdGrounded,
  xlrLead,
  xlrToBoth,
  xlrToTrsLead,
} from "./leads.ts";
import { lineInputs } from "./line-inputs.ts";
import { loadBox } from "./load-box.ts";
import { loudspeakerAmplifier } from "./loudspeaker-amplifier.ts";
import { mixer } from "./mixer.ts";
import { patchbay } from "./patchbay.ts";
import { client, listener, operator } from "./people.ts";
import { personalMixer } from "./personal-mixer.ts";
import { phone } from "./phone.ts";
import { player } from "./player.ts";
import { processor } from "./processor.ts";
import { soundInterface } from "./sound-interface.ts";
import { splitter } from "./splitter.ts";
import { transmitter } from "./transmitter.ts";
import { volumeWheel } from "./volume-wheel.ts";
import { wirelessHeadset } from "./wireless-headset.ts";

/** Every kind of part, written by hand: one line adds one. */
const kinds = {
  laptop,
  phone,
  "sound interface": soundInterface,
  player,
  instrument,
  mixer,
  console: mixingConsole,
  processor,
  transmitter,
  "belt pack": beltPack,
  "link sender": linkSender,
  "stage box": stageBox,
  "personal mixer": personalMixer,
  "loudspeaker amplifier": loudspeakerAmplifier,
  "wireless headset": wirelessHeadset,
  "TRS lead": trsLead,
  "TS lead": tsLead,
  "insert Y": insertY,
  "insert Y with TRS plugs, rings unused": insertYRingsUnused,
  "insert Y with TRS plugs, ring to sleeve": insertYRingToSleeve,
  "one-to-both lead": oneToBoth,
  "one-to-both lead with TRS plug, ring unused": oneToBothRingUnused,
  "one-to-right lead": oneToRight,
  "mono sum lead": monoSumLead,
  "RCA pair lead": rcaPairLead,
  "TRS to two RCA lead": trsToTwoRca,
  "two TS to two RCA lead": twoTsToTwoRca,
  "XLR lead": xlrLead,
  "XLR to TRS lead": xlrToTrsLead,
  "two XLR to TRS lead, pin 3 unused": twoXlrToTrsLead,
  "two XLR to TRS lead, pin 3 to pin 1": twoXlrToTrsLeadColdGrounded,
  "XLR to both ears lead": xlrToBoth,
  "TRS extension lead": extensionLead,
  "size adapter": sizeAdapter,
  "headset adapter": headsetAdapter,
  "headset splitter": headsetSplitter,
  "mono adapter": monoAdapter,
  "stereo-to-mono adapter": stereoToMonoAdapter,
  splitter,
  "in-line volume wheel": volumeWheel,
  patchbay,
  "headphone amplifier": headphoneAmplifier,
  headphones,
  headset,
  "in-ears": inEars,
  "line inputs": lineInputs,
  "load box": loadBox,
  listener,
  operator,
  client,
};

export type PartKind = keyof typeof kinds;
export const catalogue: Readonly<Record<PartKind, Kind>> = kinds;
