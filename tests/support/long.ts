/** Whether the long forms were asked for: `npm run soak:long`. */
export const long = process.env.LONG === "all";

/** One of so many, evenly; in the long form all. */
export const everyOther = <One>(some: readonly One[], one: number): readonly One[] =>
  long ? some : some.filter((_, at) => at % one === 0);
