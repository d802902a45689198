import type { Work } from "#core/hearing/work.ts";

/** Milliseconds of work between two moments in which a press is answered. */
const slice = 10;

/** The result of a work, done between frames; nothing where it was stopped. `onProgress` hears from 0 to 1 how much is done. */
export async function prepared<T>(
  work: Work<T>,
  stop: AbortSignal,
  onProgress: (done: number) => void,
): Promise<T | undefined> {
  let until = performance.now() + slice;
  for (let step = work.next(); !stop.aborted; step = work.next()) {
    if (step.done) return step.value;
    if (performance.now() < until) continue;
    onProgress(step.value);
    await new Promise((resolve) => setTimeout(resolve));
    until = performance.now() + slice;
  }
  return undefined;
}
