/** Writes the JSON Schemas of all formats to `public/`. */
import { writeFileSync } from "node:fs";
import { published } from "./published.ts";

for (const { path, text } of published) writeFileSync(path, text);
