import { cleanup } from "@testing-library/preact";
import { afterEach, expect, test } from "vitest";
import { page as tab } from "vitest/browser";
import { positionCopied } from "#core/drawing/copying.ts";
import { add } from "#core/session/log.ts";
import { createMemoryShelf } from "#storage/memory-shelf.ts";
import { first } from "#ui/words/german/first.ts";
import { sessions as words } from "#ui/words/german/sessions.ts";
import { open, press } from "../support/open.tsx";
import { startOf } from "../support/rig.ts";

afterEach(cleanup);

test("what came to a rig has the names it is shown by", { timeout: 60_000 }, async () => {
  const rig = startOf("podcast table");
  const more = positionCopied(rig, "position 1");
  if ("refusal" in more) throw new Error(more.refusal.refused);
  const shelf = createMemoryShelf();
  const titled = (name: string) => ({ entry: "titled", name, who: "" }) as const;
  shelf.lay("a", add(add([], { entry: "drawing", rig }, 1), titled("A"), 1));
  shelf.lay("b", add(add([], { entry: "drawing", rig: more.rig }, 2), titled("B"), 2));
  open({ shelf, tongues: ["de"] });
  await press(first.start.sessions);
  await tab.getByLabelText(words.more("B")).click();
  await press(words.compare);
  await press("A");
  const text = () => document.querySelector("main")?.textContent ?? "";
  await expect.poll(text, { timeout: 15_000 }).toContain("Kopfhörer 5");
  expect(text()).not.toContain("headphones");
});
