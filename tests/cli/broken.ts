import fc from "fast-check";

/** A text with a piece of it taken out, doubled, or exchanged for a few characters that mean something to JSON. */
export const broken = (texts: fc.Arbitrary<string>): fc.Arbitrary<string> =>
  fc
    .tuple(
      texts,
      fc.nat(),
      fc.nat({ max: 12 }),
      fc.constantFrom(
        "",
        '"',
        "{",
        "}",
        "[",
        "]",
        ",",
        ":",
        "\\",
        "-",
        "1e999",
        "null",
        "\u0000",
        "é",
        "\u2028",
      ),
      fc.boolean(),
    )
    .map(([text, from, length, piece, doubled]) => {
      const at = text.length === 0 ? 0 : from % text.length;
      const kept = doubled ? text.slice(at, at + length).repeat(2) : "";
      return text.slice(0, at) + kept + piece + text.slice(at + length);
    });
