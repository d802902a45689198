import { useEffect, useState } from "preact/hooks";
import { type Sheet, sheetMaking } from "#core/report/session-sheet.ts";
import type { Log } from "#core/session/log.ts";

/** So long it works before it gives way: a frame and a half. */
const atOnce = 25;

/** The sheet of a log; a long one is written between the presses. The last one stays while the next is made. */
export function useSheet(log: Log): Sheet | undefined {
  const [made, setMade] = useState<Sheet>();
  useEffect(() => {
    const making = sheetMaking(log);
    let timer = 0;
    const go = () => {
      const until = performance.now() + atOnce;
      do {
        const { done, value } = making.next();
        if (done) return setMade(value ?? undefined);
      } while (performance.now() < until);
      timer = window.setTimeout(go);
    };
    go();
    return () => clearTimeout(timer);
  }, [log]);
  return made;
}
