/** From nothing to one along a raised cosine of some length; before it nothing, after it one. */
export function raised(past: number, length: number): number {
  if (past >= length) return 1;
  return past <= 0 ? 0 : Math.sin((Math.PI * past) / (2 * length)) ** 2;
}
