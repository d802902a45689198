/** A number as so many bytes, the lowest first. */
export const number = (value: number, bytes: number): readonly number[] =>
  Array.from({ length: bytes }, (_, at) => Math.floor(value / 256 ** at) % 256);

export const letters = (text: string): readonly number[] =>
  [...text].map((one) => one.charCodeAt(0));

/** A chunk, with its byte of padding; `size` where it claims another than it has. */
export const chunk = (
  name: string,
  inside: readonly number[],
  size = inside.length,
): readonly number[] => [
  ...letters(name),
  ...number(size, 4),
  ...inside,
  ...(inside.length % 2 === 1 ? [0] : []),
];

interface Said {
  readonly code?: number;
  readonly channels?: number;
  readonly rate?: number;
  readonly bits?: number;
  readonly frame?: number;
  readonly more?: readonly number[];
}

/** What a format chunk says; what is left out is that of two channels of 16 bits at 48 kHz. */
export function format(said: Said = {}): readonly number[] {
  const { code = 1, channels = 2, rate = 48_000, bits = 16, more = [] } = said;
  const { frame = (channels * bits) / 8 } = said;
  return chunk("fmt ", [
    ...number(code, 2),
    ...number(channels, 2),
    ...number(rate, 4),
    ...number((rate * frame) % 2 ** 32, 4),
    ...number(frame, 2),
    ...number(bits, 2),
    ...more,
  ]);
}

/** A file of some chunks; `size` where it claims another than it has. */
export function riff(chunks: readonly number[], { name = "RIFF", form = "WAVE", size = 0 } = {}) {
  const claimed = size === 0 ? chunks.length + 4 : size;
  return Uint8Array.from([...letters(name), ...number(claimed, 4), ...letters(form), ...chunks]);
}
