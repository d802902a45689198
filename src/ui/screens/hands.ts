import { useEffect } from "preact/hooks";
import type { Player } from "#audio/player.ts";

/** Mutes while a hand is asked for. Sound comes back by an entry that says it is done. */
export function useHandOn({ handOn }: Player): void {
  useEffect(() => handOn(), [handOn]);
}
