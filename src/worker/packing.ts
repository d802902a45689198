import type { Capture } from "#core/measurement/capture.ts";
import type { Hertz } from "#core/units/units.ts";

/** What the worker tells: how far it is, from 0 to 1, and at the end the file. */
export type Told = { readonly share: number } | { readonly file: Uint8Array<ArrayBuffer> };

/** A file in the making. */
export interface Making {
  /** The file; undefined when it was stopped. Rejects where the worker did not load or ran out of memory. */
  readonly file: Promise<Blob | undefined>;
  readonly stop: () => void;
}

/** All sounds at a rate, and the sheet that goes with them. */
export interface Pack {
  readonly rate: Hertz;
  readonly sheet: string;
}

/** Makes the pack of all sounds, a ZIP file, or of a capture a WAV file; tells how far it is. */
export type Packing = (what: Pack | Capture, onShare: (share: number) => void) => Making;

const zip = "application/zip";
const wav = "audio/wav";

/** The real one: in a worker, so that the page stays quick, ended at once when it is stopped. */
export const packing: Packing = (what, onShare) => {
  const worker = new Worker(new URL("./pack-worker.ts", import.meta.url), { type: "module" });
  let stop = () => {};
  const file = new Promise<Blob | undefined>((resolve, reject) => {
    stop = () => resolve(undefined);
    worker.onerror = () => reject(new Error("the worker did not run"));
    worker.onmessage = ({ data }: MessageEvent<Told>) => {
      if ("share" in data) onShare(data.share);
      else resolve(new Blob([data.file], { type: "sheet" in what ? zip : wav }));
    };
  });
  worker.postMessage(what);
  return { file: file.finally(() => worker.terminate()), stop: () => stop() };
};
