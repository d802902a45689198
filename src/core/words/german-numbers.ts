/** A number or a size as it is written in German: with a comma before its tenths, and a minus that is one. */
export const withComma = (written: string): string => written.replace("-", "−").replace(".", ",");

/** A number with so many places. */
export const decimal = (value: number, places: number): string => withComma(value.toFixed(places));
