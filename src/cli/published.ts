import { z } from "zod";
import { caseVersion } from "#core/session/case.ts";
import { caseFormat } from "./case-format.ts";
import { diagnosisFormat, diagnosisVersion } from "./diagnosis-format.ts";
import { measurementFormat, measurementVersion } from "./measurement-format.ts";

/** A JSON Schema as it is published: a file under `public/`, and the text that belongs in it. */
export interface Published {
  readonly path: string;
  readonly text: string;
}

/** Draft 2020-12. Unknown keys are allowed, so that a later version may add some. */
const schemaOf = (name: string, version: number, format: z.ZodType): string => {
  const { $schema, ...rest } = z.toJSONSchema(format, { io: "input", target: "draft-2020-12" });
  return `${JSON.stringify({ $schema, $id: `urn:leftwright:${name}:${version}`, ...rest }, null, 2)}\n`;
};

/** All formats, as JSON Schema. */
export const published: readonly Published[] = [
  { path: "public/case.schema.json", text: schemaOf("case", caseVersion, caseFormat) },
  {
    path: "public/diagnosis.schema.json",
    text: schemaOf("diagnosis", diagnosisVersion, diagnosisFormat),
  },
  {
    path: "public/measurement.schema.json",
    text: schemaOf("measurement", measurementVersion, measurementFormat),
  },
];
