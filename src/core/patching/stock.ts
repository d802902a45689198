import type { PartKind } from "#core/parts/catalogue.ts";

/** What a music shop has on the wall; anything else is soldered or ordered. Common practice, no source. */
export const offTheShelf: readonly PartKind[] = [
  "TRS lead",
  "TS lead",
  "insert Y",
  "RCA pair lead",
  "TRS to two RCA lead",
  "two TS to two RCA lead",
  "XLR lead",
  "XLR to TRS lead",
  "two XLR to TRS lead, pin 3 to pin 1",
  "TRS extension lead",
  "size adapter",
  "mono adapter",
  "headset adapter",
  "headset splitter",
  "splitter",
  "in-line volume wheel",
];
