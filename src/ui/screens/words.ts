import type { World } from "#audio/world.ts";
import type { Words } from "#ui/words/use-words.ts";

/** Where the sound goes, in words. */
export function routeWords(
  { system, pair }: Words["sounding"],
  { route: { device, first }, channels }: World,
): string {
  const name = device?.name ?? system;
  return first === 0 && (channels ?? 2) <= 2 ? name : pair(first + 1, first + 2, name);
}
