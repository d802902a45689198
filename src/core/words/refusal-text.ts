import type { NotMeasured } from "#core/measurement/return.ts";
import type { Language } from "./language.ts";

/** Why a capture is not judged, in words. */
export const refusalText = (
  { refusals }: Language,
  { refused, measured, bound }: NotMeasured,
): string => refusals[refused](measured, bound);
