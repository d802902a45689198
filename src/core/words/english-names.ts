/**
 * Wants no 'the': written as a name of its own ('Stage left amp', 'Anna's box'), with such a word before it already, or counted. What
 * the program names begins with a small letter, or with letters that stand for words, as 'XLR lead'.
 */
const alone = /^\p{Lu}\p{Ll}|^(my|our|the) |\d$/u;

/** A part in a sentence: 'the mixer', 'amplifier 2', 'Stage left amp'. */
export const withThe = (part: string): string => (alone.test(part) ? part : `the ${part}`);
