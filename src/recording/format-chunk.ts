import type { Hertz } from "#core/units/units.ts";
import { type Trouble, troubled } from "./trouble.ts";

/** How one sample is written, little-endian. */
export const codings = [
  "unsigned 8",
  "signed 16",
  "signed 24",
  "signed 32",
  "float 32",
  "float 64",
] as const;
export type Coding = (typeof codings)[number];

/** What a format chunk says. */
export interface Format {
  readonly coding: Coding;
  /** 1 to 8. */
  readonly channels: number;
  readonly rate: Hertz;
  /** Bytes of one sample of all channels. */
  readonly frame: number;
}

const most = 8;
const extensible = 0xff_fe;

/** Names of codes that are no plain samples (RFC 2361). */
const compressed: Readonly<Record<number, string>> = {
  2: "ADPCM",
  6: "A-law",
  7: "µ-law",
  17: "IMA ADPCM",
  49: "GSM 6.10",
  80: "MPEG",
  85: "MP3",
  255: "AAC",
  353: "WMA",
};

/** What follows the code in the GUIDs of WAVE_FORMAT_EXTENSIBLE: plain, and of Ambisonic B-format. Values from memory; files of sox and ffmpeg agree with the first. */
const guids = ["000000001000800000aa00389b71", "00002107d3118644c8c1ca000000"];

const hex = (view: DataView, from: number, to: number): string =>
  Array.from({ length: to - from }, (_, at) =>
    view
      .getUint8(from + at)
      .toString(16)
      .padStart(2, "0"),
  ).join("");

const tooShort = ({ byteLength }: DataView): Trouble => ({
  trouble: "format too short",
  found: { bytes: byteLength },
});

/** Which code a format has, looked up behind the general one where it has that. */
function codeOf(view: DataView): number | Trouble {
  const code = view.getUint16(0, true);
  if (code !== extensible) return code;
  if (view.byteLength < 40) return tooShort(view);
  const guid = hex(view, 26, 40);
  return guids.includes(guid)
    ? view.getUint16(24, true)
    : { trouble: "compressed", found: { format: hex(view, 24, 40) } };
}

/** Samples of fewer bits than their bytes hold stand at the upper end of them, so the bytes are all that matters. */
function codingOf(code: number, bits: number): Coding | Trouble {
  if (code === 3) {
    const float = codings.find((one) => one === `float ${bits}`);
    return float ?? { trouble: "bits", found: { bits, float: true } };
  }
  if (code !== 1) {
    const name = compressed[code];
    return { trouble: "compressed", found: name === undefined ? { format: code } : { name } };
  }
  const whole: readonly Coding[] = ["unsigned 8", "signed 16", "signed 24", "signed 32"];
  return whole[Math.ceil(bits / 8) - 1] ?? { trouble: "bits", found: { bits, float: false } };
}

/**
 * Reads a format chunk: Multimedia Programming Interface and Data Specifications 1.0 (1991), and WAVE_FORMAT_EXTENSIBLE. Its mean
 * bytes in a second are not looked at: many programs write them wrong, and nothing needs them.
 */
export function formatOf(view: DataView): Format | Trouble {
  if (view.byteLength < 16) return tooShort(view);
  const code = codeOf(view);
  if (typeof code !== "number") return code;
  const bits = view.getUint16(14, true);
  const coding = codingOf(code, bits);
  if (typeof coding !== "string") return coding;
  return shaped(coding, Math.ceil(bits / 8), view);
}

function shaped(coding: Coding, bytes: number, view: DataView): Format | Trouble {
  const [channels, rate, frame] = [
    view.getUint16(2, true),
    view.getUint32(4, true),
    view.getUint16(12, true),
  ];
  if (channels === 0) return troubled("no channels");
  if (channels > most) return { trouble: "too many channels", found: { channels } };
  if (rate === 0) return troubled("no rate");
  if (frame !== channels * bytes)
    return { trouble: "frame size", found: { is: frame, should: channels * bytes } };
  return { coding, channels, rate, frame };
}
