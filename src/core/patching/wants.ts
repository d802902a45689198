import type { Sounds } from "./prediction.ts";

/** What somebody may want in their headphones. */
export const wants = [
  "stereo",
  "mono in both ears",
  "an own mix",
  "left ear only",
  "right ear only",
] as const;
export type Want = (typeof wants)[number];

/** Whether a patch gives what is wanted. A feed for one ear may be half of the programme or all of it. */
export function gives({ effect, ties }: Sounds, want: Want): boolean {
  switch (want) {
    case "stereo":
      return effect === "straight";
    case "mono in both ears":
      return effect === "mono";
    case "an own mix":
      return ties.includes("own mix") && (effect === "straight" || effect === "mono");
    case "left ear only":
      return effect === "all in the left ear" || effect === "right gone";
    case "right ear only":
      return effect === "all in the right ear" || effect === "left gone";
  }
}
