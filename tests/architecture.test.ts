import { readdirSync, readFileSync } from "node:fs";
import { expect, test } from "vitest";

/**
 * Who may import whom: each folder, and the folders and packages it may use. Rows only look up.
 * A folder may use itself; `type x` allows `import type` alone, so the real thing must be handed in by main.tsx.
 */
const layers: Record<string, readonly string[]> = {
  "core/units": [],
  "core/circuit": ["core/units"],
  "core/parts": ["core/units", "core/circuit"],
  "core/rig": ["core/units", "core/circuit", "core/parts"],
  "core/signals": ["core/units", "fft.js"],
  "core/hearing": ["core/units", "core/signals", "fft.js"],
  "core/measurement": ["core/units", "core/circuit", "core/signals", "fft.js"],
  "core/prompts": ["core/units", "core/signals", "core/hearing"],
  "core/listening": ["core/units", "core/signals"],
  "core/checks": ["core/units", "core/parts", "core/rig", "core/signals", "core/listening"],
  "core/training": ["core/units", "core/parts", "core/rig", "core/listening", "core/checks"],
  "core/patching": ["core/units", "core/circuit", "core/parts", "core/rig", "core/listening"],
  "core/drawing": ["core/units", "core/parts", "core/rig", "core/patching"],
  "core/level": [
    "core/units",
    "core/circuit",
    "core/parts",
    "core/rig",
    "core/patching",
    "core/drawing",
  ],
  "core/inference": [],
  "core/noises": [
    "core/units",
    "core/parts",
    "core/rig",
    "core/listening",
    "core/checks",
    "core/patching",
    "core/level",
    "core/inference",
  ],
  "core/diagnosis": [
    "core/units",
    "core/circuit",
    "core/parts",
    "core/rig",
    "core/checks",
    "core/inference",
  ],
  "core/session": [
    "core/units",
    "core/parts",
    "core/rig",
    "core/checks",
    "core/noises",
    "core/diagnosis",
  ],
  "core/proving": [
    "core/units",
    "core/measurement",
    "core/circuit",
    "core/parts",
    "core/rig",
    "core/checks",
    "core/inference",
    "core/diagnosis",
    "core/session",
  ],
  "core/words": [
    "core/units",
    "core/parts",
    "core/rig",
    "core/listening",
    "core/checks",
    "core/patching",
    "core/signals",
    "core/measurement",
    "core/prompts",
    "core/noises",
  ],
  "core/report": [
    "core/units",
    "core/parts",
    "core/rig",
    "core/listening",
    "core/checks",
    "core/signals",
    "core/level",
    "core/noises",
    "core/diagnosis",
    "core/session",
    "core/proving",
    "core/words",
  ],
  "core/bench": ["core/units", "core/parts", "core/rig"],
  "core/index.ts": ["core"],
  pack: ["core", "fflate", "wavefile"],
  recording: ["core"],
  audio: [
    "core/units",
    "core/signals",
    "core/hearing",
    "core/measurement",
    "core/prompts",
    "standardized-audio-context",
  ],
  worker: ["core", "pack", "recording"],
  storage: ["core/session", "idb"],
  offline: [],
  "ui/words": ["core", "recording", "preact", "type audio", "type storage"],
  "ui/parts": ["core", "ui/words", "preact"],
  "ui/screens": [
    "core",
    "recording",
    "ui/words",
    "ui/parts",
    "preact",
    "type audio",
    "type storage",
    "type offline",
    "type worker",
  ],
  "main.tsx": ["core", "audio", "worker", "storage", "offline", "ui", "preact"],
  cli: ["core", "pack", "recording", "node", "vite", "zod"],
};

const order = Object.keys(layers);
const files = readdirSync("src", { recursive: true, encoding: "utf8" })
  .map((path) => path.replaceAll("\\", "/"))
  .filter((path) => /\.tsx?$/.test(path));

/** The same path, or one below it: a file in a folder, a package's subpath (`preact/hooks`, `node:fs`). */
const within = (path: string, row: string) =>
  path === row || (/^[/:]/.test(path.slice(row.length)) && path.startsWith(row));
const rowOf = (path: string) => order.find((row) => within(path, row));

/** Imports as they stand after formatting: at the start of a line, or `import("…")` anywhere. */
const imports =
  /^(?:import|export)( type)?\b(?:[^"=(:]*\bfrom)?\s*"([^"]+)"|\bimport\(\s*"([^"]+)"/gm;

test.for(files)("%s imports only what its layer may", (path) => {
  const row = rowOf(path);
  expect(row, `${path} belongs to no layer`).toBeDefined();
  const allowed = [...(layers[row ?? ""] ?? []), row ?? ""];
  const refused = [...readFileSync(`src/${path}`, "utf8").matchAll(imports)]
    .map(([, type = "", still, later]) => ({ type: type.trim(), from: still ?? later ?? "" }))
    .filter(({ from }) => !/^\.\/(?!.*\.\.)/.test(from))
    .filter(({ type, from }) => {
      const target = from.replace(/^#/, "");
      return !allowed.some((use) => within(target, use) || (type && within(`type ${target}`, use)));
    });
  expect(refused).toEqual([]);
});

test("rows only look up", () => {
  const down = order.flatMap((row, at) =>
    (layers[row] ?? []).filter(
      (use) => order.indexOf(use.replace("type ", "")) >= at && use !== row,
    ),
  );
  expect(down).toEqual([]);
});

/** The simulated person at the built page: it may know the page by its screen and its sound, and nothing of the core. */
test.for(["ears.ts", "hand.ts", "press.ts", "push.ts", "robot.ts", "tap.ts", "touch.ts"])(
  "the robot's %s imports nothing of ours",
  (file) => {
    const text = readFileSync(`tests/robot/${file}`, "utf8");
    const from = [...text.matchAll(imports)].map(([, , still, later]) => still ?? later ?? "");
    expect(
      from.filter(
        (one) => !/^\.\/(ears|hand|press|push|tap|touch)\.ts$/.test(one) && one !== "playwright",
      ),
    ).toEqual([]);
  },
);
