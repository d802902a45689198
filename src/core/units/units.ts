/** Plain aliases: a number's unit stands in its type. */
export type Ohms = number;
export type Volts = number;
export type Farads = number;
export type Hertz = number;
export type Seconds = number;
export type Decibels = number;
/** Zero to one. */
export type Probability = number;
/** A level against full scale of the converter, decibels. */
export type DecibelsFullScale = number;
