import type { Page } from "playwright";

/** A way the page is looked at: how to have it so, with the page as it stands. */
export interface Look {
  readonly name: string;
  readonly on: (page: Page) => Promise<void>;
}

interface Root {
  readonly theme?: string;
  readonly filter?: string;
  readonly dir?: string;
}

/** What is not named is as it was. */
const root = (page: Page, { theme = "dark", filter = "", dir = "ltr" }: Root) =>
  page.evaluate(
    (set) => {
      const { documentElement: html } = document;
      html.dataset.theme = set.theme;
      html.dir = set.dir;
      html.style.filter = set.filter;
    },
    { theme, filter, dir },
  );

const withRoot = (name: string, how: Root): Look => ({
  name,
  on: async (page) => {
    await page.emulateMedia({ forcedColors: "none", contrast: "no-preference" });
    await root(page, how);
  },
});

/** As most people see it. */
export const themes: readonly Look[] = [
  withRoot("dark", {}),
  withRoot("light", { theme: "light" }),
  withRoot("red lamp", { theme: "red lamp" }),
];

/** As some do. */
export const others: readonly Look[] = [
  withRoot("one colour", { filter: "grayscale(1)" }),
  {
    name: "forced colours",
    on: async (page) => {
      await root(page, {});
      await page.emulateMedia({ forcedColors: "active", contrast: "no-preference" });
    },
  },
  {
    name: "more contrast",
    on: async (page) => {
      await root(page, {});
      await page.emulateMedia({ forcedColors: "none", contrast: "more" });
    },
  },
  withRoot("right to left", { dir: "rtl" }),
];
