import type { ComponentChildren } from "preact";
import { useEffect, useRef } from "preact/hooks";

interface Props {
  readonly label: string;
  readonly kind: string;
  readonly children: ComponentChildren;
}

/** Buttons with one tab stop among them, the pressed one or the first, and arrow keys from one to the next. */
export function Roving({ label, kind, children }: Props) {
  const group = useRef<HTMLFieldSetElement>(null);
  useEffect(() => {
    if (group.current) stopAt(group.current, undefined);
  });
  return (
    <fieldset
      class={kind}
      aria-label={label}
      ref={group}
      onKeyDown={(event) => travel(event.currentTarget, event)}
      onFocusIn={({ currentTarget, target }) =>
        stopAt(currentTarget, target instanceof HTMLButtonElement ? target : undefined)
      }
    >
      {children}
    </fieldset>
  );
}

const buttonsIn = (group: Element): readonly HTMLButtonElement[] => [
  ...group.querySelectorAll<HTMLButtonElement>("button:not(:disabled)"),
];

/** Makes one of them the tab stop: the focused one, else the pressed one, else the first. */
function stopAt(group: Element, wanted: HTMLButtonElement | undefined): void {
  const all = buttonsIn(group);
  const focused = all.find((button) => button === document.activeElement);
  const pressed = all.find((button) => button.getAttribute("aria-pressed") === "true");
  const stop = wanted ?? focused ?? pressed ?? all[0];
  for (const button of all) button.tabIndex = button === stop ? 0 : -1;
}

const steps: Readonly<Record<string, readonly [x: number, y: number]>> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, -1],
  ArrowDown: [0, 1],
};

function travel(group: Element, event: KeyboardEvent): void {
  const step = steps[event.key];
  const from = document.activeElement;
  if (step === undefined || !(from instanceof HTMLButtonElement) || !group.contains(from)) return;
  event.preventDefault();
  nearest(buttonsIn(group), from, step)?.focus();
}

/** The nearest button in a direction; along a row that wraps, the next one in order. */
function nearest(
  all: readonly HTMLButtonElement[],
  from: HTMLButtonElement,
  [dx, dy]: readonly [x: number, y: number],
): HTMLButtonElement | undefined {
  const middle = (one: Element) => {
    const { left, top, width, height } = one.getBoundingClientRect();
    return { x: left + width / 2, y: top + height / 2 };
  };
  const own = middle(from);
  const ahead = all
    .filter((one) => one !== from)
    .map((one) => {
      const { x, y } = middle(one);
      const [along, beside] = [
        (x - own.x) * dx + (y - own.y) * dy,
        Math.abs((x - own.x) * dy) + Math.abs((y - own.y) * dx),
      ];
      return { one, along, cost: along + 2 * beside };
    })
    .filter(({ along, cost }) => along > 8 && (dy !== 0 || cost < 3 * along))
    .sort((a, b) => a.cost - b.cost);
  return ahead[0]?.one ?? all[all.indexOf(from) + dx + dy];
}
