import type { Hertz, Seconds } from "#core/units/units.ts";
import type { Device } from "./route.ts";

/** What a browser does to speech, and must not do to a measurement. */
const processings = ["echoCancellation", "noiseSuppression", "autoGainControl"] as const;
type Processing = (typeof processings)[number];

/** What the browser gave when an input was asked for, by its own account. */
export interface Granted {
  readonly device: Device;
  /** What it does to the sound although it was asked not to. */
  readonly processed: readonly Processing[];
  /** Of this it does not say whether it does it. */
  readonly unsaid: readonly Processing[];
  /** How many channels it says there are; undefined where it does not. How many there truly are the capture shows. */
  readonly channels: number | undefined;
  /** Samples a second of what is handed on. */
  readonly rate: Hertz;
  /** Samples a second of the input, where it is said: another one means that the browser resamples. */
  readonly inputRate: Hertz | undefined;
  /** Between the input and the program, where it is said. */
  readonly latency: Seconds | undefined;
  /** Of the context that records, where it takes one. */
  readonly baseLatency: Seconds | undefined;
}

/** An input as it is to be: left alone, with both sides. */
export const asked = (input: Device | undefined): MediaStreamConstraints => ({
  audio: {
    echoCancellation: false,
    noiseSuppression: false,
    autoGainControl: false,
    channelCount: { ideal: 2 },
    ...(input && { deviceId: { exact: input.id } }),
  },
});

/** What a track says of itself, whose samples come at a rate, by a context where one is taken. */
export function grantedOf(
  track: MediaStreamTrack,
  rate: Hertz,
  baseLatency: Seconds | undefined,
): Granted {
  const settings: MediaTrackSettings & { readonly latency?: Seconds } = track.getSettings();
  return {
    device: { id: settings.deviceId ?? "", name: track.label },
    processed: processings.filter((one) => settings[one] === true),
    unsaid: processings.filter((one) => settings[one] === undefined),
    channels: settings.channelCount,
    rate,
    inputRate: settings.sampleRate,
    latency: settings.latency,
    baseLatency,
  };
}
