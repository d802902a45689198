import type { IAudioContext } from "standardized-audio-context";
import type { Seconds } from "#core/units/units.ts";
import type { Blend } from "./blend.ts";
import type { Ending } from "./player.ts";
import type { PlayingGraph } from "./playing.ts";
import type { Programme } from "./programme.ts";
import type { Trouble } from "./world.ts";

/** What sounds, and since when it was last counted as heard. */
interface Sounding {
  readonly graph: PlayingGraph;
  readonly programme: Programme;
  counted: Seconds;
}

/** What is to be played in a context, or why not. */
export type Make = (context: IAudioContext) => Programme | Trouble | Promise<Programme | Trouble>;

/** One press of play. */
export interface Run {
  readonly resolve: (ending: Ending) => void;
  blend: Blend;
  sounding?: Sounding;
}
