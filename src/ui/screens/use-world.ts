import { useEffect, useState } from "preact/hooks";

/** Something that is now so and then otherwise, and says when. */
interface Changing<World> {
  readonly world: () => World;
  readonly subscribe: (listener: () => void) => () => void;
}

/** The world of a player, a recorder or a measurer as it is now. */
export function useWorld<World>({ world, subscribe }: Changing<World>): World {
  const [now, setNow] = useState(world);
  useEffect(() => {
    setNow(world());
    return subscribe(() => setNow(world()));
  }, [world, subscribe]);
  return now;
}
