import { fourAt } from "./slices.ts";
import { type OtherKind, type Trouble, troubled } from "./trouble.ts";

/** How other files begin, and at which byte: each by its own published format. */
const beginnings: readonly (readonly [at: number, mark: string, kind: OtherKind])[] = [
  [0, "FORM", ["AIFF"]],
  [0, "ID3", ["MP3"]],
  [0, "PK\x03\x04", ["ZIP"]],
  [0, "PK\x05\x06", ["ZIP"]],
  [0, "\x1f\x8b", ["gzip"]],
  [0, "7z\xbc\xaf", ["7z"]],
  [0, "fLaC", ["FLAC"]],
  [0, "OggS", ["Ogg"]],
  [4, "ftyp", ["MP4", "M4A"]],
  [0, "\x1aE\xdf\xa3", ["WebM", "Matroska"]],
  [0, "caff", ["CAF"]],
  [0, ".snd", ["AU"]],
  [0, "riff", ["Wave64"]],
  [0, "wvpk", ["WavPack"]],
  [0, "MAC ", ["APE"]],
  [0, "0&\xb2\x75", ["WMA"]],
  [0, "#!AM", ["AMR"]],
  [0, "%PDF", ["PDF"]],
  [0, "\x89PNG", ["PNG"]],
  [0, "\xff\xd8\xff", ["JPEG"]],
  [0, "\xff\xfe", "UTF-16 text"],
];

/** A frame of MPEG audio begins with eleven ones and says a layer (ISO/IEC 11172-3), or none (AAC in ADTS). */
function mpeg(view: DataView): OtherKind | undefined {
  const [mark, next] = view.byteLength < 3 ? [0, 0] : [view.getUint16(0), view.getUint8(2)];
  if ((mark & 0xff_f6) === 0xff_f0) return ["AAC"];
  return (mark & 0xff_e0) === 0xff_e0 && (mark & 6) !== 0 && next < 0xf0 ? ["MP3"] : undefined;
}

const plain = (byte: number): boolean => (byte >= 32 && byte < 127) || (byte >= 9 && byte <= 13);

/** What a file is that is no WAV, by how it begins. */
function otherKind(view: DataView): Trouble {
  const bytes = new Uint8Array(view.buffer, view.byteOffset, view.byteLength);
  const begins = String.fromCharCode(...bytes.subarray(0, 16));
  const [, , kind] = beginnings.find(([at, mark]) => begins.startsWith(mark, at)) ?? [];
  const known = kind ?? mpeg(view) ?? (bytes.every(plain) ? "text" : undefined);
  return known === undefined ? troubled("unknown kind") : { trouble: "other kind", found: known };
}

/** The three names under which a WAV goes (RF64: EBU Tech 3306; BW64: ITU-R BS.2088, laid out alike), or why it is none. */
export function containerOf(view: DataView): "RIFF" | "RF64" | Trouble {
  if (view.byteLength === 0) return troubled("empty");
  const [name, form] = [fourAt(view, 0), fourAt(view, 8)];
  if (name === "RIFX") return troubled("big-endian");
  if (name !== "RIFF" && name !== "RF64" && name !== "BW64") return otherKind(view);
  if (form.length < 4) return troubled("header cut off");
  if (form !== "WAVE")
    return { trouble: "other RIFF", found: /^[\w ]{4}$/.test(form) ? form.trim() : undefined };
  return name === "RIFF" ? "RIFF" : "RF64";
}
