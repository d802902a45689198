import { figuresBy } from "#ui/words/figures.ts";

/** Numbers as they are written in German. */
export const figures = figuresBy(",", "Stille", "de");
