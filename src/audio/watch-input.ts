import type { Listening } from "./listening.ts";
import type { RecorderTrouble } from "./recorder.ts";
import { watchClock } from "./watch-clock.ts";

/** Watches all that can befall an input that is open; returns how to stop that. */
export function watchInput(
  track: MediaStreamTrack,
  { context, heard }: Listening,
  onTrouble: (why: RecorderTrouble) => void,
): () => void {
  const onState = () => {
    if (context?.state !== "running") onTrouble(context?.state === "closed" ? "lost" : "suspended");
  };
  const onVisibility = () => {
    if (document.hidden) onTrouble("hidden");
  };
  const onDevices = async () => {
    if (!(await isThere(track.getSettings()))) onTrouble("gone");
  };
  type Told = readonly [EventTarget | undefined, string, () => void];
  const told: readonly Told[] = [
    [track, "ended", () => onTrouble("gone")],
    [track, "mute", () => onTrouble("muted")],
    [context, "statechange", onState],
    [document, "visibilitychange", onVisibility],
    [navigator.mediaDevices, "devicechange", onDevices],
  ];
  for (const [who, what, happens] of told) who?.addEventListener(what, happens);
  const onLook = () => {
    if (track.readyState === "ended") onTrouble("gone");
    else if (track.muted) onTrouble("muted");
    // Asking what there is makes a browser look, which else may learn of nothing.
    else void onDevices();
  };
  const clock = {
    state: "running",
    get currentTime() {
      return heard();
    },
  };
  const unwatch = watchClock(clock, onLook, () => onTrouble("lost"));
  return () => {
    unwatch();
    for (const [who, what, happens] of told) who?.removeEventListener(what, happens);
  };
}

/** Whether an input is still there, and still the same: the system's own may be another one by now. */
async function isThere({ deviceId, groupId }: MediaTrackSettings): Promise<boolean> {
  const all = await navigator.mediaDevices.enumerateDevices().catch(() => []);
  const inputs = all.filter(({ kind }) => kind === "audioinput");
  // A browser that tells nothing says nothing against it.
  if (deviceId === undefined || inputs.every((one) => one.deviceId === "")) return true;
  return inputs.some(
    (one) => one.deviceId === deviceId && (groupId === undefined || one.groupId === groupId),
  );
}
