import type { Measurer, MeasurerWorld } from "#audio/measurer.ts";
import { HookUpPicture } from "#ui/parts/hook-up-picture.tsx";
import { Heading } from "./frame.tsx";
import { Loudness } from "./loudness.tsx";
import { dbfs } from "./numbers.ts";
import type { Ways } from "./page.ts";
import type { Held } from "./use-page.ts";

/** While the level is looked for. */
export const FindingLevel = ({ held, returns, measurer, world }: FindingProps) => (
  <>
    <Heading>Finding the level</Heading>
    <p class="hint">Hands off the lead. It goes up in slow steps until enough comes back.</p>
    <HookUpPicture first={world.route.first} returns={returns} />
    <GoingOut measurer={measurer} world={world} free={false} />
    <Stop onStop={held.silence} />
  </>
);

/** Ends whatever is played and recorded. */
export const Stop = ({ onStop }: { readonly onStop: () => void }) => (
  <div class="foot">
    <button type="button" class="main" onClick={onStop}>
      Stop
    </button>
  </div>
);

interface FindingProps extends Omit<Props, "free"> {
  readonly held: Held;
  readonly returns: Ways["returns"];
}

interface Props {
  readonly measurer: Measurer;
  readonly world: MeasurerWorld;
  /** The level may be moved by hand now. */
  readonly free: boolean;
}

/** How loud it goes out, and what comes back of it. */
export function GoingOut({ measurer, world, free }: Props) {
  return (
    <div class="going-out level">
      <Loudness level={world.level} muted={world.doing === "nothing"} free={free} by={measurer} />
      <p class="note">{backWords(world)}</p>
    </div>
  );
}

/** What comes back, input by input. */
function backWords({ returned }: MeasurerWorld): string {
  if (returned === undefined) return "Nothing comes back yet.";
  const each = returned.levels.map((level, at) => `in ${at + 1}: ${dbfs(level)}`);
  const top = returned.peak > -1 ? " Too much: the input is cut off at the top." : "";
  return `Comes back, ${each.join(", ")}.${top}`;
}
