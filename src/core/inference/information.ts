/** A hypothesis: how likely it is, and one probability for each answer to what might be asked. */
export interface Prospect {
  readonly probability: number;
  readonly answers: Float64Array;
}

/** −p·log2 p, zero at zero. */
const surprise = (p: number): number => (p > 0 ? -p * Math.log2(p) : 0);

/** Shannon's entropy in bits. */
export const entropy = (chances: Iterable<number>): number => {
  let sum = 0;
  for (const p of chances) sum += surprise(p);
  return sum;
};

/** How likely each answer is, over all hypotheses. Probabilities need not sum to one; they are taken in proportion. */
export function expected(prospects: readonly Prospect[]): Float64Array {
  const all = prospects.reduce((sum, { probability }) => sum + probability, 0);
  const sum = new Float64Array(prospects[0]?.answers.length ?? 0);
  for (const { probability, answers } of prospects)
    for (let at = 0; at < sum.length; at++)
      sum[at] = (sum[at] ?? 0) + (probability / all) * (answers[at] ?? 0);
  return sum;
}

/** How many bits an answer tells about which hypothesis holds: their mutual information. */
export function information(prospects: readonly Prospect[]): number {
  const all = prospects.reduce((sum, { probability }) => sum + probability, 0);
  if (all === 0) return 0;
  const noise = prospects.reduce(
    (sum, { probability, answers }) => sum + (probability / all) * entropy(answers),
    0,
  );
  return Math.max(0, entropy(expected(prospects)) - noise);
}

/** Two questions answered independently, as one with an answer for each pair. */
export function both(first: Float64Array, second: Float64Array): Float64Array {
  const pairs = new Float64Array(first.length * second.length);
  for (const [row, p] of first.entries())
    for (const [column, q] of second.entries()) pairs[row * second.length + column] = p * q;
  return pairs;
}
