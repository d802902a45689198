import { inTurn } from "#core/hearing/in-turn.ts";
import { render } from "#core/signals/render.ts";
import type { Sound } from "#core/signals/sound.ts";
import type { Hertz, Seconds } from "#core/units/units.ts";

const between: Seconds = 0.3;

/** A knock on the left, two on the right, and the two bursts, the one in phase first or last by the seed. */
export const testProgramme = (rate: Hertz, seed: number): Sound =>
  inTurn(
    (["left-ident", "right-ident", "burst-pair"] as const).map((name) => render(name, rate, seed)),
    between,
  );
