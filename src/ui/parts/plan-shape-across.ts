import { eastward, sway } from "./direction.ts";
import { boxOf, meanOf, plugPlace } from "./plan-boxes.ts";
import type { BoxShape, PlanCounts, PlanShape } from "./plan-shape.ts";

const [width, top, foot] = [1180, 22, 14];
const row = 46;
const [gap, scale] = [24, 1.25];
const adapter = 90;
const page = eastward(0, 0);

/** The boxes at the two sides, the smaller one at half height of the other. */
function boxes({ outputs, inputs }: PlanCounts) {
  const from = boxOf([2, top], 236, "east", { count: outputs, row, least: 150 });
  const into = boxOf([856, top], 168, "west", { count: inputs, row, least: 172 });
  const most = Math.max(from.height, into.height, 274);
  const lowered = (box: BoxShape): BoxShape => {
    const by = (most - box.height) / 2;
    return { ...box, y: box.y + by, sockets: box.sockets.map(([x, y]) => [x, y + by]) };
  };
  return { from: lowered(from), into: lowered(into), height: most + top + foot };
}

/** How far from the middle of the two ears each is, and the tape under them. */
const [apart, under] = [40, 120];

/** From left to right: what one has, the lead, what it goes into, the ears. */
export function planAcross(counts: PlanCounts): PlanShape {
  const { from, into, height } = boxes(counts);
  const straight = counts.inputs === 0;
  const centre = into.y + into.height / 2;
  const leaving = meanOf(
    counts.used.map((at) => from.sockets[at]?.[1] ?? centre),
    centre,
  );
  const cupLevel = straight ? clamp(leaving, 96, height - under - 26) : centre + 6;
  const entering = meanOf(
    into.sockets.map(([, y]) => y),
    centre,
  );
  const level = straight ? cupLevel : (leaving + entering) / 2;
  const plugAt = plugPlace(gap, scale);
  const start = plugAt([238, 0], "west").end[0] + counts.nearAdapters * adapter;
  const end = (straight ? 1086 : plugAt([856, 0], "east").end[0]) - counts.farAdapters * adapter;
  const [a, b] = [start + 76, end - 76];
  return {
    wide: true,
    width,
    height,
    scale,
    from,
    ...(straight ? {} : { into }),
    middle: { at: eastward(a, level), length: b - a },
    near: ([, y], t) => sway(page, [start, y], [a, level + t]),
    far: ([, y], t) => sway(page, [b, level + t], [end, y]),
    plugAt,
    adapters: { near: [start - adapter / 2, 0], far: [end + adapter / 2, 0], step: adapter },
    leadName: [(a + b) / 2, Math.max(level, straight ? level : entering) + 56],
    cups: [
      [1112, cupLevel - apart],
      [1112, cupLevel + apart],
    ],
    intoName: [straight ? 1076 : into.x + into.width / 2, straight ? cupLevel + under : into.y],
    wornName: [1090, cupLevel + under],
  };
}

const clamp = (value: number, least: number, most: number): number =>
  Math.min(Math.max(value, least), Math.max(least, most));
