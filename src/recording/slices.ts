/** A file that is read a piece at a time, whatever it lies on. */
export interface Slices {
  /** Bytes. */
  readonly size: number;
  /** The bytes from one place up to another: fewer where the file ends before. Rejects where it can be read no more. */
  readonly read: (from: number, to: number) => Promise<Uint8Array>;
}

/** The same bytes to be taken apart; nothing where the file cannot be read there. */
export async function viewOf(
  slices: Slices,
  from: number,
  length: number,
): Promise<DataView | undefined> {
  try {
    const bytes = await slices.read(from, Math.min(from + length, slices.size));
    return new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  } catch {
    return undefined;
  }
}

/** Four characters of a file, or fewer where it ends; a byte above 127 becomes some other character. */
export const fourAt = (view: DataView, at: number): string =>
  String.fromCharCode(
    ...new Uint8Array(view.buffer, view.byteOffset, view.byteLength).subarray(at, at + 4),
  );
