/** A browser that has not begun within this time is not going to; milliseconds. */
export const patience = 2000;

/** A context of the browser or of the library. */
interface Resumable {
  readonly state: string;
  readonly resume: () => Promise<void>;
}

/** Whether a context runs, after having been asked to. */
export async function runs(context: Resumable): Promise<boolean> {
  if (context.state !== "running") {
    const late = new Promise((resolve) => setTimeout(resolve, patience));
    await Promise.race([context.resume().catch(() => undefined), late]);
  }
  return context.state === "running";
}
