import type { Complaint } from "#core/checks/complaints.ts";
import type { Effect } from "#core/rig/effect.ts";
import { EffectGlyph } from "./effect-glyph.tsx";
import { Lane } from "./lane.tsx";

/** What lanes mostly do that is complained of so. Nothing is decided by it. */
const effects: Readonly<Partial<Record<Complaint, Effect>>> = {
  "only the left ear works": "right gone",
  "only the right ear works": "left gone",
  "left side quiet": "left weak",
  "right side quiet": "right weak",
  "nothing at all": "nothing",
  "no voice": "difference",
  "hollow or thin": "one side inverted",
  "the same in both ears": "mono",
  "a part is missing": "left in both",
  "sides swapped": "swapped",
  "no complaint": "straight",
};

/** What lies over two lanes that are whole: little dots, a slow wave, a jag, a question. */
const over: Readonly<Partial<Record<Complaint, string>>> = {
  hiss: "M34 9v.1M41 5v.1M48 9v.1M55 5v.1M62 9v.1M69 5v.1M76 9v.1M83 5v.1M34 26v.1M41 26v.1M48 26v.1M55 26v.1M62 26v.1M69 26v.1M76 26v.1M83 26v.1M34 43v.1M41 47v.1M48 43v.1M55 47v.1M62 43v.1M69 47v.1M76 43v.1M83 47v.1",
  hum: "M34 26c7 -24 13 -24 20 0s13 24 20 0s13 -24 20 0",
  "crackle, or it comes and goes": "M40 6L54 22L48 24L62 32L54 34L76 48",
  "something else": "M54 18c0 -14 20 -12 18 0c-1 7 -9 6 -9 14M63 41v.1",
};

/** A complaint as two lanes, left above and right below. */
export function ComplaintPicture({ complaint }: { readonly complaint: Complaint }) {
  const effect = effects[complaint];
  if (effect !== undefined) return <EffectGlyph effect={effect} />;
  const drawn = over[complaint];
  return (
    <svg class="effect-glyph" viewBox="0 0 124 52" aria-hidden="true">
      <Lane carries={drawn ? "left" : "weak left"} d="M0 17H124" />
      <Lane carries={drawn ? "right" : "weak right"} d="M0 35H124" />
      {drawn && (
        <>
          {complaint !== "hiss" && <path class="said-over bed" d={drawn} />}
          <path class="said-over" d={drawn} />
        </>
      )}
    </svg>
  );
}
