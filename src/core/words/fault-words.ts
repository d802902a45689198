import type { FaultWords } from "./language.ts";

/** What is said of a fault; `@` stands for where it is. */
export const words = (is: string, seen: string, mend: string): FaultWords => ({
  is: (where) => is.replace("@", where),
  seen,
  mend: (where) => mend.replace("@", where),
});

/** For what only another part mends. */
export const replace = "replace @; mend it at the bench, not at soundcheck";
