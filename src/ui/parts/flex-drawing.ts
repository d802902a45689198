import type { FlexMark } from "#core/measurement/flex-marks.ts";
import type { FlexEvent, FlexFault } from "#core/measurement/flex-names.ts";
import type { FlexStripView } from "#core/measurement/flex-strip.ts";
import type { Seconds } from "#core/units/units.ts";

export interface FlexDrawing {
  readonly view: FlexStripView;
  readonly events: readonly FlexEvent[];
  readonly marks: readonly FlexMark[];
  readonly from: Seconds;
  readonly to: Seconds;
  /** Off: everything in the colour of text, told apart by form alone. */
  readonly colour: boolean;
}

interface Ink {
  readonly ground: string;
  readonly text: string;
  readonly dim: string;
  readonly left: string;
  readonly right: string;
  readonly flag: string;
}

/** Half of a lane's thickness while its side is whole; how far its flag reaches; and the least that a break is wide, pixels. */
const [half, reach, least] = [7, 20, 5];
/** A lane is no thicker than this many times its own. */
const most = 1.4;
/** What comes over is drawn so large. */
const over = 26;

/** Draws a stretch of a watch: two lanes, their breaks where they were, what comes over between them, and marks below. */
export function drawFlex(canvas: HTMLCanvasElement, drawing: FlexDrawing): void {
  const pen = canvas.getContext("2d");
  if (pen === null) return;
  const { clientWidth: width, clientHeight: height } = canvas;
  const fine = devicePixelRatio || 1;
  if (canvas.width !== Math.round(width * fine)) canvas.width = Math.round(width * fine);
  if (canvas.height !== Math.round(height * fine)) canvas.height = Math.round(height * fine);
  pen.setTransform(fine, 0, 0, fine, 0, 0);
  pen.clearRect(0, 0, width, height);
  const ink = inkOf(canvas, drawing.colour);
  const sheet = { pen, width, height, ink, drawing };
  for (const event of drawing.events) drawFlag(sheet, event);
  for (let x = 0; x < width; x += 1) drawColumn(sheet, x);
  for (const event of drawing.events) drawBreak(sheet, event);
  for (const mark of drawing.marks) drawMark(sheet, mark);
}

interface Sheet {
  readonly pen: CanvasRenderingContext2D;
  readonly width: number;
  readonly height: number;
  readonly ink: Ink;
  readonly drawing: FlexDrawing;
}

function inkOf(canvas: HTMLCanvasElement, colour: boolean): Ink {
  const style = getComputedStyle(canvas);
  const of = (name: string) => style.getPropertyValue(name);
  const [ground, text, dim] = [of("--ground"), of("--text"), of("--dim")];
  return colour
    ? { ground, text, dim, left: of("--left"), right: of("--right"), flag: of("--yellow") }
    : { ground, text, dim, left: text, right: text, flag: of("--line") };
}

const lanes = { left: 0.27, right: 0.69 } as const;
type Side = keyof typeof lanes;

const acrossOf = ({ height }: Sheet, side: Side): number => lanes[side] * height;
const alongOf = ({ width, drawing: { from, to } }: Sheet, at: Seconds): number =>
  ((at - from) / (to - from)) * width;

/** One column of pixels: the least that was left of each side in its time. */
function drawColumn(sheet: Sheet, x: number): void {
  const { view, from, to } = sheet.drawing;
  const time = (to - from) / sheet.width;
  const first = Math.floor((from + x * time - view.from) / view.step);
  const last = Math.max(first, Math.ceil((from + (x + 1) * time - view.from) / view.step) - 1);
  for (const side of ["left", "right"] as const)
    drawLane(sheet, side, x, leastOf(view[side].least, first, last));
  drawOver(sheet, x, farthest(view, first, last));
}

function leastOf(cells: Float32Array, first: number, last: number): number {
  let found = Number.NaN;
  for (let at = Math.max(0, first); at <= last; at += 1) {
    const value = cells[at] ?? Number.NaN;
    if (!(value >= found)) found = Number.isNaN(value) ? found : value;
  }
  return found;
}

/** The crosstalk that is farthest from none, signed. */
function farthest({ crosstalk }: FlexStripView, first: number, last: number): number {
  let found = 0;
  for (let at = Math.max(0, first); at <= last; at += 1)
    for (const value of [crosstalk.least[at] ?? 0, crosstalk.most[at] ?? 0])
      if (Math.abs(value) > Math.abs(found)) found = value;
  return found;
}

function drawLane(sheet: Sheet, side: Side, x: number, level: number): void {
  if (Number.isNaN(level)) return;
  const { pen, ink } = sheet;
  const y = acrossOf(sheet, side);
  const size = half * Math.min(most, Math.max(0, level));
  pen.fillStyle = ink[side];
  pen.fillRect(x, y - size, 1, 2 * size);
  if (side === "left" || size < 3) return;
  pen.fillStyle = ink.ground;
  pen.fillRect(x, y - size + 2, 1, 2 * size - 4);
}

function drawOver(sheet: Sheet, x: number, value: number): void {
  if (Math.abs(value) < 0.04) return;
  const middle = (acrossOf(sheet, "left") + acrossOf(sheet, "right")) / 2;
  const size = over * Math.max(-1, Math.min(1, value));
  sheet.pen.fillStyle = sheet.ink.dim;
  sheet.pen.fillRect(x, middle - Math.max(size, 0), 1, Math.abs(size));
}

const sidesOf: Readonly<Record<FlexFault, readonly Side[]>> = {
  tip: ["left"],
  ring: ["right"],
  "tip and ring": ["left", "right"],
  sleeve: ["left", "right"],
  "tip to ring": ["left", "right"],
  mixed: ["left", "right"],
};

/** From where to where an event is drawn, never too thin to be seen; undefined outside. */
function spanOf(sheet: Sheet, { at, duration }: FlexEvent): readonly [number, number] | undefined {
  const [from, to] = [alongOf(sheet, at), alongOf(sheet, at + duration)];
  if (to < 0 || from > sheet.width) return undefined;
  const more = Math.max(0, least - (to - from)) / 2;
  return [from - more, to + more];
}

/** Tape behind what was hit: look here. */
function drawFlag(sheet: Sheet, event: FlexEvent): void {
  const span = spanOf(sheet, event);
  if (span === undefined) return;
  sheet.pen.fillStyle = sheet.ink.flag;
  for (const side of sidesOf[event.fault])
    sheet.pen.fillRect(
      span[0] - 2,
      acrossOf(sheet, side) - reach,
      span[1] - span[0] + 4,
      2 * reach,
    );
}

/** From here on less than a third is left, and the lane counts as broken. */
const broken = 10;
const joined: readonly FlexFault[] = ["tip to ring", "mixed", "sleeve"];

/** Where a side was gone its lane is cut, with a bar at either end. */
function drawBreak(sheet: Sheet, event: FlexEvent): void {
  const span = spanOf(sheet, event);
  if (span === undefined || event.depth < broken || joined.includes(event.fault)) return;
  const { pen, ink } = sheet;
  for (const side of sidesOf[event.fault]) {
    const y = acrossOf(sheet, side);
    pen.fillStyle = ink.flag;
    pen.fillRect(span[0], y - half * most, span[1] - span[0], 2 * half * most);
    pen.fillStyle = ink.text;
    for (const x of span) pen.fillRect(x - 1, y - half - 4, 2, 2 * half + 8);
  }
}

function drawMark(sheet: Sheet, { at, plug }: FlexMark): void {
  const x = alongOf(sheet, at);
  if (x < 0 || x > sheet.width) return;
  const { pen, ink, height } = sheet;
  pen.fillStyle = ink.text;
  pen.fillRect(x - 0.75, height - 26, 1.5, 10);
  pen.font = "13px sans-serif";
  pen.textAlign = "center";
  pen.fillText(String(plug), x, height - 3);
}
