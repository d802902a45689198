import type { Carries } from "./effect-lanes.ts";

interface Props {
  readonly d: string;
  readonly carries: Carries;
  /** Runs over what it crosses. */
  readonly over?: boolean;
}

/** One lane: left filled, right an outline, both as stripes of the two, nothing as dots. */
export function Lane({ d, carries, over = false }: Props) {
  if (carries === "nothing") return <path class="lane nothing" d={d} />;
  const weak = carries.startsWith("weak") ? " weak" : "";
  const left = carries.endsWith("left") || carries === "both";
  return (
    <>
      {over && <path class="lane bed" d={d} />}
      {left ? (
        <path class={`lane left${weak}`} d={d} />
      ) : (
        <>
          <path class={`lane right${weak}`} d={d} />
          {weak === "" && <path class="lane core" d={d} />}
        </>
      )}
      {carries === "both" && <path class="lane stripes" d={d} />}
    </>
  );
}
