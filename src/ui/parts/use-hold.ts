import { useEffect, useRef } from "preact/hooks";

/** Until a press counts as held, and from then on between two steps; milliseconds. */
const [before, between] = [500, 300];

/** What a button needs so that a press does something once, and holding it down does it again and again. */
export function useHold(act: () => void) {
  const hold = useRef<{ timer?: ReturnType<typeof setTimeout>; repeated?: boolean }>({});
  const stop = () => clearTimeout(hold.current.timer);
  const repeat = () => {
    act();
    hold.current = { timer: setTimeout(repeat, between), repeated: true };
  };
  // biome-ignore lint/correctness/useExhaustiveDependencies: it ends when the button goes, and then only
  useEffect(() => stop, []);
  return {
    /** Of a long press the click at its end is no step more. */
    onClick: () => {
      if (!hold.current.repeated) act();
      hold.current.repeated = false;
    },
    onPointerDown: () => {
      hold.current = { timer: setTimeout(repeat, before) };
    },
    onPointerUp: stop,
    onPointerLeave: stop,
    onPointerCancel: stop,
  };
}
