/** What looks like a fault and was ordered. */
export const wantedNames = [
  "mono is meant",
  "left ear alone is meant",
  "right ear alone is meant",
] as const;
