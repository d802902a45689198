/** Said alone, as one file each; so are the names of the sides. */
export const phrases = [
  "left",
  "right",
  "middle",
  "point-to-the-side",
  "point-to-where",
  "raise-if-nothing",
  "volume-down",
  "thank-you",
  "take-them-off",
  "listen",
  "once-more",
] as const;
export type Phrase = (typeof phrases)[number];

/** Said before a number. */
const openings = ["position", "output", "and"] as const;

/** One to nineteen, in order. */
export const small = [
  "one",
  "two",
  "three",
  "four",
  "five",
  "six",
  "seven",
  "eight",
  "nine",
  "ten",
  "eleven",
  "twelve",
  "thirteen",
  "fourteen",
  "fifteen",
  "sixteen",
  "seventeen",
  "eighteen",
  "nineteen",
] as const;

/** Twenty, thirty, up to ninety, in order. */
export const tens = [
  "twenty",
  "thirty",
  "forty",
  "fifty",
  "sixty",
  "seventy",
  "eighty",
  "ninety",
] as const;

/** One to nine, in order, for languages that say 'one-and-twenty'. */
export const onesBefore = [
  "one-and",
  "two-and",
  "three-and",
  "four-and",
  "five-and",
  "six-and",
  "seven-and",
  "eight-and",
  "nine-and",
] as const;

/** All that is ever spoken, in whichever language. Each is a file of its own, `prompts/<language>/<word>.wav`. */
export const promptWords = [...phrases, ...openings, ...small, ...tens, ...onesBefore] as const;
export type PromptWord = (typeof promptWords)[number];

const listed = (words: readonly string[], word: string): boolean => words.includes(word);

/** Whether more is always said after it: the voice stays up. */
export const opens = (word: PromptWord): boolean => listed(openings, word) || isBefore(word);

/** Whether the tens follow at once, as 'twenty' does 'one-and'. */
export const isBefore = (word: PromptWord): boolean => listed(onesBefore, word);

/** Whether a number below ten may follow at once, as 'one' does 'twenty'. */
export const isTens = (word: PromptWord): boolean => listed(tens, word);

/** Whether it is a number below ten. */
export const isDigit = (word: PromptWord): boolean => listed(small.slice(0, 9), word);
