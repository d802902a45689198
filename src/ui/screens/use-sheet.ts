import { useEffect, useState } from "preact/hooks";
import { type Sheet, sheetMaking } from "#core/report/session-sheet.ts";
import type { Log } from "#core/session/log.ts";

/** So long it works before it gives way: a frame and a half. */
const atOnce = 25;

interface Made {
  readonly sheet: Sheet | undefined;
  /** It is of the log as it is now. */
  readonly isNew: boolean;
}

/** The sheet of a log; a long one is written between the presses. The last one stays while the next is made. */
export function useSheet(log: Log): Made {
  const [made, setMade] = useState<{ readonly of: Log; readonly sheet: Sheet | undefined }>();
  useEffect(() => {
    const making = sheetMaking(log);
    let timer = 0;
    const go = () => {
      const until = performance.now() + atOnce;
      do {
        const { done, value } = making.next();
        if (done) return setMade({ of: log, sheet: value ?? undefined });
      } while (performance.now() < until);
      timer = window.setTimeout(go);
    };
    go();
    return () => clearTimeout(timer);
  }, [log]);
  return { sheet: made?.sheet, isNew: made?.of === log };
}
