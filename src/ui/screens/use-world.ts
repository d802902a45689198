import { useEffect, useState } from "preact/hooks";
import type { Player, World } from "#audio/player.ts";

/** The world of sound as it is now. */
export function useWorld({ world, subscribe }: Player): World {
  const [now, setNow] = useState(world);
  useEffect(() => {
    setNow(world());
    return subscribe(() => setNow(world()));
  }, [world, subscribe]);
  return now;
}
