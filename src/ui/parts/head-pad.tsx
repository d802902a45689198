import { useEffect, useRef, useState } from "preact/hooks";
import { useWords } from "#ui/words/use-words.ts";
import { byDigit, Digit } from "./digits.tsx";
import { HeadPicture } from "./head-picture.tsx";
import { faced, inARow, isArrow, neighbourOf, type Spot } from "./head-places.ts";

interface Props {
  readonly spots: readonly Spot[];
  readonly facing: boolean;
  /** The element that asks. */
  readonly labelledBy: string;
  readonly onPoint: (answer: string) => void;
}

/** Point at what you heard: places as buttons on the drawing, one tab stop, arrow keys between them. */
export function HeadPad({ spots, facing, labelledBy, onPoint }: Props) {
  const placed = facing ? faced(spots) : spots;
  const [at, setAt] = useState("");
  const current =
    placed.find(({ answer }) => answer === at) ?? placed.find(({ kind }) => kind === "middle");
  const numbered = inARow(placed);
  const pad = useRef<HTMLFieldSetElement>(null);
  useEffect(() => pad.current?.querySelector<HTMLElement>("[tabindex='0']")?.focus(), []);
  const travel = (event: KeyboardEvent) => {
    if (!isArrow(event.key) || current === undefined) return;
    event.preventDefault();
    const next = neighbourOf(placed, current, event.key);
    if (next === undefined) return;
    setAt(next.answer);
    pad.current?.querySelector<HTMLElement>(`[data-place='${next.answer}']`)?.focus();
  };
  return (
    <div class={facing ? "stage facing" : "stage"}>
      <HeadPicture />
      <fieldset class="spots" aria-labelledby={labelledBy} onKeyDown={travel} ref={pad}>
        {placed.map((spot) => (
          <SpotButton
            place={numbered.indexOf(spot) + 1}
            key={spot.answer}
            spot={spot}
            current={spot === current}
            onFocus={() => setAt(spot.answer)}
            onPoint={() => onPoint(spot.answer)}
          />
        ))}
      </fieldset>
    </div>
  );
}

interface SpotProps {
  /** Counted along the row, for the number keys. */
  readonly place: number;
  readonly spot: Spot;
  readonly current: boolean;
  readonly onFocus: () => void;
  readonly onPoint: () => void;
}

function SpotButton({ spot: { answer, letter, kind, x, y }, place, current, ...on }: SpotProps) {
  const { spots, cupMarked } = useWords().asking;
  return (
    <button
      type="button"
      class={letter === undefined ? `spot ${kind}` : `spot ${kind} mark`}
      data-place={answer}
      {...byDigit(place)}
      style={{ left: `${x}%`, top: `${y}%` }}
      tabIndex={current ? 0 : -1}
      onFocus={on.onFocus}
      onClick={on.onPoint}
    >
      <span>
        {letter !== undefined && <span class="hidden">{cupMarked}</span>}
        {letter ?? spots[answer as keyof typeof spots]}
      </span>
      <Digit place={place} />
    </button>
  );
}
