import { access, mkdtemp, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { started, waited } from "./programs.ts";

/** An output that leads nowhere; what is played to it can be recorded from `<name>.monitor`. */
export interface Sink {
  readonly name: string;
  readonly channels: number;
  readonly rate: number;
  /** As PulseAudio calls it: "float32le", "s16le"; floats unless given. */
  readonly format?: string;
}

/** An input at which what an output plays comes back. */
interface Source {
  readonly name: string;
  /** The output. */
  readonly of: string;
  readonly channels: number;
}

export interface Pulse {
  /** For the programs that are to play there. */
  readonly env: Record<string, string>;
  /** How often so far a program had nothing ready when an output wanted it, as the server tells: it played silence there. */
  readonly underruns: () => number;
  readonly stop: () => Promise<void>;
}

interface Devices {
  readonly sinks: readonly Sink[];
  readonly sources?: readonly Source[];
}

/** A sound server of one's own, with outputs and inputs that need no hardware; the first output is the default. */
export async function startPulse({ sinks, sources = [] }: Devices): Promise<Pulse> {
  const folder = await mkdtemp(join(tmpdir(), "pulse-"));
  const config = join(folder, "daemon.conf");
  await writeFile(config, settings(sinks));
  const env = { ...ownEnv(), XDG_RUNTIME_DIR: folder, PULSE_CONFIG: config };
  const modules = sinks.map(
    ({ name, channels, rate, format }) =>
      `module-null-sink sink_name=${name} channels=${channels} rate=${rate} format=${format ?? "float32le"} norewinds=1 sink_properties=device.description=${name}`,
  );
  const inputs = sources.map(
    ({ name, of, channels }) =>
      `module-remap-source source_name=${name} master=${of}.monitor channels=${channels} remix=${channels === 2 ? "no" : "yes"} source_properties=device.description=${name}`,
  );
  const loads = ["module-native-protocol-unix auth-cookie-enabled=0", ...modules, ...inputs];
  const args = [
    "-n",
    "--daemonize=no",
    "--exit-idle-time=-1",
    "--log-level=debug",
    "--log-target=stderr",
    ...loads.flatMap((one) => ["-L", one]),
  ];
  const server = started("pulseaudio", args, {
    env,
    stdio: ["ignore", "ignore", "pipe"],
  });
  let underruns = 0;
  server.child.stderr?.setEncoding("utf8").on("data", (text: string) => {
    underruns += text.split("Implicit underrun of").length - 1;
  });
  const stop = async () => {
    await server.stop();
    await rm(folder, { recursive: true, force: true });
  };
  const socket = join(folder, "pulse/native");
  await waited("pulseaudio", () => access(socket).then(() => socket)).catch(async (error) => {
    await stop();
    throw error;
  });
  return { env, underruns: () => underruns, stop };
}

/** Browsers take the server's own rate for that of its outputs: it is the first one's, and no output ever changes its own. */
function settings([first]: readonly Sink[]): string {
  const rate = first?.rate ?? 48_000;
  return [
    `default-sample-rate = ${rate}`,
    `alternate-sample-rate = ${rate}`,
    "default-sample-format = float32le",
    "flat-volumes = no",
    "",
  ].join("\n");
}

const ownEnv = (): Record<string, string> =>
  Object.fromEntries(
    Object.entries(process.env).flatMap(([name, value]) =>
      value === undefined ? [] : [[name, value]],
    ),
  );
