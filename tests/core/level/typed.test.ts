import { expect, test } from "vitest";
import type { FigureName } from "#core/level/figures.ts";
import { typedFigure, typedOhms } from "#core/level/typed.ts";

test.for([
  ["most volts", "4", 4],
  ["most volts", " 1,2 V ", 1.2],
  ["most volts", "900 mV", 0.9],
  ["most volts", "+18 dBu", 6.153],
  ["most volts", "10 dBV", 3.162],
  // 1.6 V in 32 Ω are 80 mW.
  ["most volts", "80 mW", 1.6],
  ["most volts", "80 mW in 32 Ω", 1.6],
  ["most volts", "80mW @ 32 ohm", 1.6],
  ["most volts", "80 mW an 32 Ω", 1.6],
  ["most volts", "0.5 W into 50 ohms", 5],
  ["input noise", "4", 4],
  ["input noise", "4 µV", 4],
  ["input noise", "4 uV", 4],
  ["input noise", "−98 dBu", 9.752],
  ["output noise", "-100 dBV", 10],
  ["gain", "-3", -3],
  ["gain", "14 dB", 14],
] as const)("%s '%s' is %s", ([name, text, value]) => {
  const typed = typedFigure(name, text, 32);
  expect(typed).toEqual({ value: expect.closeTo(value, 3) });
});

test.for([
  ["100 dB/mW", 100, "dB/mW"],
  ["100 dB SPL/mW", 100, "dB/mW"],
  ["112 dB SPL / 1 V", 112, "dB/V"],
  ["112 dB/Vrms", 112, "dB/V"],
  ["97 dB", 97, "dB"],
  ["97", 97, "dB"],
] as const)("sensitivity '%s' is %s %s", ([text, value, unit]) => {
  expect(typedFigure("sensitivity", text, 32)).toEqual({ value, unit });
});

test.for([
  ["most volts", "", "not understood"],
  ["most volts", "loud", "not understood"],
  ["most volts", "4 dB", "not understood"],
  ["most volts", "80 mW in 0 Ω", "not understood"],
  ["most volts", "-80 mW", "not understood"],
  ["most volts", "1e3", "not understood"],
  ["gain", "14 V", "not understood"],
  ["sensitivity", "100 dB/W", "not understood"],
  ["most volts", "0", "cannot be"],
  ["most volts", "-4 V", "cannot be"],
  ["most volts", "400 V", "cannot be"],
  ["gain", "61", "cannot be"],
  ["sensitivity", "30 dB/mW", "cannot be"],
] as const satisfies readonly (readonly [FigureName, string, string])[])(
  "%s '%s' is %s",
  ([name, text, wrong]) => {
    expect(typedFigure(name, text, 32)).toMatchObject({ wrong });
  },
);

test("ohms within what a kind understands", () => {
  expect(typedOhms("32", 1, 2000)).toEqual({ value: 32 });
  expect(typedOhms("32,5 Ω", 1, 2000)).toEqual({ value: 32.5 });
  expect(typedOhms("32 ohms", 1, 2000)).toEqual({ value: 32 });
  expect(typedOhms("3000 Ω", 1, 2000)).toEqual({ wrong: "cannot be", is: 3000 });
  expect(typedOhms("32 V", 1, 2000)).toEqual({ wrong: "not understood" });
});
