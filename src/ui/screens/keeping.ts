import type { Page, View } from "./page.ts";

/** How the page's session is kept. */
export interface Keeping {
  /** What it is kept under; undefined where there is no session. */
  readonly session: string | undefined;
  /** Everything that was entered is on the disk, in whatever session. */
  readonly kept: boolean;
  /** The position that was in hand when it was left. */
  readonly position?: string;
  /** Another tab writes it, and this one shows what that writes. */
  readonly follows: boolean;
}

/** What is shown: the page, and how it is kept. */
export interface Shown {
  readonly page: Page;
  readonly keeping: Keeping;
}

/** The position in hand; undefined within at the board, and no hand at all where a screen is of neither. */
export interface Hand {
  readonly position: string | undefined;
}

/** Whether a screen is of a session, or may be. */
export const isOf = ({ screen }: View): boolean => screen !== "start" && screen !== "sessions";

/** Which position a screen has in hand. */
export function inHand(view: View): Hand | undefined {
  if (view.screen === "position") return { position: view.position };
  return view.screen === "board" ? { position: undefined } : undefined;
}

/** The same with another position in hand. */
export function holding<Of extends { readonly position?: string }>(of: Of, { position }: Hand): Of {
  const { position: _, ...rest } = of;
  return { ...rest, ...(position === undefined ? {} : { position }) } as Of;
}
