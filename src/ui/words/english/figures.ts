import { figuresBy } from "#ui/words/figures.ts";

/** Numbers as they are written in English. */
export const figures = figuresBy(".", "silent", "en-GB");
