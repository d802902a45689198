import { type Chunk, chunksOf } from "./chunks.ts";
import { type Format, formatOf } from "./format-chunk.ts";
import { containerOf } from "./kinds.ts";
import { type Slices, viewOf } from "./slices.ts";
import { type Oddity, type Trouble, troubled } from "./trouble.ts";

/** Where the samples of a WAV file are, and how they are written. */
export interface Layout extends Format {
  readonly container: "RIFF" | "RF64";
  /** The first byte of the first sample. */
  readonly from: number;
  /** Samples a channel. */
  readonly frames: number;
  readonly odd: readonly Oddity[];
}

/** Enough of a format chunk: WAVE_FORMAT_EXTENSIBLE has forty bytes. */
const formatBytes = 40;
/** Enough of the beginning to know other kinds of file by. */
const headBytes = 512;

/** Bytes of the shortest file that has samples: three heads and a format. */
const wholeHead = 44;

interface Parts {
  readonly format?: Format;
  readonly data?: Chunk;
  /** The file ends within a chunk, or before its name and size. */
  readonly over: boolean;
}

/** Reads where the samples are: some dozens of bytes, wherever in the file they lie. What is wrong is a value, never thrown. */
export async function layoutOf(slices: Slices): Promise<Layout | Trouble> {
  const head = await viewOf(slices, 0, headBytes);
  if (head === undefined) return troubled("cannot be read");
  const container = containerOf(head);
  if (typeof container !== "string") return container;
  const parts = await partsOf(slices);
  if ("trouble" in parts) return parts;
  const { format, data, over } = parts;
  if (over && data === undefined) return troubled("header cut off");
  if (format === undefined) return troubled("no format");
  if (data === undefined) return troubled("no data");
  const complete = Math.abs(head.getUint32(4, true) + 8 - slices.size) <= 1;
  return laidOut(container, format, data.from, extent(data, slices.size - data.from, complete));
}

function laidOut(
  container: Layout["container"],
  format: Format,
  from: number,
  { bytes, odd }: Extent,
): Layout | Trouble {
  const frames = Math.floor(bytes / format.frame);
  if (frames === 0) return troubled("no samples");
  const part: readonly Oddity[] = bytes % format.frame === 0 ? [] : ["part of a frame"];
  return { ...format, container, from, frames, odd: [...odd, ...part] };
}

async function partsOf(slices: Slices): Promise<Parts | Trouble> {
  const chunks = chunksOf(slices);
  let parts: Parts = { over: slices.size < wholeHead };
  while (parts.format === undefined || parts.data === undefined) {
    const { done, value } = await chunks.next();
    if (done) return value ?? parts;
    const more = await taken(slices, parts, value);
    if ("trouble" in more) return more;
    parts = { ...more, over: parts.over || value.from + (value.size ?? 0) > slices.size };
  }
  return parts;
}

/** Of each kind the first counts. */
async function taken(slices: Slices, parts: Parts, chunk: Chunk): Promise<Parts | Trouble> {
  if (chunk.name === "data") return { data: chunk, ...parts };
  if (chunk.name !== "fmt " || parts.format !== undefined) return parts;
  const view = await viewOf(slices, chunk.from, Math.min(chunk.size ?? 0, formatBytes));
  if (view === undefined) return troubled("cannot be read");
  if (chunk.from + (chunk.size ?? 0) > slices.size) return troubled("header cut off");
  const format = formatOf(view);
  return "trouble" in format ? format : { ...parts, format };
}

interface Extent {
  readonly bytes: number;
  readonly odd: readonly Oddity[];
}

/**
 * How many bytes of samples there are. A program that was cut off leaves a size of nothing or of all ones, or one for a sound
 * that never came: then they go on to the end of the file. Nothing is meant where the whole file is as long as it says.
 */
function extent({ size }: Chunk, there: number, complete: boolean): Extent {
  if (size === undefined || (size === 0 && !complete))
    return { bytes: there, odd: ["length not written"] };
  return size > there ? { bytes: there, odd: ["cut off"] } : { bytes: size, odd: [] };
}
