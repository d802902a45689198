import { expect, test } from "vitest";
import { fromHeadphoneSocket } from "#core/rig/rigs.ts";
import { derive } from "#core/session/derive.ts";
import { add, type Log } from "#core/session/log.ts";
import { type Where, whereNext } from "#core/session/where.ts";
import { at, inMono, well } from "#tests/support/entries.ts";

const seats = (count: number): Log =>
  add(
    [],
    {
      entry: "drawing",
      rig: fromHeadphoneSocket(
        `${count} seats`,
        Array.from({ length: count }, (_, index) => `seat ${index + 1}`),
      ),
    },
    0,
  );

/** Where to go, and how often a press could have come in between. */
function where(log: Log): { to: Where; pauses: number } {
  const derived = derive(log);
  if (derived === undefined) throw new Error("nothing is drawn");
  const looking = whereNext(derived);
  for (let pauses = 0; ; pauses++) {
    const { done, value } = looking.next();
    if (done) return { to: value, pauses };
  }
}

test("twelve chairs: one is heard first, since it tells of what all share; the rest all at once", () => {
  const log = seats(12);
  expect(where(log).to).toEqual({
    go: "position",
    position: "position 1",
    because: "one seat tells of what all share",
  });
  const { to, pauses } = where(well(log, "position 1"));
  expect(to.go).toBe("all at once");
  expect(to.go === "all at once" && to.positions).toHaveLength(11);
  expect(pauses).toBe(12);
});

test("a seat that was begun is gone on with; the last one left is walked to", () => {
  const begun = at(seats(3), "position 2", "left", "left ear");
  expect(where(begun).to).toMatchObject({ position: "position 2", because: "it was begun" });
  const two = well(well(seats(3), "position 1"), "position 2");
  expect(where(two).to).toMatchObject({ position: "position 3", because: "it is the next" });
});

test("what all share is mended before anybody is walked to", () => {
  const everywhere = ["position 1", "position 2"].reduce(inMono, seats(6));
  const { to } = where(everywhere);
  expect(to).toMatchObject({ go: "position" });
  expect(["what all share is mended first", "it was begun"]).toContain(
    to.go === "position" ? to.because : "",
  );
});

test("all are well: nowhere", () => {
  const log = ["position 1", "position 2"].reduce(well, seats(2));
  expect(where(log).to).toEqual({ go: "nowhere" });
});
