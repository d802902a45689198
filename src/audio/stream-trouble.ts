import type { RecorderTrouble } from "./recorder.ts";
import type { Device } from "./route.ts";

/** What it means that an input was not given, by what was thrown; `device` is the one that was chosen. */
export function troubleOf(error: unknown, device?: Device): RecorderTrouble {
  const { name } = (error ?? {}) as { readonly name?: string };
  switch (name) {
    case "NotAllowedError":
    case "SecurityError":
      return "not allowed";
    case "NotFoundError":
    case "OverconstrainedError":
      return device ? "gone" : "no input";
    case "NotReadableError":
    case "AbortError":
      return "busy";
    default:
      return "cannot record";
  }
}
