import { afterEach, expect, test, vi } from "vitest";
import { localDay } from "#ui/screens/local-day.ts";

afterEach(() => vi.unstubAllEnvs());

test.each([
  ["Europe/Berlin", "2026-11-22"],
  ["UTC", "2026-11-21"],
  ["America/Los_Angeles", "2026-11-21"],
])("a file is of the day it is where the page is: in %s %s", (zone, day) => {
  vi.stubEnv("TZ", zone);
  expect(localDay(Date.UTC(2026, 10, 21, 23, 30))).toBe(day);
});

test("days and months have two figures", () => {
  vi.stubEnv("TZ", "UTC");
  expect(localDay(Date.UTC(2026, 0, 3))).toBe("2026-01-03");
});
