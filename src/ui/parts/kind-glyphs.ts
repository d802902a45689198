import { catalogue, type PartKind } from "#core/parts/catalogue.ts";
import type { Family } from "#core/parts/kind.ts";

/** Three faders in a case. */
const faders = "M22 14V34M36 14V34M50 14V34M18 28H26M32 20H40M46 24H54";
const box = "M10 8H86V40H10Z";
const aerial = "M70 8V2M78 8V-6";
const knob = (x: number, y: number, r: number): string =>
  `M${x - r} ${y}a${r} ${r} 0 1 0 ${2 * r} 0a${r} ${r} 0 1 0 ${-2 * r} 0M${x} ${y}L${x + r * 0.6} ${y - r * 0.7}`;
const cups = "M28 34V28C28 4 68 4 68 28V34";

/** A lead has a plug at either end, an adapter a plug and a socket, a person a head; anything else is a plain case. */
const familyGlyphs: Readonly<Partial<Record<Family, string>>> = {
  lead: "M4 18H22V30H4ZM22 24H30C42 24 38 40 50 40S56 24 66 24H74M74 18H92V30H74Z",
  adapter: "M6 20H30V32H6ZM30 14H72V38H30ZM72 20H84V32H72",
  splitter:
    "M6 18H24V30H6ZM24 24H36C50 24 46 10 60 10H72M36 24C50 24 46 38 60 38H72M72 4H90V16H72ZM72 32H90V44H72Z",
  person:
    "M48 4a17 17 0 1 0 0.1 0M31 17Q25 21 31 27M65 17Q71 21 65 27M18 60Q20 42 40 40H56Q76 42 78 60",
};

/** What kinds of boxes look like. One that is not here is drawn as its family is. */
export const glyphs: Readonly<Partial<Record<PartKind, string>>> = {
  laptop: "M24 6H72V34H24ZM14 40H82L76 34H20Z",
  phone: "M36 2H60V42H36ZM44 37H52",
  "sound interface": `${box}${knob(26, 24, 9)}${knob(56, 24, 9)}M74 18V30`,
  player: `${box}M44 24a12 12 0 1 1 -24 0a12 12 0 1 1 24 0M35 24a3 3 0 1 1 -6 0a3 3 0 1 1 6 0M56 16H78M56 24H78`,
  instrument: `M6 10H90V40H6ZM18 10V40M30 10V40M42 10V40M54 10V40M66 10V40M78 10V40M15 10V28H21V10M27 10V28H33V10M51 10V28H57V10M63 10V28H69V10`,
  mixer: `${box}${faders}${knob(70, 24, 8)}`,
  console: `M4 40L14 6H82L92 40Z${faders}M64 14V34M78 14V34M60 22H68M74 28H82`,
  processor: `${box}${knob(24, 24, 8)}M40 16H78V32H40ZM44 28Q52 12 60 24T74 20`,
  transmitter: `${box}${aerial}M20 24H46M20 30H36`,
  "belt pack": `M30 8H66V42H30Z M38 8V-2M38 18H58V26H38Z`,
  "link sender": `${box}M22 18H40V32H22ZM40 25H74M66 19L74 25L66 31`,
  "stage box": `${box}M56 18H74V32H56ZM22 25H56M48 19L56 25L48 31`,
  "personal mixer": `${box}${knob(24, 17, 6)}${knob(42, 17, 6)}${knob(24, 32, 6)}${knob(42, 32, 6)}${knob(68, 24, 10)}`,
  "loudspeaker amplifier":
    "M8 14H88V40H8ZM16 14V8H80V14M22 34V20M30 34V20M38 34V20M46 34V20M68 27m-8 0a8 8 0 1 0 16 0a8 8 0 1 0 -16 0",
  "headphone amplifier": `${box}${knob(24, 24, 9)}${knob(48, 24, 9)}${knob(72, 24, 9)}`,
  "wireless headset": `${cups}M22 32H34V52H22ZM62 32H74V52H62ZM82 24Q90 34 82 44M87 19Q98 34 87 49`,
  headphones: `${cups}M22 32H34V54H22ZM62 32H74V54H62Z`,
  headset: `${cups}M22 32H34V54H22ZM62 32H74V54H62ZM28 54Q28 62 44 60`,
  "in-ears": "M26 20a9 9 0 1 1 0.1 0M22 20V44Q22 58 48 58Q74 58 74 44V20M70 20a9 9 0 1 0 -0.1 0",
};

/** What a kind is drawn as. */
export const glyphOf = (kind: PartKind): string =>
  glyphs[kind] ?? familyGlyphs[catalogue[kind].family] ?? "M10 8H86V40H10Z";
