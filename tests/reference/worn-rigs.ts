import type { Rig } from "#core/rig/rig.ts";
import { drawn, type Piece, type Said } from "./drawn.ts";

/** What hangs on a socket, one thing behind the other: a part, and the socket of it that the next one is in. */
type Link = readonly [id: string, said: Said, socket?: string];

/** From a source's socket through adapters and the like to what is worn. Every plug of them is named 'plug'. */
function strung(source: Said, from: string, ...links: readonly Link[]): Rig {
  const kinds = [source, ...links.map(([, said]) => said)].map((said) =>
    typeof said === "string" ? said : `${said[0]} (${Object.values(said[1]).join(", ")})`,
  );
  const pieces = links.map(([id, said], at): Piece => {
    const [into, , socket = "socket"] = links[at - 1] ?? ["source", source, from];
    return { parts: { [id]: said }, plugged: [`${id}: plug > ${into}: ${socket}`] };
  });
  const worn = links.at(-1)?.[0] ?? "";
  return drawn(
    `${kinds[0]}: ${from}, ${kinds.slice(1).join(", ")}`,
    [worn],
    { parts: { source }, plugged: [] },
    ...pieces,
  );
}

const small = { size: "3.5 mm" } as const;
const ringTwo = "common on ring 2";
const sleeve = "common on sleeve";
const deep = "TRS with a deep spring";
const fourPole = (order: string) => ({ socket: `four-pole, ${order}` });

const headsets: readonly Rig[] = [
  strung("phone", "phones", ["headset", "headset"]),
  strung(["phone", { power: "charging", ...fourPole(sleeve) }], "phones", ["headset", "headset"]),
  strung(["laptop", { supply: "mains-earthed", socket: deep }], "phones", ["headset", "headset"]),
  strung(["phone", { socket: deep }], "phones", ["headset", ["headset", { "pin order": sleeve }]]),
  strung(["laptop", { supply: "battery", socket: "TRS" }], "phones", [
    "headset",
    ["headset", { "pin order": sleeve }],
  ]),
  strung(
    "laptop",
    "phones",
    ["adapter", "headset adapter"],
    ["headset", ["headset", { "pin order": sleeve }]],
  ),
  strung(
    ["phone", fourPole(sleeve)],
    "phones",
    ["adapter", ["headset adapter", { device: sleeve }]],
    ["headset", "headset"],
  ),
  strung(
    ["phone", fourPole(ringTwo)],
    "phones",
    ["splitter", "headset splitter", "headphones"],
    ["headphones", ["headphones", small]],
  ),
  strung(
    ["laptop", fourPole(sleeve)],
    "phones",
    ["splitter", ["headset splitter", { device: sleeve }], "headphones"],
    ["headset", "headset"],
  ),
  strung(
    "sound interface",
    "phones",
    ["adapter", ["size adapter", { spring: deep }]],
    ["headset", "headset"],
  ),
  strung(
    ["instrument", { supply: "battery" }],
    "phones",
    ["adapter", "size adapter"],
    ["headset", ["headset", { "pin order": sleeve }]],
  ),
];

const inLine: readonly Rig[] = [
  strung("laptop", "phones", ["headphones", ["headphones", { ...small, wiring: "four wires" }]]),
  strung(["phone", { socket: "TRS" }], "phones", ["in-ears", "in-ears"]),
  strung("laptop", "phones", ["in-ears", ["in-ears", { drivers: "one a side" }]]),
  strung(
    "laptop",
    "phones",
    ["adapter", ["size adapter", { plugSize: "3.5 mm" }]],
    ["headphones", "headphones"],
  ),
  strung(
    ["mixer", { supply: "floating" }],
    "phones",
    ["adapter", "stereo-to-mono adapter"],
    ["extension", "TRS extension lead"],
    ["headphones", "headphones"],
  ),
  strung("console", "phones", ["adapter", "mono adapter"], ["headphones", "headphones"]),
  strung(
    ["sound interface", { supply: "battery" }],
    "phones",
    ["wheel", "in-line volume wheel"],
    ["headphones", "headphones"],
  ),
  strung(
    "phone",
    "phones",
    ["extension", ["TRS extension lead", small]],
    ["wheel", ["in-line volume wheel", { ...small, up: 0.5 }]],
    ["in-ears", "in-ears"],
  ),
  strung(
    "instrument",
    "phones",
    ["wheel", ["in-line volume wheel", { up: 0 }]],
    ["headphones", "headphones"],
  ),
];

const wireless: readonly Rig[] = (["phone", "laptop"] as const).map((kind) =>
  drawn(`${kind}, wireless headset`, ["headset"], {
    parts: { source: kind, headset: "wireless headset" },
    plugged: ["headset: link > source: wireless"],
  }),
);

const sets = (count: number, said: Said = "headphones"): Piece => {
  const names = Array.from({ length: count }, (_, at) => `headphones ${at + 1}`);
  return {
    parts: Object.fromEntries(names.map((id) => [id, said])),
    plugged: names.map((id, at) => `${id}: plug > splitter: output ${at + 1}`),
  };
};

/** Sets that load each other: every one hears its neighbours' faults. The last has an amplifier among its neighbours. */
const shared: readonly Rig[] = [
  drawn(
    "two sets on a splitter",
    ["headphones 1", "headphones 2"],
    sets(2, ["headphones", small]),
    {
      parts: { laptop: ["laptop", { socket: "TRS" }], splitter: ["splitter", small] },
      plugged: ["splitter: plug > laptop: phones"],
    },
  ),
  drawn("three sets behind resistors, a socket empty", ["headphones 1", "headphones 3"], sets(3), {
    parts: {
      interface: ["sound interface", { supply: "mains-earthed" }],
      splitter: ["splitter", { sets: 4, seriesOhms: 47 }],
    },
    plugged: ["splitter: plug > interface: phones"],
  }),
  drawn("a set and an amplifier on a splitter", ["headphones 1", "headphones"], sets(1), {
    parts: {
      mixer: "mixer",
      splitter: "splitter",
      lead: "TRS lead",
      amplifier: "headphone amplifier",
      headphones: "headphones",
    },
    plugged: [
      "splitter: plug > mixer: phones",
      "lead: near > splitter: output 2",
      "lead: far > amplifier: in",
      "headphones: plug > amplifier: output 1",
    ],
  }),
];

/** Straight from a source to what is worn, with no amplifier between but where one hangs beside it. */
export const wornRigs: readonly Rig[] = [...headsets, ...inLine, ...wireless, ...shared];
