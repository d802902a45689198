import { useCallback, useEffect, useRef } from "preact/hooks";
import { drawFlex, type FlexDrawing } from "./flex-drawing.ts";
import { onLook } from "./on-look.ts";

interface Props {
  /** What to draw now; asked again and again where `every` says so. */
  readonly drawing: () => FlexDrawing | undefined;
  /** Milliseconds between two drawings; left out, it is drawn once, and when the window changes. */
  readonly every?: number;
  readonly label: string;
}

/** Two lanes over time, left above right, each with its letter. */
export function FlexStrip({ drawing, every, label }: Props) {
  const canvas = useRef<HTMLCanvasElement>(null);
  const latest = useRef(drawing);
  latest.current = drawing;
  const draw = useCallback(() => {
    const now = latest.current();
    if (canvas.current && now) drawFlex(canvas.current, now);
  }, []);
  // What is drawn again and again anyway is not drawn with every change beside it.
  useEffect(() => {
    if (every === undefined) draw();
  });
  useEffect(() => {
    const forget = onLook(draw);
    addEventListener("resize", draw);
    const timer = every === undefined ? undefined : setInterval(draw, every);
    return () => {
      clearInterval(timer);
      removeEventListener("resize", draw);
      forget();
    };
  }, [every, draw]);
  return (
    <div class="flex-strip">
      <span class="letter left" aria-hidden="true">
        L
      </span>
      <span class="letter right" aria-hidden="true">
        R
      </span>
      <canvas ref={canvas} role="img" aria-label={label} />
    </div>
  );
}
