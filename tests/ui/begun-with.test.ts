import { expect, test } from "vitest";
import { leadRig } from "#core/proving/lead-rig.ts";
import { sheetOf } from "#core/report/session-sheet.ts";
import { straightIn } from "#core/rig/rigs.ts";
import { add } from "#core/session/log.ts";
import { tomorrowOf } from "#core/session/tomorrow.ts";
import { begunWith, firstPage } from "#ui/screens/page.ts";

const page = firstPage({ theme: "dark", tongue: "en", numbers: false });
const lead = leadRig({ kind: "TRS lead", by: "meter" });

test("a lead that was proved is proved again tomorrow, on its bench; it has no sheet of positions", () => {
  const log = add([], { entry: "drawing", rig: lead }, 1);
  expect(begunWith(page, tomorrowOf(log), 2).view.screen).toBe("prove");
  expect(sheetOf(log)).toBeUndefined();
});

test("any other rig begins at its board", () => {
  const log = add([], { entry: "drawing", rig: straightIn }, 1);
  expect(begunWith(page, tomorrowOf(log), 2).view.screen).toBe("board");
  expect(sheetOf(log)).toBeDefined();
});
