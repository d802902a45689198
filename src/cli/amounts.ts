import { z } from "zod";

/** Numbers of a format, by what they are of. */
export const probability = (of: string) => z.number().min(0).max(1).describe(`${of}, from 0 to 1.`);
export const seconds = (of: string) => z.number().min(0).describe(`${of}, in s.`);
