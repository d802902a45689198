import { access, mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { started, waited } from "./programs.ts";

/** An output that leads nowhere; what is played to it can be recorded from `<name>.monitor`. */
export interface Sink {
  readonly name: string;
  readonly channels: number;
  readonly rate: number;
  /** As PulseAudio calls it: "float32le", "s16le". */
  readonly format: string;
}

export interface Pulse {
  /** For the programs that are to play there. */
  readonly env: NodeJS.ProcessEnv;
  readonly stop: () => Promise<void>;
}

/** A sound server of one's own, with outputs that need no hardware; the first is the default. */
export async function startPulse({ sinks }: { sinks: readonly Sink[] }): Promise<Pulse> {
  const folder = await mkdtemp(join(tmpdir(), "pulse-"));
  const env = { ...process.env, XDG_RUNTIME_DIR: folder };
  const modules = sinks.map(
    ({ name, channels, rate, format }) =>
      `module-null-sink sink_name=${name} channels=${channels} rate=${rate} format=${format} norewinds=1`,
  );
  const loads = ["module-native-protocol-unix auth-cookie-enabled=0", ...modules];
  const args = [
    "-n",
    "--daemonize=no",
    "--exit-idle-time=-1",
    ...loads.flatMap((one) => ["-L", one]),
  ];
  const server = started("pulseaudio", args, { env, stdio: "ignore" });
  const stop = async () => {
    await server.stop();
    await rm(folder, { recursive: true, force: true });
  };
  const socket = join(folder, "pulse/native");
  await waited("pulseaudio", () => access(socket).then(() => socket)).catch(async (error) => {
    await stop();
    throw error;
  });
  return { env, stop };
}
