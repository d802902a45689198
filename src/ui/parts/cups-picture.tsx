import type { Cup } from "#core/measurement/cup.ts";
import type { CupsTold } from "#core/measurement/cups-told.ts";
import { useWords, type Words } from "#ui/words/use-words.ts";
import { Lane } from "./lane.tsx";

type Props = Pick<CupsTold, "cups" | "apart" | "polarity" | "buzzing"> & {
  /** All of it in words. */
  readonly label: string;
};

const sides = ["left", "right"] as const;
const letters = { left: "L", right: "R" } as const;
/** A cup's face and where its lanes end, on the left side; the right side is the same from the other edge. */
const [width, face, end, middle] = [480, 112, 176, 150] as const;
const turn = (x: number, side: number): number => (side === 0 ? x : width - x);
const turned = (side: number): string | undefined =>
  side === 0 ? undefined : `translate(${width} 0) scale(-1 1)`;

/** Two cups with what comes out of each: lanes with their letters, dots where nothing does, and between them whether both push the same way. One that buzzes has a jagged edge. */
export function CupsPicture({ cups, apart, polarity, buzzing, label }: Props) {
  const { figures } = useWords();
  return (
    <svg class="cups-picture" viewBox={`0 0 ${width} 250`} role="img" aria-label={label}>
      <path class="band" d="M86 104C92 -12 388 -12 394 104" />
      {sides.map((side, at) => (
        <g key={side}>
          <path
            class={`cup ${side}`}
            transform={turned(at)}
            d="M112 96v108H92c-30 0-46-26-46-54s16-54 46-54z"
          />
          <text class={`letter ${side} on`} x={turn(80, at)} y={middle + 8}>
            {letters[side]}
          </text>
          <Gives cup={cups[at === 0 ? 0 : 1]} at={at} />
          {buzzing === at && (
            <path
              class="buzz"
              transform={turned(at)}
              d="M34 110l-12 10 12 10-12 10 12 10-12 10 12 10-12 10 12 10"
            />
          )}
          <text class="number" x={turn(80, at)} y="236">
            {loudWords(figures, apart, at)}
          </text>
        </g>
      ))}
      {apart !== undefined && <Between polarity={polarity} />}
    </svg>
  );
}

/** The louder one is the measure. */
function loudWords({ decibels }: Words["figures"], apart: CupsTold["apart"], at: number): string {
  if (apart === undefined) return "";
  const under = at === 0 ? Math.max(0, apart) : Math.max(0, -apart);
  return under < 0.05 ? "0 dB" : decibels(-under);
}

/** What one cup gives. */
function Gives({ cup: { carries, sign }, at }: { readonly cup: Cup; readonly at: number }) {
  const { picture } = useWords().cups;
  if (carries === "neither")
    return (
      <>
        <Lane carries="nothing" d={`M${turn(face + 14, at)} ${middle}H${turn(end, at)}`} />
        <text class="part" x={turn(face + 44, at)} y={middle + 34}>
          {picture.nothing}
        </text>
      </>
    );
  const given = carries === "both" ? sides : [carries];
  return (
    <>
      {given.map((programme, row) => {
        const y = given.length === 1 ? middle : middle - 22 + 44 * row;
        return (
          <g key={programme}>
            <Lane carries={programme} d={`M${turn(face + 4, at)} ${y}H${turn(end, at)}`} />
            <text class={`letter ${programme} given`} x={turn(end + 14, at)} y={y + 7}>
              {letters[programme]}
            </text>
          </g>
        );
      })}
      {carries === "both" && <Mark x={turn(end - 30, at)} sign={sign} />}
    </>
  );
}

/** How two belong together: the same way, against each other, or not told. */
function Mark({ x, sign }: { readonly x: number; readonly sign: 1 | -1 | undefined }) {
  const marks = { "1": "M-6 0H6M0 -6V6", "-1": "M-6 0H6" } as const;
  return (
    <g transform={`translate(${x} ${middle})`}>
      <circle class="knot open" r="12" />
      {sign === undefined ? (
        <text class="number" y="6">
          ?
        </text>
      ) : (
        <path class="sign" d={marks[`${sign}`]} />
      )}
    </g>
  );
}

function Between({ polarity }: { readonly polarity: CupsTold["polarity"] }) {
  const { sameWay, opposite, notTold } = useWords().cups.picture;
  const told = { "1": sameWay, "-1": opposite } as const;
  return (
    <>
      <Mark x={width / 2} sign={polarity} />
      <text class="part" x={width / 2} y={middle + 36}>
        {polarity === undefined ? notTold : told[`${polarity}`]}
      </text>
    </>
  );
}
