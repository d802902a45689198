import { started } from "#tests/support/programs.ts";
import { clock, type Milliseconds, timeOf } from "./capture.ts";
import { type Desk, pause } from "./desk.ts";

/** Frames of silence and of a click, as bytes of two 32-bit floats. */
const silence = (frames: number) => Buffer.alloc(8 * frames);
const click = (frames: number) => Buffer.from(new Float32Array(2 * frames).fill(0.1).buffer);

/**
 * From the moment a sample is written to a plain program that plays to the same device until it is recorded, milliseconds. What
 * that program keeps in hand is in it, so what recording alone adds to a measurement is less.
 */
export async function pathDelays(desk: Desk, count: number): Promise<readonly Milliseconds[]> {
  const { pulse, sink } = desk;
  const recorder = await desk.listen(5);
  const { child, stop } = started(
    "pacat",
    [
      `--device=${sink.name}`,
      "--raw",
      "--format=float32le",
      `--rate=${sink.rate}`,
      "--channels=2",
      "--latency-msec=5",
    ],
    { env: pulse.env, stdio: ["pipe", "ignore", "inherit"] },
  );
  const written: number[] = [];
  await pause(0.3);
  for (let n = 0; n < count; n += 1) {
    // It has run dry: what is written now is played at once.
    written.push(clock());
    child.stdin?.write(Buffer.concat([click(sink.rate / 100), silence(sink.rate / 20)]));
    await pause(0.4);
  }
  await stop();
  const recording = await recorder.stop();
  return written.map((at) => {
    const n = recording.left.findIndex((x, frame) => x !== 0 && timeOf(recording, frame) > at);
    return n < 0 ? Number.NaN : timeOf(recording, n) - at;
  });
}
