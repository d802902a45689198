import { english } from "#core/index.ts";
import { inHundred, sentence } from "#core/report/phrases.ts";
import type {
  Diagnosis,
  PositionResult,
  SuspectResult,
  WeighedResult,
} from "./diagnosis-format.ts";
import { noiseLines } from "./noise-result.ts";
import { printable } from "./problem.ts";

/** A diagnosis for people: the same as its JSON says, but for ids and groups. */
export const textOf = ({ rig, positions, neverTested }: Diagnosis): string =>
  [
    rig,
    ...positions.flatMap((one) => ["", ...positionLines(one)]),
    "",
    "Never tested:",
    ...neverTested.map(item),
  ]
    .map(printable)
    .join("\n");

const item = (text: string): string => `  - ${text}`;
const section = (heading: string, lines: readonly string[]): readonly string[] =>
  lines.length === 0 ? [] : [`  ${heading}:`, ...lines.map((line) => `  ${line}`)];

const positionLines = ({
  name,
  state,
  trouble,
  suspects,
  next,
  noises = [],
  weighed,
  notTested,
}: PositionResult): readonly string[] => [
  `${name}: ${state}; trouble: ${inHundred(english, trouble)}`,
  `  Next: ${next.words}${"seconds" in next ? ` (${Math.round(next.seconds)} s)` : ""}`,
  ...(weighed === undefined
    ? []
    : [`  Expected from here to a working rig: ${minutes(weighed.seconds)}`]),
  ...section("Weighed as well", (weighed?.others ?? []).map(weighedLine)),
  ...noises.flatMap(noiseLines),
  ...section("Suspects", suspects.flatMap(suspectLines)),
  ...section("Not tested here", notTested.map(item)),
];

const minutes = (seconds: number): string => `${(seconds / 60).toFixed(1)} min`;

const weighedLine = ({ words, expected }: WeighedResult["others"][number]): string =>
  item(`${words} (${minutes(expected)} if it comes first)`);

const suspectLines = ({
  probability,
  faults,
  explanation,
  apart,
}: SuspectResult): readonly string[] => {
  const [first, ...others] = faults;
  if (first === undefined) return [];
  return [
    item(`${inHundred(english, probability)}: ${first.words}`),
    ...others.map(({ words }) => `      or ${words}`),
    ...explanation.flatMap(({ answers }) => answers.map(({ words }) => `      ${words}`)),
    ...(apart === undefined
      ? []
      : [
          `      ${sentence(`told from the first by: ${apart.words}, if the answer is: ${apart.answers.join(", then ")}`)}`,
        ]),
  ];
};
