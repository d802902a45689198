import { readFileSync } from "node:fs";
import { describe, expect, expectTypeOf, test } from "vitest";
import { z } from "zod";
import type { CaseEntry } from "#cli/case-format.ts";
import type { findingFormat } from "#cli/finding-format.ts";
import type { moveFormat } from "#cli/move-format.ts";
import { published } from "#cli/published.ts";
import type { rigFormat } from "#cli/rig-format.ts";
import { run } from "#cli/run.ts";
import type { Answered, Noticed } from "#core/checks/finding.ts";
import type { Finding, Log, Move, Rig, Said } from "#core/index.ts";
import { type Anything, example } from "./command.ts";

const text = JSON.stringify(example());
const diagnosed = async () => {
  const { out } = await run(["-"], async () => ({ text }));
  return JSON.parse(out);
};

describe("the published schemas", () => {
  test.for(published)("$path is what the formats generate", ({ path, text: generated }) => {
    expect(readFileSync(path, "utf8")).toBe(generated);
  });

  test.for(published)(
    "$path names its draft, itself and its version, and describes every field",
    ({ text: generated }) => {
      const schema = JSON.parse(generated);
      expect(schema.$schema).toBe("https://json-schema.org/draft/2020-12/schema");
      expect(schema.$id).toMatch(/^urn:leftwright:\w+:1$/);
      expect(schema.title).toMatch(/^Leftwright/);
      expect(undescribed(schema)).toEqual([]);
    },
  );

  test("read back from their files, they take the example and what is made of it, and refuse either for the other", async () => {
    const [cases, diagnoses] = published.map(({ path }) =>
      z.fromJSONSchema(JSON.parse(readFileSync(path, "utf8"))),
    );
    const made = await diagnosed();
    expect(cases?.safeParse(example()).error?.issues).toBeUndefined();
    expect(diagnoses?.safeParse(made).error?.issues).toBeUndefined();
    expect(cases?.safeParse(made).success).toBe(false);
    expect(diagnoses?.safeParse(example()).success).toBe(false);
  });
});

/** The properties that neither describe themselves nor point to what does. */
function undescribed(schema: Anything): readonly string[] {
  const described = (one: Anything): boolean =>
    one.description !== undefined ||
    (one.$ref !== undefined && described(schema.$defs[one.$ref.replace("#/$defs/", "")]));
  const inside = (one: Anything, path: string): readonly string[] => {
    if (typeof one !== "object" || one === null) return [];
    const own = Object.entries(one.properties ?? {}).flatMap(([name, property]) =>
      described(property) ? [] : [`${path}.${name}`],
    );
    return [
      ...own,
      ...Object.entries(one).flatMap(([name, value]) => inside(value, `${path}/${name}`)),
    ];
  };
  return inside(schema, "");
}

/** The same, never written to: as the core has it. */
type Still<T> = T extends string | number | boolean
  ? T
  : { readonly [Name in keyof T]: Still<T[Name]> };

test("the formats' types are the core's, both ways", () => {
  type RigFormat = Still<z.infer<typeof rigFormat>>;
  type FindingFormat = Still<z.infer<typeof findingFormat>>;
  type MoveFormat = Still<z.infer<typeof moveFormat>>;
  type EntryFormat = Still<CaseEntry>;
  type Entry = Said & { readonly id?: string; readonly at?: number; readonly seen?: string };
  expectTypeOf<RigFormat>().toEqualTypeOf<Rig>();
  type OfPeople = Extract<FindingFormat, { readonly results: unknown }>;
  type OfNoise = { readonly asked: { readonly check: "noise" } };
  expectTypeOf<Exclude<OfPeople, OfNoise>>().toEqualTypeOf<Answered>();
  expectTypeOf<Extract<OfPeople, OfNoise>>().toEqualTypeOf<Noticed>();
  expectTypeOf<FindingFormat>().toExtend<Finding>();
  expectTypeOf<Finding>().toExtend<FindingFormat>();
  expectTypeOf<MoveFormat>().toEqualTypeOf<Move>();
  expectTypeOf<EntryFormat>().toExtend<Entry>();
  expectTypeOf<Entry>().toExtend<EntryFormat>();
  expectTypeOf<Log>().toExtend<readonly EntryFormat[]>();
});
