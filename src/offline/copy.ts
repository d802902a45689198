import type { Said, Told } from "./told.ts";

/** How the copy of the program on this device stands. */
export interface CopyState {
  /** All its files are here: it opens without a network. */
  readonly kept: boolean;
  /** A newer version is here too, and waits to be asked for. */
  readonly newer: boolean;
  /** The browser offers to install it among the device's programs. */
  readonly installable: boolean;
}

/** The copy of the program on this device. No member ever throws. */
export interface Copy {
  readonly world: () => CopyState;
  /** Calls back on every change, until what it gives is called. */
  readonly subscribe: (listener: () => void) => () => void;
  /** The page begins anew with the newer version. */
  readonly takeNewer: () => void;
  /** Asks the browser to install it. */
  readonly install: () => void;
}

/** What some browsers send where a page may be installed. */
interface InstallOffer extends Event {
  readonly prompt: () => Promise<unknown>;
}

/** The real one. `worker` is the service worker's file, left out while developing; where there are none to be had the page lives from the network. */
export function createCopy(worker: string | undefined): Copy {
  let state: CopyState = { kept: false, newer: false, installable: false };
  let offer: InstallOffer | undefined;
  const listeners = new Set<() => void>();
  const change = (some: Partial<CopyState>) => {
    state = { ...state, ...some };
    for (const listener of listeners) listener();
  };
  addEventListener("beforeinstallprompt", (event) => {
    event.preventDefault();
    offer = event as InstallOffer;
    change({ installable: true });
  });
  addEventListener("appinstalled", () => change({ installable: false }));
  if (worker !== undefined) keepUp(worker, change);
  return {
    world: () => state,
    subscribe: (listener) => {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    takeNewer: () => void say("take"),
    install: () => {
      // An offer counts once.
      offer?.prompt().catch(() => undefined);
      change({ installable: false });
    },
  };
}

/** Has the files put away once the first screen stands, and listens to what becomes of them. */
function keepUp(worker: string, change: (some: Partial<CopyState>) => void): void {
  const { serviceWorker } = navigator;
  // Not where storage is forbidden, nor where a page comes from neither https nor this very device.
  if (serviceWorker === undefined) return;
  serviceWorker.addEventListener("message", ({ data }: MessageEvent<Told>) => {
    if ("taken" in data) location.reload();
    else change({ kept: data.kept, newer: data.newer });
  });
  const begin = () =>
    serviceWorker.register(worker, { updateViaCache: "none" }).then(
      () => say("here"),
      () => undefined,
    );
  const whenIdle = () =>
    "requestIdleCallback" in globalThis ? requestIdleCallback(begin) : setTimeout(begin, 500);
  if (document.readyState === "complete") whenIdle();
  else addEventListener("load", whenIdle, { once: true });
}

/** Says something to the one that serves, once there is one. */
async function say(said: Said): Promise<void> {
  const { active } = await navigator.serviceWorker.ready;
  active?.postMessage(said);
}
