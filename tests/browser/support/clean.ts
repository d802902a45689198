import axe from "axe-core";
import { expect } from "vitest";

/** Holds what is on the page to the accessibility rules, and to the width of the window. */
export async function clean(screen: string): Promise<void> {
  await Promise.all(document.getAnimations().map((one) => one.finish?.()));
  const { violations } = await axe.run(document.body);
  const found = violations.map(
    ({ id, nodes }) => `${id}: ${nodes.map((node) => node.html).join(" ")}`,
  );
  expect(found, screen).toEqual([]);
  const { scrollWidth } = document.documentElement;
  expect(scrollWidth, `${screen} is wider than the window`).toBeLessThanOrEqual(innerWidth);
}
