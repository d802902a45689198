import wavefile from "wavefile";
import type { Capture } from "#core/measurement/capture.ts";
import type { Sound } from "#core/signals/sound.ts";

/** From one sample up to another, which is where it begins again. */
export interface Loop {
  readonly from: number;
  readonly to: number;
}

/** The greatest number of 24 bits. */
const most = 2 ** 23 - 1;

/** A sound as a WAV file of two channels of 24 bits, its loop points in the 'smpl' chunk. Full scale 1 is the greatest number of 24 bits. */
export function wavOf({ left, right, rate }: Sound, loop?: Loop): Uint8Array {
  const file = new wavefile.WaveFile();
  file.fromScratch(2, rate, "24", [inBits(left), inBits(right)]);
  if (loop !== undefined) file.smpl = sampler(rate, loop);
  return file.toBuffer();
}

/** A capture as a WAV file of 32-bit floats: every sample as it came. */
export function wavOfCapture({ channels, rate }: Capture): Uint8Array {
  const file = new wavefile.WaveFile();
  file.fromScratch(channels.length, rate, "32f", [...channels]);
  return file.toBuffer();
}

const inBits = (channel: Float32Array): Int32Array =>
  Int32Array.from(channel, (sample) => Math.round(Math.max(-1, Math.min(1, sample)) * most));

/** One loop without end, as the multimedia programming interface (1994) has it: its last sample is still played. */
const sampler = (rate: number, { from, to }: Loop) => ({
  chunkId: "smpl",
  chunkSize: 60,
  dwManufacturer: 0,
  dwProduct: 0,
  dwSamplePeriod: Math.round(1e9 / rate),
  dwMIDIUnityNote: 60,
  dwMIDIPitchFraction: 0,
  dwSMPTEFormat: 0,
  dwSMPTEOffset: 0,
  dwNumSampleLoops: 1,
  dwSamplerData: 0,
  loops: [
    {
      dwName: 0,
      dwType: 0,
      dwStart: Math.round(from),
      dwEnd: Math.round(to) - 1,
      dwFraction: 0,
      dwPlayCount: 0,
    },
  ],
});
