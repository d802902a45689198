import { useEffect, useState } from "preact/hooks";
import type { Player } from "#audio/player.ts";
import type { World } from "#audio/world.ts";

/** The world of sound as it is now. */
export function useWorld({ world, subscribe }: Player): World {
  const [now, setNow] = useState(world);
  useEffect(() => {
    setNow(world());
    return subscribe(() => setNow(world()));
  }, [world, subscribe]);
  return now;
}
