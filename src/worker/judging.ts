import type { Capture } from "#core/measurement/capture.ts";
import type { NotMeasured, ReturnMeasurement } from "#core/measurement/return.ts";

/** Measures a capture of the multitone. Rejects where what measures did not load or ran out of memory. */
export type Judging = (capture: Capture) => Promise<ReturnMeasurement | NotMeasured>;

/** The real one: in a worker, so that the page stays quick. It takes half a second or so, and is not stopped. */
export const judging: Judging = (capture) => {
  const worker = new Worker(new URL("./measure-worker.ts", import.meta.url), { type: "module" });
  const measured = new Promise<ReturnMeasurement | NotMeasured>((resolve, reject) => {
    const fail = () => reject(new Error("the worker did not run"));
    worker.onerror = fail;
    worker.onmessageerror = fail;
    worker.onmessage = ({ data }: MessageEvent<ReturnMeasurement | NotMeasured>) => resolve(data);
  });
  worker.postMessage(capture);
  return measured.finally(() => worker.terminate());
};
