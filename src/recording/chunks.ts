import { fourAt, type Slices, viewOf } from "./slices.ts";
import { type Trouble, troubled } from "./trouble.ts";

/** A piece of a WAV file. */
export interface Chunk {
  readonly name: string;
  /** Its first byte, after name and size. */
  readonly from: number;
  /** Bytes that it claims; undefined where whoever wrote it never came back to say. */
  readonly size: number | undefined;
}

/** Sizes of more than 32 bits, each with the name of its chunk; in the order of the file where several share one. */
type Sizes = readonly (readonly [name: string, size: number])[];

/** So many chunks are looked at: no program writes nearly so many, and a file of nothing but empty ones must end. */
const mostChunks = 1000;
/** So many sizes of a table, for the same reason. */
const mostSizes = 64;
/** Instead of a size: it is in 'ds64', or was never written. */
const elsewhere = 0xff_ff_ff_ff;
const headBytes = 8;
const tableAt = 28;
const rowBytes = 12;

const size64 = (view: DataView, at: number): number =>
  view.getUint32(at, true) + 2 ** 32 * view.getUint32(at + 4, true);

/** What a 'ds64' chunk says (EBU Tech 3306, annex A): sizes of the whole and of 'data', a count of samples, then a table for other chunks. */
function sizesOf(view: DataView): Sizes {
  if (view.byteLength < 16) return [];
  const claimed = view.byteLength < tableAt ? 0 : view.getUint32(24, true);
  const rows = Math.min(claimed, mostSizes, Math.floor((view.byteLength - tableAt) / rowBytes));
  return [
    ["data", size64(view, 8)],
    ...Array.from({ length: Math.max(0, rows) }, (_, row): Sizes[number] => {
      const at = tableAt + rowBytes * row;
      return [fourAt(view, at), size64(view, at + 4)];
    }),
  ];
}

const isName = (view: DataView, at: number): boolean => /^[\x20-\x7e]{4}$/.test(fourAt(view, at));

/** Where in some bytes a chunk begins: after an odd size comes a zero, which some programs leave out. Nothing where none does. */
function beginning(view: DataView, odd: boolean): number | undefined {
  const spared = odd && view.byteLength > 0 && view.getUint8(0) !== 0 && isName(view, 0);
  const at = odd && !spared ? 1 : 0;
  return view.byteLength >= at + headBytes && isName(view, at) ? at : undefined;
}

/**
 * One chunk after the other; what is inside is left to whoever needs it. Ends at the end of the file, or where no chunk begins, or
 * after one that does not say how long it is; tells of what cannot be read.
 */
export async function* chunksOf(slices: Slices): AsyncGenerator<Chunk, Trouble | undefined, void> {
  let at = 12;
  let odd = false;
  let sizes: Sizes = [];
  for (let count = 0; count < mostChunks && at < slices.size; count += 1) {
    const view = await viewOf(slices, at, headBytes + 1);
    if (view === undefined) return troubled("cannot be read");
    const begins = beginning(view, odd);
    if (begins === undefined) return undefined;
    const chunk = chunkOf(view, begins, at, sizes);
    yield chunk;
    if (chunk.size === undefined) return undefined;
    sizes = await sizesAfter(slices, chunk, sizes);
    odd = chunk.size % 2 === 1;
    at = chunk.from + chunk.size;
  }
  return undefined;
}

function chunkOf(view: DataView, begins: number, at: number, sizes: Sizes): Chunk {
  const name = fourAt(view, begins);
  const claimed = view.getUint32(begins + 4, true);
  const size = claimed === elsewhere ? sizes.find(([of]) => of === name)?.[1] : claimed;
  return { name, from: at + begins + headBytes, size };
}

/** The sizes still to come after a chunk: those that a 'ds64' says, without what the chunk took. */
async function sizesAfter(
  slices: Slices,
  { name, from, size = 0 }: Chunk,
  sizes: Sizes,
): Promise<Sizes> {
  if (name === "ds64") {
    const view = await viewOf(slices, from, Math.min(size, tableAt + rowBytes * mostSizes));
    return view === undefined ? [] : sizesOf(view);
  }
  const taken = sizes.findIndex(([of, one]) => of === name && one === size);
  return sizes.filter((_, at) => at !== taken);
}
