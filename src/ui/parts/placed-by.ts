/** How far it stands from what it is about, and from the edges of the window, in CSS pixels. */
const [apart, edge, header] = [8, 12, 76];

/**
 * Puts a few actions close by the thing they are for: under it, over it, beside it, within the window. Where a style sheet keeps them at the
 * foot of a small screen, the thing is brought above them.
 */
export function placedBy(panel: HTMLElement, thing: HTMLElement | null): void {
  const box = thing?.getBoundingClientRect();
  const around = panel.offsetParent?.getBoundingClientRect();
  if (box === undefined) return;
  const own = panel.getBoundingClientRect();
  if (around === undefined) {
    if (box.bottom > own.top || box.top < header) scrollBy(0, box.top - header - edge);
    return;
  }
  const [left, top] = spotFor(box, own);
  panel.style.setProperty("--top", `${top - around.top}px`);
  const fromRight = getComputedStyle(panel).direction === "rtl";
  const start = fromRight ? around.right - left - own.width : left - around.left;
  panel.style.setProperty("--start", `${start}px`);
}

/** Where there is room, in the window: left and top. */
function spotFor(box: DOMRect, { width, height }: DOMRect): readonly [number, number] {
  const within = (at: number, least: number, most: number) => Math.max(least, Math.min(at, most));
  const left = within(box.left, edge, innerWidth - width - edge);
  if (box.bottom + apart + height + edge < innerHeight) return [left, box.bottom + apart];
  if (box.top - apart - height > header) return [left, box.top - apart - height];
  const top = within(box.top, header, innerHeight - height - edge);
  if (box.right + apart + width + edge < innerWidth) return [box.right + apart, top];
  return [Math.max(edge, box.left - apart - width), top];
}
