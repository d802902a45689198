import type { Version } from "#core/hearing/audition.ts";
import { useWords } from "#ui/words/use-words.ts";
import { mutedWords, PlaySign } from "./play.tsx";
import type { Auditioning } from "./use-audition.ts";
import type { Held } from "./use-page.ts";

interface Props {
  readonly held: Held;
  readonly sound: Auditioning;
  /** What each of the two is called here. */
  readonly names: Readonly<Record<Version, string>>;
}

const order: readonly Version[] = ["healthy", "faulty"];
const keyOf: Readonly<Record<Version, string>> = { healthy: "H", faulty: "F" };

/** Two large presses: each begins the sound, or goes over to the other while it plays. Which one is heard stands on it. */
export function TwoVersions({ held: { world, edges }, sound, names }: Props) {
  const { sounding } = useWords();
  const { versions } = sounding;
  return (
    <div class="versions">
      {world.turnedUp && (
        <button
          type="button"
          class="play hands"
          onClick={({ currentTarget }) => {
            // It goes: what may be heard now is next to it.
            (currentTarget.nextElementSibling as HTMLElement | null)?.focus();
            edges.player.handOff();
          }}
        >
          {mutedWords(sounding, true)}
        </button>
      )}
      {order.map((version) => {
        const on = world.heard === version;
        return (
          <button
            key={version}
            type="button"
            class={`version ${version}`}
            aria-pressed={on}
            aria-keyshortcuts={keyOf[version]}
            aria-disabled={world.turnedUp}
            onClick={() => sound.hear(version)}
          >
            {!world.playing && <PlaySign />}
            <span>{names[version]}</span>
            <small>{on ? versions.heard : versions.key(keyOf[version])}</small>
          </button>
        );
      })}
      {sound.progress !== undefined && (
        <p class="making">
          <progress value={sound.progress} aria-label={versions.making} /> {versions.makingReady}
          <button type="button" class="quiet" onClick={sound.stop}>
            {versions.stop}
          </button>
        </p>
      )}
      {sound.refused && (
        <p class="message" role="alert">
          {versions.refused}
        </p>
      )}
    </div>
  );
}

/** What H and F ask for. */
export const versionOf = (key: string): Version | undefined =>
  order.find((one) => keyOf[one].toLowerCase() === key);
