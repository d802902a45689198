import type { Analysis } from "#recording/analyse.ts";

/** What the worker tells: how far it is, from 0 to 1, and at the end what was made of the recording. */
export type Told = { readonly share: number } | { readonly analysis: Analysis };

/** A recording that is being measured. */
export interface Working {
  /** What was made of it; undefined when it was stopped. Rejects where the worker did not load or ran out of memory. */
  readonly analysis: Promise<Analysis | undefined>;
  readonly stop: () => void;
}

/** Measures a recording out of a file, which stays where it is, and tells how far it is. */
export type Measuring = (file: Blob, onShare: (share: number) => void) => Working;

/** The real one: in a worker, so that the page stays quick, ended at once when it is stopped. */
export const measuring: Measuring = (file, onShare) => {
  const worker = new Worker(new URL("./measure-worker.ts", import.meta.url), { type: "module" });
  let stop = () => {};
  const analysis = new Promise<Analysis | undefined>((resolve, reject) => {
    stop = () => resolve(undefined);
    const fail = () => reject(new Error("the worker did not run"));
    worker.onerror = fail;
    worker.onmessageerror = fail;
    worker.onmessage = ({ data }: MessageEvent<Told>) => {
      if ("share" in data) onShare(data.share);
      else resolve(data.analysis);
    };
  });
  worker.postMessage(file);
  return { analysis: analysis.finally(() => worker.terminate()), stop: () => stop() };
};
