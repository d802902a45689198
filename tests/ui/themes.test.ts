import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";

const folder = "src/ui/styles";
const read = (name: string): string => readFileSync(`${folder}/${name}`, "utf8");

type Colours = Readonly<Record<string, string>>;

/** What a block sets, by the words in front of it. */
function blocks(css: string): readonly { readonly of: string; readonly set: Colours }[] {
  const plain = css.replaceAll(/\/\*[\s\S]*?\*\//g, "");
  return [...plain.matchAll(/([^{}]+)\{([^{}]*)\}/g)].map(([, of = "", body = ""]) => ({
    of: of.trim(),
    set: Object.fromEntries(
      [...body.matchAll(/--([\w-]+):\s*([^;]+);/g)].map(([, name = "", value = ""]) => [
        name,
        value,
      ]),
    ),
  }));
}

const names = ["dark", "light", "red lamp"] as const;
const setFor = (css: string, theme: string): Colours =>
  Object.assign(
    {},
    ...blocks(css)
      .filter(({ of }) => of.includes(`"${theme}"`) || of.endsWith("[data-theme]"))
      .map(({ set }) => set),
  );

/** The colour a name stands for at last, from 0 to 1. */
function rgb(colours: Colours, name: string): readonly [number, number, number] {
  const value = colours[name] ?? "";
  const other = /^var\(--([\w-]+)\)$/.exec(value)?.[1];
  if (other !== undefined) return rgb(colours, other);
  const digits = value.slice(1);
  const [r = "", g = "", b = ""] =
    digits.length === 3 ? [...digits].map((one) => one + one) : (digits.match(/../g) ?? []);
  return [r, g, b].map((one) => Number.parseInt(one, 16) / 255) as [number, number, number];
}

/** Relative luminance and contrast (WCAG 2.2, definitions). */
function luminance(colours: Colours, name: string): number {
  const [r = 0, g = 0, b = 0] = rgb(colours, name).map((one) =>
    one <= 0.04045 ? one / 12.92 : ((one + 0.055) / 1.055) ** 2.4,
  );
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
}

function contrast(colours: Colours, one: string, other: string): number {
  const [a, b] = [luminance(colours, one), luminance(colours, other)];
  return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
}

const texts = [
  ["text", "ground"],
  ["text", "raised"],
  ["dim", "ground"],
  ["dim", "raised"],
  ["right", "ground"],
  ["right", "raised"],
  ["left", "ground"],
  ["left-ink", "left"],
  ["yellow-ink", "yellow"],
  ["tape-ink", "tape"],
] as const;
const lines = ["edge", "left", "right", "well", "chosen", "mark", "focus", "dim"] as const;

const themes = read("themes.css");
const more =
  read("contrast.css")
    .split("@media")
    .find((one) => one.includes("more) {")) ?? "";

describe.each(names)("%s", (theme) => {
  const plain = setFor(themes, theme);
  const asked = { ...plain, ...setFor(more.slice(more.indexOf("{") + 1), theme) };

  test.each(texts)("%s on %s can be read", (ink, ground) => {
    expect(contrast(plain, ink, ground)).toBeGreaterThanOrEqual(4.5);
    expect(contrast(asked, ink, ground)).toBeGreaterThanOrEqual(theme === "red lamp" ? 4.5 : 7);
  });

  test.each(lines)("the line %s can be seen", (line) => {
    expect(contrast(plain, line, "ground")).toBeGreaterThanOrEqual(3);
    expect(contrast(asked, line, "ground")).toBeGreaterThanOrEqual(theme === "red lamp" ? 3 : 4.5);
  });
});

test("every theme sets every colour", () => {
  const [dark, ...others] = names.map((theme) => Object.keys(setFor(themes, theme)).sort());
  for (const other of others) expect(other).toEqual(dark);
});

test("the red lamp has no blue and no green, and little light", () => {
  const colours = setFor(themes, "red lamp");
  for (const name of Object.keys(colours)) {
    expect(rgb(colours, name).slice(1), name).toEqual([0, 0]);
    expect(luminance(colours, name), name).toBeLessThan(0.22);
  }
});

test("all other styles, but for paper, take their colours from there", () => {
  const literal = /#[\da-f]{3,8}\b|\b(?:rgb|hsl|oklch|lab)a?\(|prefers-color-scheme/i;
  const found = readdirSync(folder)
    .filter((name) => !["themes.css", "contrast.css", "print.css"].includes(name))
    .filter((name) => literal.test(read(name).replaceAll(/\/\*[\s\S]*?\*\//g, "")));
  expect(found).toEqual([]);
});
