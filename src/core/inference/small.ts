/** A test as the planner sees it: one column for each answer it tells apart, with a likelihood for each hypothesis. */
export interface SmallTest {
  readonly at: number;
  readonly seconds: number;
  readonly columns: readonly Float64Array[];
}

/** A repair as the planner sees it. Where nothing needs mending, hearing afterwards says so: the share is 1. */
export interface SmallRepair {
  readonly at: number;
  readonly seconds: number;
  readonly cures: Float64Array;
}

/** A problem without what makes no difference; `at` is the place in the problem as it came. */
export interface Small {
  /** They sum to one, the likeliest first. */
  readonly weights: Float64Array;
  /** 1 where something is wrong, 0 where nothing needs mending. */
  readonly wrong: Float64Array;
  readonly tests: readonly SmallTest[];
  readonly repairs: readonly SmallRepair[];
}
