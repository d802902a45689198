/** What breaks or wears out inside a box and its sockets. */
export const boxNames = [
  "left side of the output dead",
  "right side of the output dead",
  "output dead",
  "left side of the input dead",
  "right side of the input dead",
  "return spring of the socket worn",
  "normal does not close",
  "normal does not open",
  "volume knob uneven, left weaker",
  "volume knob uneven, right weaker",
  "battery flat",
] as const;
