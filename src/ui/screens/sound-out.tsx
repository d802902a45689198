import { useEffect, useState } from "preact/hooks";
import type { NoChoice } from "#audio/outputs.ts";
import type { Device, Route } from "#audio/route.ts";
import { OutputPicture } from "#ui/parts/output-picture.tsx";
import { Roving } from "#ui/parts/roving.tsx";
import { useWords, type Words } from "#ui/words/use-words.ts";
import { OutCautions } from "./cautions.tsx";
import { Heading } from "./frame.tsx";
import { Level } from "./level.tsx";
import { mutedWords, PlaySign } from "./play.tsx";
import type { Held } from "./use-page.ts";
import { useArrive } from "./use-place.ts";

/** Which output plays, and on which of its channels; and the way to hear that it is the right one. */
export function SoundOut({ held }: { readonly held: Held }) {
  const { player, outputs } = held.edges;
  const [devices, setDevices] = useState<readonly Device[]>([]);
  const [refused, setRefused] = useState<NoChoice>();
  const [asked, setAsked] = useState(false);
  useEffect(() => {
    void outputs.known().then(setDevices);
  }, [outputs]);
  useArrive(held, "sound out");
  const ask = async () => {
    player.silence();
    const answer = await outputs.named();
    setAsked(true);
    setRefused(typeof answer === "string" ? answer : undefined);
    if (typeof answer !== "string") setDevices(answer);
  };
  return (
    <section class="sound-out">
      <Heading>Where the sound goes</Heading>
      <p class="hint">
        Plug nothing in or out while it sounds: another output begins at the start level again.
      </p>
      <Devices held={held} devices={devices} />
      <Pairs held={held} />
      {asked && refused === undefined && (
        <p class="hint go">
          Hear it again before you go on: an open microphone can turn a wireless headset to one
          channel.
        </p>
      )}
      <Hear held={held} />
      {devices.length === 0 && <Names held={held} refused={refused} onAsk={ask} />}
      {!held.page.sounded && <OutCautions />}
      <Level held={held} />
    </section>
  );
}

interface DevicesProps {
  readonly held: Held;
  readonly devices: readonly Device[];
}

/** Whatever the system plays to, and every output whose name is known. */
function Devices({ held: { world, edges }, devices }: DevicesProps) {
  const routes: readonly Route[] = [
    { first: 0 },
    ...devices.map((device) => ({ device, first: 0 })),
  ];
  return (
    <Roving label="Output" kind="points outputs">
      {routes.map((route) => (
        <button
          key={route.device?.id}
          type="button"
          class="point"
          aria-pressed={route.device?.id === world.route.device?.id}
          onClick={() => edges.player.use(route)}
        >
          <OutputPicture first={0} used={route.device?.id === world.route.device?.id} />
          <span>{route.device?.name ?? "whatever the system plays to"}</span>
        </button>
      ))}
    </Roving>
  );
}

/** The pairs of an output with more than two channels, once it was opened. */
function Pairs({ held: { world, edges } }: { readonly held: Held }) {
  const { route, channels = 2 } = world;
  if (channels < 4) return null;
  return (
    <Roving label="Channels" kind="points pairs">
      {Array.from({ length: Math.floor(channels / 2) }, (_, pair) => 2 * pair).map((first) => (
        <button
          key={first}
          type="button"
          class="point"
          aria-label={`output ${first + 1} and ${first + 2}`}
          aria-pressed={first === route.first}
          onClick={() => edges.player.use({ ...route, first })}
        >
          <OutputPicture first={first} used={first === route.first} />
        </button>
      ))}
    </Roving>
  );
}

/** Says its own numbers, then each side in its own ear. */
function Hear({ held: { world, edges, change } }: { readonly held: Held }) {
  const { player } = edges;
  const { first } = world.route;
  const hear = async () => {
    if (world.playing) return player.silence();
    if (world.muted) return player.handOff();
    change((one) => ({ ...one, sounded: true }));
    const said = [
      [{ prompt: "outputs", numbers: [first + 1, first + 2] }, "either ear"],
      [{ prompt: "left" }, "left"],
      [{ prompt: "right" }, "right"],
    ] as const;
    for (const [prompt, to] of said) {
      const { ended } = await player.speak([prompt], { to });
      if (ended !== "played") return;
    }
  };
  const { sounding } = useWords();
  return (
    <p class="hear-which">
      <button type="button" class="play again" onClick={hear}>
        {!world.muted && <PlaySign />}
        {hearWords(sounding, world)}
      </button>
      <span class="dim">{`Says “output ${first + 1} and ${first + 2}”, then “left” in the left ear and “right” in the right one.`}</span>
    </p>
  );
}

function hearWords(words: Words["sounding"], { playing, muted, turnedUp }: Held["world"]): string {
  if (playing) return "stop it";
  return muted ? mutedWords(words, turnedUp) : "Hear which it is";
}

interface NamesProps {
  readonly held: Held;
  readonly refused: NoChoice | undefined;
  readonly onAsk: () => void;
}

/** Another output: what the browser wants before it names any, or how to choose in the system. */
function Names({ held: { edges }, refused, onAsk }: NamesProps) {
  const { noChoice } = useWords().sounding;
  const why = edges.outputs.canChoose() ? refused : "cannot choose";
  return (
    <div class="another-output">
      <h2>Another output?</h2>
      {why === undefined && (
        <p>
          The browser names the outputs to a page that may use the microphone. It will ask you; the
          microphone is closed again at once and nothing is recorded.
        </p>
      )}
      {why !== undefined && <p role="status">{noChoice[why]}</p>}
      {why !== "cannot choose" && (
        <button type="button" class="tape" onClick={onAsk}>
          {why === undefined ? "Ask the browser for their names" : "Ask again"}
        </button>
      )}
    </div>
  );
}
