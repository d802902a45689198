import type { Capture } from "#core/measurement/capture.ts";

/** A result as the page hands it over: the samples of each channel as text. */
export interface Packed {
  readonly [part: string]: unknown;
  readonly capture: { readonly rate: number; readonly channels: readonly string[] };
}

/** The samples again. */
export const captureOf = ({ capture: { rate, channels } }: Packed): Capture => ({
  rate,
  channels: channels.map((text) => {
    const bytes = new Uint8Array(Buffer.from(text, "base64"));
    return new Float32Array(bytes.buffer);
  }),
});
