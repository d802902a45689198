/** A state of one knot of a tree: so many faults, so likely beforehand, behaving so. Behaviours are numbers; `Join` combines them. */
export interface State {
  readonly faults: number;
  readonly weight: number;
  readonly behaviour: number;
}

/** What a behaviour above and one below make together. */
export type Join = (above: number, below: number) => number;

/**
 * A knot of a tree whose branches are independent once what is above them is known. A knot with nothing below it may have
 * evidence: the likelihood of what was seen there, for the behaviour of the whole way.
 */
export interface Knot {
  readonly states: readonly State[];
  readonly below: readonly Knot[];
  /** Of a behaviour that is several in one, what goes to a knot below; left out where all below get the same. */
  readonly towards?: (whole: number, child: number) => number;
  readonly likelihood?: (behaviour: number) => number;
  /** One behaviour of the whole way that stands for all that are answered like it. */
  readonly standFor?: (behaviour: number) => number;
}
