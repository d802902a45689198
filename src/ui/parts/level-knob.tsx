import { useRef } from "preact/hooks";

interface Props {
  readonly label: string;
  /** From nought to one. */
  readonly up: number;
  /** In words, with what follows from it. */
  readonly said: string;
  /** Where it should stand. */
  readonly target?: number | undefined;
  /** Nobody said where it stands. */
  readonly guessed: boolean;
  /** It is being turned. */
  readonly onTurn: (up: number) => void;
  /** It was let go there. */
  readonly onLetGo: (up: number) => void;
}

/** A finger moves so far from all the way down to all the way up, CSS pixels. */
const travel = 170;
const keySteps: Readonly<Record<string, number>> = {
  ArrowUp: 0.02,
  ArrowRight: 0.02,
  ArrowDown: -0.02,
  ArrowLeft: -0.02,
  PageUp: 0.1,
  PageDown: -0.1,
  Home: -1,
  End: 1,
};
/** So long after the last key it counts as let go. */
const settles = 350;

const within = (up: number): number => Math.min(1, Math.max(0, Math.round(1000 * up) / 1000));

/** A knob that is turned by dragging up or to the right, or with the arrow keys. What it does is shown while it turns; letting go is what enters it. */
export function LevelKnob({ label, up, said, target, guessed, onTurn, onLetGo }: Props) {
  const keys = useKeysOf(up, onTurn, onLetGo);
  const drag = useDragOf(up, onTurn, onLetGo);
  return (
    <div
      class={guessed ? "level-knob guessed" : "level-knob"}
      role="slider"
      tabIndex={0}
      aria-label={label}
      aria-valuemin={0}
      aria-valuemax={10}
      aria-valuenow={Math.round(100 * up) / 10}
      aria-valuetext={said}
      {...drag}
      {...keys}
    >
      <svg viewBox="-40 -40 80 80" aria-hidden="true">
        {marks.map((mark) => (
          <path key={mark} class="tick" d={ray(mark, 27, mark % 0.5 === 0 ? 34 : 31)} />
        ))}
        <circle class="dial" r="22" />
        <path class="pointer" d={ray(up, 6, 22)} />
        {target !== undefined && (
          <path
            class="target"
            d="M-6 -39H6L0 -29Z"
            transform={`rotate(${(degrees(target) + 90).toFixed(1)})`}
          />
        )}
      </svg>
    </div>
  );
}

const marks = Array.from({ length: 11 }, (_, at) => at / 10);

/** From half past seven to half past four, as such knobs go. */
const degrees = (up: number): number => 135 + 270 * up;

function ray(up: number, from: number, to: number): string {
  const angle = (degrees(up) * Math.PI) / 180;
  const point = (far: number) =>
    `${(far * Math.cos(angle)).toFixed(2)} ${(far * Math.sin(angle)).toFixed(2)}`;
  return `M${point(from)}L${point(to)}`;
}

function useKeysOf(up: number, onTurn: Props["onTurn"], onLetGo: Props["onLetGo"]) {
  const waits = useRef<{ timer: ReturnType<typeof setTimeout>; up: number } | undefined>(undefined);
  const settle = () => {
    const waiting = waits.current;
    if (waiting === undefined) return;
    clearTimeout(waiting.timer);
    waits.current = undefined;
    onLetGo(waiting.up);
  };
  return {
    onKeyDown: (event: KeyboardEvent) => {
      const step = keySteps[event.key];
      if (step === undefined || event.ctrlKey || event.metaKey || event.altKey) return;
      event.preventDefault();
      clearTimeout(waits.current?.timer);
      const next = within((waits.current?.up ?? up) + step);
      waits.current = { up: next, timer: setTimeout(settle, settles) };
      onTurn(next);
    },
    onBlur: settle,
  };
}

interface Press {
  readonly pointer: number;
  readonly x: number;
  readonly y: number;
  readonly from: number;
  up: number;
}

function useDragOf(up: number, onTurn: Props["onTurn"], onLetGo: Props["onLetGo"]) {
  const press = useRef<Press | undefined>(undefined);
  return {
    onPointerDown: (event: PointerEvent & { readonly currentTarget: HTMLElement }) => {
      if (event.button !== 0) return;
      event.preventDefault();
      event.currentTarget.focus({ preventScroll: true });
      event.currentTarget.setPointerCapture(event.pointerId);
      const { pointerId: pointer, clientX: x, clientY: y } = event;
      press.current = { pointer, x, y, from: up, up };
    },
    onPointerMove: ({ pointerId, clientX, clientY }: PointerEvent) => {
      const held = press.current;
      if (held?.pointer !== pointerId) return;
      held.up = within(held.from + (clientX - held.x + held.y - clientY) / travel);
      onTurn(held.up);
    },
    onPointerUp: ({ pointerId }: PointerEvent) => {
      const held = press.current;
      if (held?.pointer !== pointerId) return;
      press.current = undefined;
      if (held.up !== held.from) onLetGo(held.up);
    },
    onPointerCancel: ({ pointerId }: PointerEvent) => {
      const held = press.current;
      if (held?.pointer !== pointerId) return;
      press.current = undefined;
      onTurn(held.from);
    },
  };
}
