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
  const { out } = useWords().sounds;
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
      <Heading>{out.title}</Heading>
      <p class="hint">{out.hint}</p>
      <Devices held={held} devices={devices} />
      <Pairs held={held} />
      {asked && refused === undefined && <p class="hint go">{out.again}</p>}
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
  const { sounding, sounds } = useWords();
  const { out } = sounds;
  const routes: readonly Route[] = [
    { first: 0 },
    ...devices.map((device) => ({ device, first: 0 })),
  ];
  return (
    <Roving label={out.outputs} kind="points outputs">
      {routes.map((route) => (
        <button
          key={route.device?.id}
          type="button"
          class="point"
          aria-pressed={route.device?.id === world.route.device?.id}
          onClick={() => edges.player.use(route)}
        >
          <OutputPicture first={0} used={route.device?.id === world.route.device?.id} />
          <span>{route.device?.name ?? sounding.system}</span>
        </button>
      ))}
    </Roving>
  );
}

/** The pairs of an output with more than two channels, once it was opened. */
function Pairs({ held: { world, edges } }: { readonly held: Held }) {
  const { out } = useWords().sounds;
  const { route, channels = 2 } = world;
  if (channels < 4) return null;
  return (
    <Roving label={out.channels} kind="points pairs">
      {Array.from({ length: Math.floor(channels / 2) }, (_, pair) => 2 * pair).map((first) => (
        <button
          key={first}
          type="button"
          class="point"
          aria-label={out.pair(first + 1, first + 2)}
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
  const words = useWords();
  const { out } = words.sounds;
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
  return (
    <p class="hear-which">
      <button type="button" class="play again" onClick={hear}>
        {!world.muted && <PlaySign />}
        {hearWords(words, world)}
      </button>
      <span class="dim">{out.says(first + 1, first + 2)}</span>
    </p>
  );
}

function hearWords(
  { sounding, sounds }: Words,
  { playing, muted, turnedUp }: Held["world"],
): string {
  if (playing) return sounding.stop;
  return muted ? mutedWords(sounding, turnedUp) : sounds.out.hear;
}

interface NamesProps {
  readonly held: Held;
  readonly refused: NoChoice | undefined;
  readonly onAsk: () => void;
}

/** Another output: what the browser wants before it names any, or how to choose in the system. */
function Names({ held: { edges }, refused, onAsk }: NamesProps) {
  const { sounding, sounds } = useWords();
  const { out } = sounds;
  const why = edges.outputs.canChoose() ? refused : "cannot choose";
  return (
    <div class="another-output">
      <h2>{out.another}</h2>
      {why === undefined && <p>{out.willAsk}</p>}
      {why !== undefined && <p role="status">{sounding.noChoice[why]}</p>}
      {why !== "cannot choose" && (
        <button type="button" class="tape" onClick={onAsk}>
          {why === undefined ? out.ask : out.askAgain}
        </button>
      )}
    </div>
  );
}
