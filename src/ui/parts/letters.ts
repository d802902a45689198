/** How wide letters are in bold, in parts of the font's size, rather too wide than too narrow; the first that fits. */
const widths: readonly (readonly [RegExp, number])[] = [
  [/^[ijlI.,:;'|!’·]$/u, 0.4],
  [/^[\sfrt()[\]/"“”„-]$/u, 0.52],
  [/^[mwMW@%—…]$/u, 1.12],
  [/^\p{Lu}$/u, 0.84],
  [/^[\p{Script=Latin}\p{Script=Greek}\p{Nd}]$/u, 0.71],
  [/^[\p{Script=Cyrillic}\p{Script=Hebrew}\p{Script=Arabic}]$/u, 0.8],
  [/^\p{M}$/u, 0],
];
/** Signs of East Asia, and pictures. */
const widest = 1.4;

const letterWidth = (letter: string): number =>
  widths.find(([letters]) => letters.test(letter))?.[1] ?? widest;

/** About how wide a text is in bold, in parts of the font's size. Of the usual fonts of systems: values from memory. */
export const textWidth = (text: string): number =>
  [...text.normalize("NFC")].reduce((sum, letter) => sum + letterWidth(letter), 0);

/** A text that fits, shortened where it must be. */
export function fitting(text: string, room: number): string {
  if (textWidth(text) <= room) return text;
  const letters = [...text.normalize("NFC")];
  let left = room - letterWidth("…");
  const most = letters.findIndex((letter) => {
    left -= letterWidth(letter);
    return left < 0;
  });
  return `${letters.slice(0, most).join("").trimEnd()}…`;
}
