/** What went wrong with what is kept, or with the program itself. */
export type Notice = "dropped" | "not kept" | "not worked out" | "not loaded";
