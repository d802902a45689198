import type { Device } from "./route.ts";

/** Two names for what the system uses, which may change under them. */
const followers = ["default", "communications"];

/** The devices of a kind whose names may be seen; none where they may not. */
export async function namedDevices(kind: "audioinput" | "audiooutput"): Promise<readonly Device[]> {
  const all = (await navigator.mediaDevices?.enumerateDevices().catch(() => [])) ?? [];
  return all
    .filter((one) => one.kind === kind && one.label !== "")
    .filter(({ deviceId }) => deviceId !== "" && !followers.includes(deviceId))
    .map(({ deviceId, label }) => ({ id: deviceId, name: label }));
}

/** Asks to be shown the names of devices, which takes the microphone: it is closed again before this is told. What was thrown, if it was. */
export async function askForNames(): Promise<unknown> {
  try {
    const stream = await navigator.mediaDevices.getUserMedia({ audio: true });
    for (const track of stream.getTracks()) track.stop();
    return undefined;
  } catch (error) {
    return error ?? "refused";
  }
}
