import type { RefObject } from "preact";
import { useCallback } from "preact/hooks";
import { useLetters } from "./keys.ts";

/** The key for the so-manieth of some buttons, counted from one: 1 to 9, then 0, then none. */
const digitOf = (place: number): string | undefined =>
  place <= 10 ? String(place % 10) : undefined;

/** What a button with a digit bears. */
export const byDigit = (place: number) => {
  const digit = digitOf(place);
  return digit === undefined ? {} : { "data-digit": digit, "aria-keyshortcuts": digit };
};

/** The digit, small, for whoever has a keyboard. */
export const Digit = ({ place }: { readonly place: number }) => {
  const digit = digitOf(place);
  return digit === undefined ? null : (
    <span class="digit" aria-hidden="true">
      {digit}
    </span>
  );
};

/** A digit presses the button that bears it, wherever the focus is. */
export function useDigits(within: RefObject<HTMLElement | null>): void {
  useLetters(
    useCallback(
      (key: string) => {
        if (/^\d$/.test(key))
          within.current?.querySelector<HTMLElement>(`[data-digit="${key}"]`)?.click();
      },
      [within],
    ),
  );
}
