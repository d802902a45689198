/** Where something may be let go: the key of an element, and what is said while it is held there. */
export interface Target {
  readonly key: string;
  readonly said: string;
}

/** What a drag is about, as the screen has it. */
export interface Dragging {
  /** What the hand holds, in words. */
  readonly said: string;
  /** Where it fits, worked out when the hand begins to move. */
  readonly targets: () => readonly Target[];
  /** Where it was let go; `fits` where that was one of the targets. */
  readonly drop: (key: string, fits: boolean) => void;
}

/** So far a pointer moves before it is a drag, and so near a socket it is meant, in CSS pixels. */
const [least, reach] = [6, 44];
/** So near an edge of the window it scrolls, and by how much at a time. */
const [edge, scrollStep] = [56, 14];

interface Spot {
  readonly element: HTMLElement;
  readonly key: string;
  readonly said: string | undefined;
  readonly box: { left: number; top: number; right: number; bottom: number };
}

/** Follows a pointer from its press on until it lets go. While it moves nothing is drawn anew but what is in the hand. */
export function follow(press: PointerEvent, root: HTMLElement, dragging: Dragging): void {
  let held: Held | undefined;
  const begun = new AbortController();
  const { signal } = begun;
  const move = (event: PointerEvent) => {
    if (event.pointerId !== press.pointerId) return;
    const far = Math.hypot(event.clientX - press.clientX, event.clientY - press.clientY);
    if (held === undefined && far < least) return;
    held ??= new Held(root, dragging);
    held.moved(event);
  };
  const end = (event: PointerEvent) => {
    if (event.pointerId !== press.pointerId) return;
    begun.abort();
    held?.laidDown();
    if (held === undefined || event.type === "pointercancel") return;
    noClick();
    if (held.near !== undefined) dragging.drop(held.near.key, held.near.said !== undefined);
  };
  window.addEventListener("pointermove", move, { signal });
  window.addEventListener("pointerup", end, { signal });
  window.addEventListener("pointercancel", end, { signal });
}

/** The click that a browser makes of the end of a drag is none. */
function noClick(): void {
  const stop = (event: Event) => {
    event.stopPropagation();
    event.preventDefault();
  };
  window.addEventListener("click", stop, { capture: true, once: true });
  setTimeout(() => window.removeEventListener("click", stop, true));
}

/** What is in the hand, and the places it may go, measured once. */
class Held {
  near: Spot | undefined;
  readonly #root: HTMLElement;
  readonly #ghost: HTMLElement;
  readonly #said: string;
  readonly #spots: readonly Spot[];

  constructor(root: HTMLElement, { said, targets }: Dragging) {
    this.#root = root;
    this.#said = said;
    this.#spots = measured(root, new Map(targets().map(({ key, said: words }) => [key, words])));
    this.#ghost = document.createElement("span");
    this.#ghost.className = "ghost tape";
    this.#ghost.ariaHidden = "true";
    this.#ghost.textContent = said;
    // A pointer is told from the left in every script.
    this.#ghost.style.left = "0";
    root.append(this.#ghost);
    root.classList.add("dragging");
    for (const { element, said: words } of this.#spots)
      element.classList.toggle("fits", words !== undefined);
  }

  moved({ clientX, clientY }: PointerEvent): void {
    const [x, y] = [clientX + scrollX, clientY + scrollY];
    this.#ghost.style.transform = `translate(${clientX + 14}px, ${clientY + 14}px)`;
    const near = nearest(this.#spots, x, y);
    if (near !== this.near) this.#point(near);
    if (clientY < edge) scrollBy(0, -scrollStep);
    else if (clientY > innerHeight - edge) scrollBy(0, scrollStep);
  }

  laidDown(): void {
    this.#ghost.remove();
    this.#root.classList.remove("dragging");
    this.near?.element.classList.remove("near");
    for (const { element } of this.#spots) element.classList.remove("fits");
  }

  #point(near: Spot | undefined): void {
    this.near?.element.classList.remove("near");
    near?.element.classList.add("near");
    this.near = near;
    this.#ghost.textContent = near?.said ?? this.#said;
    this.#ghost.classList.toggle("yellow", near?.said !== undefined);
  }
}

/** Sockets and boxes where they lie on the page. */
const measured = (root: HTMLElement, said: ReadonlyMap<string, string>): readonly Spot[] =>
  [...root.querySelectorAll<HTMLElement>("[data-spot], .box [data-thing]")].map((element) => {
    const key = element.dataset.spot ?? element.dataset.thing ?? "";
    const { left, top, right, bottom } = element.getBoundingClientRect();
    return {
      element,
      key,
      said: said.get(key),
      box: {
        left: left + scrollX,
        top: top + scrollY,
        right: right + scrollX,
        bottom: bottom + scrollY,
      },
    };
  });

/** The nearest place within reach; one that fits before one that does not. */
function nearest(spots: readonly Spot[], x: number, y: number): Spot | undefined {
  let best: Spot | undefined;
  let least = Number.POSITIVE_INFINITY;
  for (const spot of spots) {
    const { left, top, right, bottom } = spot.box;
    const away = Math.hypot(Math.max(left - x, 0, x - right), Math.max(top - y, 0, y - bottom));
    const cost = spot.said === undefined ? away + reach / 2 : away;
    if (away > (spot.said === undefined ? 4 : reach) || cost >= least) continue;
    best = spot;
    least = cost;
  }
  return best;
}
