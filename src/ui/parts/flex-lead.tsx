import type { FlexMark } from "#core/measurement/flex-marks.ts";
import { useWords } from "#ui/words/use-words.ts";
import { PlugPicture } from "./plug-picture.tsx";

interface Props {
  /** Where along the lead events were, from nought at plug 1 to one at plug 2. */
  readonly places: readonly number[];
  /** Which plug the hand is to pass next; none when nobody bends it any more. */
  readonly next?: FlexMark["plug"] | undefined;
  readonly onMark?: (plug: FlexMark["plug"]) => void;
}

const [from, to, middle] = [104, 656, 40];
const plugs = [
  { plug: 1, tip: [6, middle], facing: "west" },
  { plug: 2, tip: [754, middle], facing: "east" },
] as const;

/** The lead in hand between its two plugs, a flag where each event was; a press says that the hand passes a plug. */
export function FlexLead({ places, next, onMark }: Props) {
  const { plain, flagged, hand, space } = useWords().flex.lead;
  return (
    <div class="flex-lead">
      <svg
        viewBox="0 0 760 80"
        role="img"
        aria-label={places.length === 0 ? plain : flagged(places.length)}
      >
        <path class="cord" d={`M${from - 4} ${middle}H${to + 4}`} />
        {places.map((along, at) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: flags have no name but their order
          <path key={at} class="flag" d={flag(from + 8 + along * (to - from - 16))} />
        ))}
        {plugs.map(({ plug, tip, facing }) => (
          <PlugPicture key={plug} kind="TRS" size="6.35 mm" tip={tip} facing={facing} />
        ))}
      </svg>
      {onMark && (
        <div class="at-plugs">
          {plugs.map(({ plug }) => (
            <button
              key={plug}
              type="button"
              class={plug === next ? "step next" : "step"}
              aria-keyshortcuts={plug === next ? `Space ${plug}` : String(plug)}
              onClick={() => onMark(plug)}
            >
              {hand(plug)}
              {plug === next && (
                <span class="key" aria-hidden="true">
                  {space}
                </span>
              )}
            </button>
          ))}
        </div>
      )}
    </div>
  );
}

const flag = (x: number): string =>
  `M${x - 6} ${middle - 22}L${x + 5} ${middle - 19}L${x + 6} ${middle + 22}L${x - 5} ${middle + 20}Z`;
