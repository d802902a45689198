import type { IAudioBuffer, IOfflineAudioContext } from "standardized-audio-context";
import { longestOwn, type OwnSound, type OwnTrouble, ownSound } from "#core/hearing/own-sound.ts";
import type { Hertz } from "#core/units/units.ts";

/** Why a file cannot be heard; each has its words in the ui. */
export type FileTrouble =
  | OwnTrouble
  /** Over 200 MB; it was not read. */
  | "too big"
  /** It cannot be read any more, or may not be. */
  | "unreadable"
  /** The browser finds no sound in it that it knows. */
  | "not a sound"
  /** What decodes could not be fetched. */
  | "not loaded";

export interface NoFile {
  readonly refused: FileTrouble;
}

/** Fetches the file that makes contexts. */
export type LoadOffline = () => Promise<{
  readonly newOfflineContext: (rate: Hertz) => IOfflineAudioContext;
}>;

/** Bytes. */
const most = 200_000_000;
/** Bytes decoded first; four times as many as long as they do not hold the first minute. */
const firstPiece = 4_000_000;

/**
 * A file of the listener's own as a sound to be auditioned at a sampling rate in hertz (`Player.rate`), or why not. Nothing
 * leaves the page. Only as much of it is decoded as the first minute needs, since an hour decoded does not fit a phone.
 */
export async function decode(
  file: Blob,
  rate: Hertz,
  load: LoadOffline = () => import("./new-offline-context.ts"),
): Promise<OwnSound | NoFile> {
  if (file.size > most) return { refused: "too big" };
  if (file.size === 0) return { refused: "not a sound" }; // WebKit would never have done with it
  const library = await load().catch(() => undefined);
  if (library === undefined) return { refused: "not loaded" };
  const buffer = await beginningOf(file, () => library.newOfflineContext(rate));
  return typeof buffer === "string" ? { refused: buffer } : ownSound(channelsOf(buffer), rate);
}

/** The first minute of a file and what comes with it, or why not. */
async function beginningOf(
  file: Blob,
  newContext: () => IOfflineAudioContext,
): Promise<IAudioBuffer | "unreadable" | "not a sound"> {
  for (let bytes = firstPiece; ; bytes *= 4) {
    const whole = bytes >= file.size;
    const piece = await bytesOf(file.slice(0, bytes));
    if (piece === undefined) return "unreadable";
    const buffer = await decoded(piece, newContext());
    if (buffer && (whole || buffer.duration > longestOwn + 1)) return buffer;
    if (whole) return "not a sound";
  }
}

const bytesOf = (piece: Blob): Promise<ArrayBuffer | undefined> =>
  piece.arrayBuffer().catch(() => undefined);

const decoded = (
  bytes: ArrayBuffer,
  context: IOfflineAudioContext,
): Promise<IAudioBuffer | undefined> => context.decodeAudioData(bytes).catch(() => undefined);

const channelsOf = (buffer: IAudioBuffer): Float32Array[] =>
  Array.from({ length: buffer.numberOfChannels }, (_, channel) => buffer.getChannelData(channel));
