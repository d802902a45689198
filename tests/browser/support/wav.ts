const [rate, headBytes] = [8000, 44];

/** A tone as a WAV of 16 bits at 8 kHz, a second long unless told otherwise. */
export function wav(name: string, seconds = 1): File {
  const samples = Int16Array.from({ length: seconds * rate }, (_, at) => 3000 * Math.sin(at / 3));
  const head = new DataView(new ArrayBuffer(headBytes));
  const put = (at: number, text: string) =>
    [...text].forEach((letter, index) => {
      head.setUint8(at + index, letter.charCodeAt(0));
    });
  put(0, "RIFF");
  head.setUint32(4, headBytes - 8 + samples.byteLength, true);
  put(8, "WAVEfmt ");
  for (const [at, value] of [
    [16, 16],
    [24, rate],
    [28, 2 * rate],
    [40, samples.byteLength],
  ] as const)
    head.setUint32(at, value, true);
  for (const [at, value] of [
    [20, 1],
    [22, 1],
    [32, 2],
    [34, 16],
  ] as const)
    head.setUint16(at, value, true);
  put(36, "data");
  return new File([head, samples], name, { type: "audio/wav" });
}
