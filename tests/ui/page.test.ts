import { expect, test } from "vitest";
import { straightIn } from "#core/rig/rigs.ts";
import { answererIn, begun, begunWith, firstPage, opened, type Page } from "#ui/screens/page.ts";

const page: Page = {
  ...firstPage({ theme: "dark", tongue: "en", numbers: false }),
  answering: "facing",
  told: "position 1",
};

test.each([
  ["begun", begun(page, straightIn, undefined, 0)],
  ["begun with what another left", begunWith(page, [{ entry: "drawing", rig: straightIn }], 0)],
  ["opened", opened({ screen: "board" })(page)],
])("a session that is %s knows nobody who points, and nobody who was told how", (_, next) => {
  expect(next).toMatchObject({ answering: "wearing", told: undefined, view: { screen: "board" } });
});

test("with a simulated rig nobody but whoever has the page answers", () => {
  expect(answererIn(page)).toBe("facing");
  expect(answererIn({ ...page, seed: 7 })).toBe("wearing");
});
