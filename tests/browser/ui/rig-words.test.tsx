import { cleanup } from "@testing-library/preact";
import { afterEach, beforeEach, expect, test, vi } from "vitest";
import { page as tab } from "vitest/browser";
import { press } from "../support/open.tsx";
import { openRig, startOf, thing } from "../support/rig.ts";

afterEach(cleanup);
// A busy machine may take ten times as long; no test waits for this.
vi.setConfig({ testTimeout: 60_000 });
beforeEach(() => tab.viewport(1280, 800));

/** What is said over the hand while one thing is held over another; it is not let go there. */
function heldOver(from: Element, onto: Element): string {
  const middle = (one: Element) => {
    const { left, top, width, height } = one.getBoundingClientRect();
    return { clientX: left + width / 2, clientY: top + height / 2, bubbles: true, button: 0 };
  };
  const send = (type: string, to: EventTarget, at: Element) =>
    to.dispatchEvent(new PointerEvent(type, middle(at)));
  send("pointerdown", from, from);
  send("pointermove", window, onto);
  const said = document.querySelector(".ghost")?.textContent ?? "";
  send("pointercancel", window, onto);
  return said;
}

test.each([
  {
    language: "en",
    amplifier: /^headphone amplifier$/,
    plug: /in output 2 of amplifier/,
    before:
      "headphone amplifier: in the way of headphones 2, before its plug in output 2 of amplifier",
    free: /in output 1 of amplifier/,
    into: "headphones 1: TRS 6.35 mm to output 2 of amplifier",
  },
  {
    language: "de",
    amplifier: /^Kopfhörerverstärker$/,
    plug: /in Ausgang 2 von Verstärker/,
    before: "Kopfhörerverstärker: vor Kopfhörer 2, in Ausgang 2 von Verstärker",
    free: /in Ausgang 1 von Verstärker/,
    into: "Kopfhörer 1: TRS 6,35 mm in Ausgang 2 von Verstärker",
  },
] as const)("what is held says where it would go: $language", async (one) => {
  await openRig(startOf("podcast table"), one.language);
  const [amplifier, plug, other] = [one.amplifier, one.plug, one.free].map((name) =>
    thing(name).element(),
  );
  if (amplifier === undefined || plug === undefined || other === undefined) throw new Error();
  amplifier.scrollIntoView({ block: "nearest" });
  const plain = (text: string) => text.replaceAll("\u00AD", "");
  expect(plain(heldOver(amplifier, plug))).toBe(one.before);
  expect(plain(heldOver(other, plug))).toBe(one.into);
});

test("in German the rig shows every name as the sheet and the questions say it", async () => {
  const rig = { ...startOf("podcast table"), name: "Tallow Hall story evening" };
  await openRig(rig, "de");
  await expect.element(tab.getByText("Erzähl\u00ADabend in Tallow Hall")).toBeVisible();
  expect(textsOf(".rig-picture .tape")).toEqual(
    expect.arrayContaining(["Verstärker", "Zuleitung", "1 host"]),
  );
  const named = /\b(laptop|lead|mixer|amplifier|headphones|story evening)\b/;
  const read = () =>
    [...document.querySelectorAll(".rig-screen, .rig-screen [aria-label]")].flatMap((one) => [
      one.textContent ?? "",
      one.getAttribute("aria-label") ?? "",
    ]);
  const raw = () => read().filter((text) => named.test(text));
  expect(raw()).toEqual([]);
  await thing(/in Ausgang 2 von Verstärker/).click();
  expect(textsOf(".rig-actions .tray-head .tape")).toEqual(["Kopfhörer 2, Stecker"]);
  expect(raw()).toEqual([]);
  await press("umstecken");
  expect(textsOf(".rig-choices .note")).toContain(" tauscht mit Kopfhörer 1");
  expect(raw()).toEqual([]);
  await press("weglegen");
  await thing("Verstärker, Kopfhörer").click();
  await press("ändern");
  await tab.getByLabelText("Ausgänge").fill("3");
  await press("übernehmen");
  await expect.element(tab.getByRole("alert")).toHaveTextContent("Kopfhörer 4 steckt in Ausgang 4");
});

const textsOf = (which: string) =>
  [...document.querySelectorAll(which)].map((one) => one.textContent ?? "");
