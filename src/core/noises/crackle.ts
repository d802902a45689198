import type { Trial } from "#core/checks/noise.ts";
import type { RigFault } from "#core/rig/rig-faults.ts";
import { rigFaults } from "#core/rig/rig-faults.ts";
import { byPlace } from "./by-place.ts";
import type { Cause } from "./cause.ts";
import { beforeKnob, behindKnob, inProgramme, type Way } from "./way.ts";
import { inOrder, mixed, moves, type Shares, still, type World } from "./world.ts";

/** What crackles, where it comes in, how often beside the others, and what else it does. */
interface Crackling {
  readonly cause: Cause;
  readonly place: number;
  readonly weight: number;
  readonly own?: (trial: Trial) => Shares | undefined;
}

/** What only crackles now and then may be quiet while somebody waits for it. */
const perhapsQuiet: Shares = { gone: 0.08, less: 0.05, "the same": 0.84, more: 0.03 };
/** And what is turned away is quiet for good. */
const quiet: Shares = { gone: 0.86, less: 0.08, "the same": 0.05, more: 0.01 };

/** Odds in 10,000: common practice, no source. Contacts have those of the parts' own faults. */
const odds = { programme: 30, knob: 45, stutters: 40, radio: 60 } as const;

/** Every cause of a crackle on the way: contacts that make and break, a knob's track, radio, a computer, the programme. */
export function crackleWorlds(way: Way): readonly World[] {
  const all: readonly Crackling[] = [
    { cause: { cause: "in the programme" }, place: inProgramme, weight: odds.programme },
    ...way.boxes.flatMap((_, at) => inBox(way, at)),
    ...contacts(way),
  ];
  return all
    .filter(({ weight }) => weight > 0)
    .map(({ cause, place, weight, own }) => ({
      cause,
      weight,
      meant: (trial) => inOrder(trial, own?.(trial) ?? nowAndThen(byPlace(way, trial, place))),
    }));
}

const nowAndThen = (shares: Shares): Shares => {
  if (shares["the same"] === undefined || shares.gone === undefined) return shares;
  return shares.gone > 0.5 ? quiet : perhapsQuiet;
};

function inBox({ boxes, rig }: Way, at: number): readonly Crackling[] {
  const box = boxes[at];
  if (box === undefined) return [];
  const { part, socket, knob, link, soft } = box;
  const computer = at === 0 && (soft || rig.part(part).kind === "sound interface");
  return [
    ...(computer
      ? [{ cause: { cause: "source stutters", part }, place: 0, weight: odds.stutters } as const]
      : []),
    ...(knob && !soft && !link
      ? [
          {
            cause: { cause: "knob dirty", part, socket },
            place: beforeKnob(at),
            weight: odds.knob,
            own: (trial: Trial) =>
              trial.try === "knob to and fro" && trial.part === part && trial.socket === socket
                ? moves
                : undefined,
          } as const,
        ]
      : []),
    ...(link
      ? [
          {
            cause: { cause: "radio link", part },
            place: behindKnob(at),
            weight: odds.radio,
            own: (trial: Trial) => (trial.try === "nearer the sender" ? quiet : undefined),
          } as const,
        ]
      : []),
  ];
}

/** Plugs, leads and the cord of what is worn: as likely as their own faults that a clean plug cures or that come and go. */
function contacts(way: Way): readonly Crackling[] {
  const all = rigFaults(way.rig);
  return way.boxes.flatMap(({ wires, part: box, socket, link }, at) => {
    if (link) return [];
    const parts = [...wires, ...(way.boxes[at + 1] === undefined ? [way.worn] : [])];
    const springs = all.filter((one) => one.cleans && one.part === box && one.at === socket);
    return parts.flatMap((part, which) => {
      const own = all.filter((one) => one.part === part);
      const dirt = [...own.filter(({ cleans }) => cleans), ...(which === 0 ? springs : [])];
      const spot = { part, place: behindKnob(at), worn: way.worn };
      return [
        plugsWorld({ ...spot, weight: weightOf(dirt) }),
        leadWorld({ ...spot, weight: weightOf(own.filter(({ comesAndGoes }) => comesAndGoes)) }),
      ];
    });
  });
}

const weightOf = (faults: readonly RigFault[]): number =>
  faults.reduce((sum, { weight }) => sum + weight, 0);

/** Every plug is dirty now and then, and every lead gives out, whatever faults they have of their own. Common practice, no source. */
const anyPlugs = 12;
const anyLead = 5;

interface Contact {
  readonly part: string;
  readonly place: number;
  readonly worn: string;
  readonly weight: number;
}

const plugsWorld = ({ part, place, worn, weight }: Contact): Crackling => ({
  cause: { cause: "plugs not clean", part },
  place,
  weight: anyPlugs + weight,
  own: (trial) => {
    if (trial.try === "plugs turned" && trial.part === part) return moves;
    // A lead that is bent moves its plugs a little.
    if (trial.try === "lead bent" && trial.part === part) return mixed(0.2, moves, still);
    // It is the plug or its socket.
    if (trial.try === "other headphones" && part === worn) return mixed(0.6, quiet, perhapsQuiet);
    return undefined;
  },
});

const leadWorld = ({ part, place, worn, weight }: Contact): Crackling => ({
  cause: { cause: part === worn ? "cord breaking" : "lead breaking", part },
  place,
  weight: anyLead + weight,
  own: (trial) => {
    if (trial.try === "lead bent" && trial.part === part) return moves;
    // Most leads break where they go into a plug.
    if (trial.try === "plugs turned" && trial.part === part) return mixed(0.1, moves, still);
    if (trial.try === "other headphones" && part === worn) return quiet;
    return undefined;
  },
});
