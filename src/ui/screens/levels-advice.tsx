import type { Room } from "#core/level/audible.ts";
import { roomNames, wantedLevels, wantedNames } from "#core/level/heard.ts";
import { Roving } from "#ui/parts/roving.tsx";
import { useWords } from "#ui/words/use-words.ts";
import { usualRoom } from "./levels-view.ts";
import { type AtLevels, knobPuts } from "./use-levels.ts";

/** So near to all targets there is nothing to set. */
const near = 0.012;

/** The one large move: every knob where it is best for how loud it should be, with the hiss now and then. */
export function LevelsAdvice({ at }: { readonly at: AtLevels }) {
  const { levels, figures } = useWords();
  const { way, told, view, targets } = at;
  const turnable = way.feed.stages.some(({ knob }) => knob !== undefined);
  const there = way.feed.stages.every(
    ({ knob }, stage) => Math.abs((knob ?? 0) - (targets.knobs[stage] ?? 0)) < near,
  );
  const whole = (value: number) => figures.fixed(value, 0);
  return (
    <div class="levels-advice">
      <div class="levels-for">
        <Roving label={levels.wanted} kind="foot">
          <span class="dim">{levels.wanted}</span>
          {wantedNames.map((one) => (
            <button
              key={one}
              type="button"
              class="say"
              aria-pressed={one === (view.wanted ?? "music")}
              onClick={() => at.look({ wanted: one })}
            >
              {levels.wants[one](whole(wantedLevels[one]))}
            </button>
          ))}
        </Roving>
        <Rooms at={at} />
      </div>
      {turnable && (
        <div class="levels-set">
          <button
            type="button"
            class="main"
            onClick={() => at.put(...knobPuts(way, { ...targets.knobs }))}
          >
            {there ? levels.setAlready : levels.setSo}
          </button>
          <div>
            {!there && (
              <p>
                {levels.whatThen(whole(targets.level), whole(told.hiss.value), whole(targets.hiss))}
              </p>
            )}
            <p class="note">
              {targets.byThumb ? levels.byThumb(whole(targets.byThumb.hiss)) : levels.byNumbers}
            </p>
            {targets.byThumb && (
              <button
                type="button"
                class="quiet"
                onClick={() => at.put(...knobPuts(way, { ...targets.byThumb?.knobs }))}
              >
                {levels.setByThumb}
              </button>
            )}
          </div>
        </div>
      )}
      {targets.short > 0.5 && <p class="levels-short">{levels.short(whole(targets.short))}</p>}
    </div>
  );
}

/** Where it is listened: what covers the hiss. */
function Rooms({ at: { view, look } }: { readonly at: AtLevels }) {
  const { levels } = useWords();
  const now: Room = view.room ?? usualRoom;
  return (
    <Roving label={levels.where} kind="foot">
      <span class="dim">{levels.where}</span>
      {roomNames.map((one) => (
        <button
          key={one}
          type="button"
          class="say"
          aria-pressed={one === now}
          onClick={() => look({ room: one })}
        >
          {levels.rooms[one]}
        </button>
      ))}
    </Roving>
  );
}
