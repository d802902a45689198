import { existsSync, readFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { expect, test } from "vitest";

const documents = [
  "README.md",
  "DEVELOPERS.md",
  "src/core/parts/README.md",
  "src/core/checks/README.md",
];
const scripts: Readonly<Record<string, string>> = JSON.parse(
  readFileSync("package.json", "utf8"),
).scripts;

test.for(documents)("%s leads only to what is there", (path) => {
  const text = readFileSync(path, "utf8");
  const links = [...text.matchAll(/\]\(([^)#]+)\)/g)].map(([, to]) => to ?? "");
  const named = [...text.matchAll(/`((?:src|tests)\/[\w./-]+)`/g)].map(([, to]) => to ?? "");
  const missing = [
    ...links.filter((to) => !/^https?:/.test(to) && !existsSync(join(dirname(path), to))),
    ...named.filter((to) => !existsSync(to)),
  ];
  expect(missing).toEqual([]);
});

test.for(documents)("%s names only commands that there are", (path) => {
  const text = readFileSync(path, "utf8");
  const run = [...text.matchAll(/npm run (?:--\S+ )*([\w-]+)/g)].map(([, name]) => name ?? "");
  expect(run.filter((name) => scripts[name] === undefined)).toEqual([]);
});

test("the README opens with the job", () => {
  const [title, , job] = readFileSync("README.md", "utf8").split("\n");
  expect(title).toBe("# Leftwright");
  expect(job).toMatch(/^Leftwright is for/);
});
