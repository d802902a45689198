import { cleanup } from "@testing-library/preact";
import { afterEach, describe, expect, test } from "vitest";
import { page as tab } from "vitest/browser";
import { holding } from "#core/session/log.ts";
import { leadListener, meterAll, proving, readingNow } from "../support/meter.ts";
import { button, heading, keys, open, press } from "../support/open.tsx";
import { answerOne } from "../support/walk.ts";

afterEach(cleanup);

type Opened = ReturnType<typeof open>;
const body = () => document.body.textContent ?? "";
const readings = (opened: Opened) =>
  holding(opened.log()).filter(({ entry }) => entry === "finding").length;

/** From the first screen to a lead's ways of proving it. */
async function choose(one: RegExp, other: RegExp, kind: RegExp) {
  await press("Prove a lead");
  await press(one);
  await press(other);
  await press(kind);
}

const stereo = /^stereo jack three/;
const trs = [stereo, stereo, /^stereo jack lead/] as const;

describe("choosing", () => {
  test("both ends and the kind are pointed at, and beneath each way stands what it cannot see", async () => {
    open();
    await press("Prove a lead");
    await expect.element(heading()).toHaveTextContent("What is at one end?");
    await press(stereo);
    await expect.element(heading()).toHaveTextContent("And at its other end?");
    await press(/^two mono jacks/);
    await expect.element(button(/^insert Y lead/)).toBeVisible();
    const sides = [
      ...(button(/^insert Y lead/)
        .element()
        .querySelectorAll(".letter") ?? []),
    ];
    expect(sides.map(({ textContent }) => textContent)).toEqual(["L", "R"]);
    await press("back");
    await press(stereo);
    await press(/^stereo jack lead/);
    await expect.element(button(/^by ear.*dirt of 300 Ω or less/)).toBeVisible();
    await expect.element(button(/^with a multimeter.*It cannot see: capacitance/)).toBeVisible();
  });
});

describe("with a multimeter", () => {
  test("a sound lead takes six readings, and the next of its kind is begun by one press", async () => {
    const opened = open();
    await choose(...trs);
    await press(/^with a multimeter/);
    await expect.element(heading()).toHaveTextContent("Touch the sleeve of A and the sleeve of B.");
    expect(body()).toContain("Never while somebody wears");
    expect(body()).toContain("6 readings left where all is well");
    expect(await meterAll(opened, { kind: "TRS lead" })).toBe(6);
    await expect.element(heading()).toHaveTextContent("As it should be");
    expect(body()).toContain("capacitance: not tested");
    await press("Another lead of the same kind");
    await expect.element(heading()).toHaveTextContent("Touch the sleeve of A");
    await expect.poll(() => readings(opened)).toBe(0);
  });

  test.for([
    ["tip and ring exchanged", /Tip and ring are exchanged/, "tip of B hangs on ring of A"],
    ["sleeve open", /The return is lost/, "Sleeve of A and sleeve of B are not joined"],
    ["return of 30 ohms", /30 Ω of dirt/, "Clean both contacts"],
    ["tip open, now and then", /now and then/, "come and go"],
  ] as const)("finds %s", async ([fault, head, mend]) => {
    const opened = await proving("TRS lead", "meter");
    await meterAll(opened, { kind: "TRS lead", fault: `lead / body / ${fault}` });
    await expect.element(heading()).toHaveTextContent(head);
    expect(body()).toContain(mend);
    expect(body()).toContain("Fresh air");
    await press("Done, check again");
    await expect.element(heading()).toHaveTextContent("Touch the");
  });

  test("a figure that is not understood is refused in words, and stays", async () => {
    const opened = await proving("TRS lead", "meter");
    const figure = tab.getByLabelText(/as it reads/);
    await figure.fill("O.L");
    await press("enter");
    await expect.element(figure).toHaveValue("O.L");
    expect(body()).toContain("'O.L' is not understood");
    await expect.element(figure).toHaveFocus();
    await expect.poll(() => readings(opened)).toBe(0);
    await figure.fill("1,2k");
    await keys("{Enter}");
    await expect.poll(() => readings(opened)).toBe(1);
    expect(opened.log().at(-1)).toMatchObject({ finding: { ohms: 1200, bent: "steady" } });
  });

  test("the last reading is taken back, and a kept session goes on where it was", async () => {
    const opened = await proving("TRS lead", "meter");
    await press(/^beep/);
    await press(/^no beep/);
    await expect.poll(() => readings(opened)).toBe(2);
    const asked = readingNow(opened);
    await press("take the last reading back");
    await expect.poll(() => readings(opened)).toBe(1);
    await press(/^no beep/);
    await expect.poll(() => readings(opened)).toBe(2);
    expect(readingNow(opened)).toEqual(asked);
    const again = open({ shelf: opened.shelf });
    await press("Go on with the last session");
    await expect.element(button("take the last reading back")).toBeVisible();
    expect(readingNow(again)).toEqual(asked);
  });

  test("a lead that nobody knows is told", async () => {
    const opened = open();
    await choose(stereo, stereo, /^tell me what this is/);
    await expect.element(button(/^no beep/)).toBeVisible();
    await press(/^beep/);
    await press(/^no beep/);
    await expect.poll(body).toContain("It is not what it looked like, or something is wrong in it");
    await press("take the last reading back");
    await meterAll(opened, { kind: "one-to-both lead with TRS plug, ring unused" });
    await expect.element(heading()).toHaveTextContent("It is this: one-to-both lead, ring unused");
  });

  test("goes by the keyboard alone", async () => {
    const opened = open();
    const go = async (name: string | RegExp, how: string) => {
      await expect.element(button(name)).toBeVisible();
      await expect.element(heading()).toHaveFocus();
      button(name).element().focus();
      await keys(how);
    };
    await expect.element(button("Prove a lead")).toBeVisible();
    button("Prove a lead").element().focus();
    await keys("{Enter}");
    await go(stereo, "{ArrowRight}{Enter}");
    await expect.element(heading()).toHaveTextContent("And at its other end?");
    await go(stereo, "{ArrowRight}{Enter}");
    await go(/^mono jack lead/, "{Enter}");
    await go(/^with a multimeter/, "{Enter}");
    await go(/^beep/, "{ArrowRight}{Enter}");
    await expect.poll(() => readings(opened)).toBe(1);
    expect(opened.log().at(-1)).toMatchObject({ finding: { bent: "steady" } });
    expect(opened.log().at(-1)).not.toHaveProperty("finding.ohms");
  });
});

describe("by ear", () => {
  test("is plugged in between good gear, heard, and drawn beside what it should be", async () => {
    const opened = await proving("TRS lead", "ear");
    const listener = leadListener("TRS lead", "lead / body / tip and ring exchanged");
    await expect.element(heading()).toHaveTextContent("Put it between gear");
    expect(body()).toContain("Are the PA, the stream and the recorder muted?");
    await press("It is plugged in");
    await expect.element(button("Play")).toBeVisible();
    for (let asked = 0; asked < 6 && !document.querySelector(".proved"); asked++)
      await answerOne(opened, listener, false);
    await expect.element(heading()).toHaveTextContent("Tip and ring are exchanged");
    expect(body()).toContain("dirt of 300 Ω or less: not tested");
    await press("Measure another way");
    await expect.element(heading()).toHaveTextContent("How will you prove it?");
  });
});
