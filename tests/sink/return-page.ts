import { createOutputs } from "#audio/outputs.ts";
import type { Device } from "#audio/route.ts";
import { createMeasurer } from "#audio/web-measurer.ts";
import { createRecorder } from "#audio/web-recorder.ts";
import type { Capture } from "#core/measurement/capture.ts";

/*
 * The real recorder and the real measurer behind buttons. Driven from outside, where the wire is.
 */

const recorder = createRecorder();
const measurer = createMeasurer(recorder);
measurer.warm();
const outputs = createOutputs();

let input: Device | undefined;
let ended: Promise<object> = Promise.resolve({});
const told: unknown[] = [];

const onPress = (id: string, press: () => Promise<object>) =>
  document.getElementById(id)?.addEventListener("click", () => {
    told.length = 0;
    ended = press();
  });

onPress("record", () => recorder.record({ input, longest: 20, keep: true }));
onPress("measure", () =>
  measurer.measure({ input, onProgress: (progress) => void told.push(progress) }),
);
onPress("find", () => measurer.findLevel({ input }));
onPress("watch", () =>
  measurer.watch("flex-tones", {
    input,
    onBlock: (channels, at) => void told.push([at, ...channels.map(sizeOf)]),
  }),
);
document.getElementById("silence")?.addEventListener("click", () => {
  measurer.silence();
  recorder.stop();
});

const sizeOf = (samples: Float32Array) => Math.sqrt(samples.reduce((sum, x) => sum + x * x, 0));

/** What is played to and what is recorded, by their names. */
async function use(output: string, source: string): Promise<void> {
  const device = (await outputs.known()).find(({ name }) => name === output);
  if (device) measurer.use({ device, first: 0 });
  input = (await recorder.known()).find(({ name }) => name === source);
  if (!device || !input) throw new Error(`there is no ${output} or no ${source}`);
}

/** What was recorded as text, each channel as its bytes in base 64. */
async function packed(): Promise<object> {
  const result = (await ended) as { readonly capture?: Capture };
  const { channels = [], rate } = result.capture ?? {};
  return { ...result, capture: { rate, channels: channels.map(textOf) } };
}

function textOf({ buffer, byteOffset, byteLength }: Float32Array): string {
  const bytes = new Uint8Array(buffer, byteOffset, byteLength);
  const pieces: string[] = [];
  for (let at = 0; at < bytes.length; at += 0x6000)
    pieces.push(btoa(String.fromCharCode(...bytes.subarray(at, at + 0x6000))));
  return pieces.join("");
}

Object.assign(globalThis, { stage: { recorder, measurer, told, use, packed } });
