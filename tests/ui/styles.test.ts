import { readdirSync, readFileSync } from "node:fs";
import { expect, test } from "vitest";

const folder = "src/ui/styles";

/** Places in drawings, where left is the listener's left in whichever language. */
const drawn = /left: (50%|8%);/;

test.for(readdirSync(folder))(
  "%s says where a line begins and ends, not left and right",
  (name) => {
    const physical = readFileSync(`${folder}/${name}`, "utf8")
      .split("\n")
      .filter((line) =>
        /(margin|padding|border)-(left|right)|^\s*(left|right):|text-align: (left|right)|float:/.test(
          line,
        ),
      );
    expect(physical.filter((line) => !drawn.test(line))).toEqual([]);
  },
);
