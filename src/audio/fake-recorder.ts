import type { Capture } from "#core/measurement/capture.ts";
import type { Granted } from "./granted.ts";
import type {
  NoInputs,
  Recorded,
  Recorder,
  RecorderTrouble,
  RecorderWorld,
  RecordHow,
} from "./recorder.ts";
import type { Device } from "./route.ts";
import { Watched } from "./watched.ts";

/** A recorder without an input: it records what it is given, when it is told. */
export interface FakeRecorder extends Recorder {
  /** Every recording that was asked for, in order. */
  readonly asked: readonly RecordHow[];
  /** What there is to choose from, or why nothing. */
  readonly offer: (inputs: readonly Device[] | NoInputs) => void;
  /** The input is open. */
  readonly open: (granted?: Partial<Granted>) => void;
  /** Some samples come in, and are the whole of what is recorded when it ends. */
  readonly hear: (capture: Capture) => void;
  /** Its time is over. */
  readonly end: () => void;
  /** Something befalls it. */
  readonly fail: (why: RecorderTrouble) => void;
}

const plain: Granted = {
  device: { id: "fake", name: "Line in" },
  processed: [],
  unsaid: [],
  channels: 2,
  rate: 48_000,
  inputRate: 48_000,
  latency: undefined,
  baseLatency: undefined,
};

const idle: RecorderWorld = { doing: "nothing", trouble: undefined, granted: undefined };

/** A fake: it opens, hears and ends as told, and never by itself. */
export function createFakeRecorder(): FakeRecorder {
  const asked: RecordHow[] = [];
  const world = new Watched<RecorderWorld>(idle);
  let capture: Capture | undefined;
  let resolve: ((recorded: Recorded) => void) | undefined;
  const leave = (recorded: Recorded, trouble?: RecorderTrouble) => {
    const told = resolve;
    resolve = undefined;
    if (told === undefined) return;
    world.change({ doing: "nothing", trouble });
    told(recorded);
  };
  const ends = (recorded: "to the end" | "stopped") => {
    const { granted } = world.now();
    leave({ recorded, granted, capture, gaps: { missing: 0, blank: 0, behind: 0 } });
  };
  return {
    asked,
    open: (granted = {}) => {
      const given = { ...plain, ...granted };
      world.change({ doing: "recording", granted: given });
      asked.at(-1)?.onOpen?.(given);
    },
    hear: (next) => {
      capture = asked.at(-1)?.keep ? next : undefined;
      asked.at(-1)?.onBlock?.(next.channels, 0);
    },
    end: () => ends("to the end"),
    fail: (why) => leave({ recorded: "trouble", why }, why),
    ...offered(),
    record: (how) => {
      ends("stopped");
      asked.push(how);
      capture = undefined;
      world.change({ ...idle, doing: "opening" });
      return new Promise((told) => {
        resolve = told;
      });
    },
    stop: () => ends("stopped"),
    close: () => ends("stopped"),
    world: world.now,
    subscribe: world.subscribe,
  };
}

/** What there is to choose from. */
function offered(): Pick<FakeRecorder, "offer" | "canRecord" | "known" | "named"> {
  let inputs: readonly Device[] | NoInputs = [plain.device];
  return {
    offer: (next) => {
      inputs = next;
    },
    canRecord: () => inputs !== "cannot record",
    known: async () => (typeof inputs === "string" ? [] : inputs),
    named: async () => inputs,
  };
}
