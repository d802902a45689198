/** Written as a name of its own: 'Stage left amp', 'Anna's box'. What the program names begins with a small letter, or with letters that stand for words, as 'XLR lead'. */
const proper = /^\p{Lu}\p{Ll}/u;
/** Has a word before it already that no 'the' goes with. */
const owned = /^(my|our|your|his|her|its|their|the|a|an|this|that)\s/i;

/** A part in a sentence: 'the mixer', 'amplifier 2', 'Stage left amp'. */
export const withThe = (part: string): string =>
  proper.test(part) || owned.test(part) || /\d$/.test(part) ? part : `the ${part}`;
