import type { Page } from "playwright";
import type { Pointed } from "./ears.ts";
import { pressOn, say } from "./press.ts";

/** A hand goes to the cup on the side where it is heard; the letter is read off that cup. */
export async function touch(page: Page, { place }: Pointed): Promise<void> {
  if (place === "nothing at all") return say(page, "neither cup");
  if (place === "middle" || place === "all round") return say(page, "both cups");
  const cups = ["cup marked L", "cup marked R"].map((name) =>
    page.getByRole("button", { name, exact: true }),
  );
  const boxes = await Promise.all(
    cups.map(async (cup) => ({ cup, x: (await cup.boundingBox())?.x ?? 0 })),
  );
  boxes.sort((a, b) => a.x - b.x);
  const chosen = place.includes("left") ? boxes[0] : boxes.at(-1);
  if (chosen) await pressOn(chosen.cup);
}
