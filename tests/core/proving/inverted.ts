import type { MeasuredGains } from "#core/checks/finding.ts";

/** A matrix as it counts against a healthy one, both of real gains: the inverse of that times its own. */
export function inverted(healthy: MeasuredGains, own: MeasuredGains): MeasuredGains {
  const [p, q, r, s] = healthy.map(([re]) => re) as [number, number, number, number];
  const [a, b, c, d] = own.map(([re]) => re) as [number, number, number, number];
  const by = p * s - q * r;
  return [
    [(s * a - q * c) / by, 0],
    [(s * b - q * d) / by, 0],
    [(p * c - r * a) / by, 0],
    [(p * d - r * b) / by, 0],
  ];
}
