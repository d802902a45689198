import { type BadCase, bad, finding, first } from "./bad-case.ts";

/** Cases that are not of the format. */
export const badShapes: readonly BadCase[] = [
  bad("another format", '/format: expected "leftwright case", found "song"', (one) => {
    one.format = "song";
  }),
  bad(
    "another version",
    "/version: expected 1, the version that this program reads, found 2",
    (one) => {
      one.version = 2;
      one.log = "as version 2 has it";
    },
  ),
  bad("no log", "/log: expected a list", (one) => {
    delete one.log;
  }),
  bad("no rig", "/rig: expected a rig", (one) => {
    delete one.rig;
  }),
  bad("a wrong type", "/rig/parts/0/id: expected a text, found 7", (one) => {
    one.rig.parts[0].id = 7;
  }),
  bad(
    "a key to be escaped",
    "/rig/parts/0/settings/a~1b~0: expected a number or a text, found true",
    (one) => {
      one.rig.parts[0].settings = { "a/b~": true };
    },
  ),
  first("no such entry", '/log/0/entry: expected "drawing"', {
    entry: "guess",
  }),
  first(
    "no such check",
    '/log/0/finding/asked/check: expected "left"',
    finding({ check: "smell", position: "position 1" }),
  ),
  first(
    "a check without its position",
    "/log/0/finding/asked/position: expected a text",
    finding({ check: "left" }),
  ),
  first("three gains", "/log/0/finding/gains: expected 4 in this list, found a list", {
    entry: "finding",
    finding: {
      asked: { check: "matrix", position: "position 1" },
      gains: [
        [1, 0],
        [0, 0],
        [0, 0],
      ],
      error: 0.1,
    },
  }),
  first("less than no ohms", "/log/0/finding/ohms: expected 0 or more, found -1", {
    entry: "finding",
    finding: {
      asked: { check: "continuity", part: "feed lead", from: "near.tip", to: "far.tip" },
      ohms: -1,
    },
  }),
  first("an id that is taken", "/log/1/id: expected an id that no entry before it has", {
    entry: "taken back",
    taken: "0",
    id: "2",
  }),
  first("nothing to take back", '/log/0/taken: expected the id of an entry before it, found "9"', {
    entry: "taken back",
    taken: "9",
  }),
];
