import axe from "axe-core";
import { expect } from "vitest";

/** Holds what is on the page to the accessibility rules, in every theme to those of colour, and to the width of the window. */
export async function clean(screen: string): Promise<void> {
  await Promise.all(document.getAnimations().map((one) => one.finish?.()));
  const { violations } = await axe.run(document.body);
  expect(told(violations), screen).toEqual([]);
  for (const theme of ["light", "red lamp", "dark"])
    expect(await ill(theme), `${screen}, ${theme}`).toEqual([]);
  const { scrollWidth } = document.documentElement;
  expect(scrollWidth, `${screen} is wider than the window`).toBeLessThanOrEqual(innerWidth);
}

const told = (violations: readonly axe.Result[]): readonly string[] =>
  violations.map(({ id, nodes }) => `${id}: ${nodes.map((node) => node.html).join(" ")}`);

/** What cannot be read in a theme; the page itself is left in its own. */
export async function ill(theme: string): Promise<readonly string[]> {
  const { dataset } = document.documentElement;
  const before = dataset.theme ?? "dark";
  if (theme === before) return [];
  dataset.theme = theme;
  // The red lamp lies over everything; it takes nothing from what is red already.
  const options = {
    runOnly: ["color-contrast"],
    checks: { "color-contrast": { options: { ignorePseudo: true } } },
  };
  const { violations } = await axe.run(document.body, options);
  dataset.theme = before;
  return told(violations);
}
