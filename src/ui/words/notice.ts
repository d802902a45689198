/** What went wrong with what is kept, or with the program itself. */
export type Notice =
  | "dropped"
  | "mended"
  | "not kept"
  | "full"
  | "failed"
  | "blocked"
  | "newer"
  | "taken"
  | "late"
  | "not worked out"
  | "not loaded";
