import type { Version } from "#core/hearing/audition.ts";
import { PlaySign } from "./play.tsx";
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
export function TwoVersions({ held: { world }, sound, names }: Props) {
  return (
    <div class="versions">
      {order.map((version) => {
        const on = world.heard === version;
        return (
          <button
            key={version}
            type="button"
            class={`version ${version}`}
            aria-pressed={on}
            aria-keyshortcuts={keyOf[version]}
            onClick={() => sound.hear(version)}
          >
            {!world.playing && <PlaySign />}
            <span>{names[version]}</span>
            <small>{on ? "you hear this" : `key ${keyOf[version]}`}</small>
          </button>
        );
      })}
      {sound.progress !== undefined && (
        <p class="making">
          <progress value={sound.progress} aria-label="making the sound ready" /> making it ready
          <button type="button" class="quiet" onClick={sound.stop}>
            stop
          </button>
        </p>
      )}
      {sound.refused && (
        <p class="message" role="alert">
          There is nothing in this sound that may be played near ears. Take another one.
        </p>
      )}
    </div>
  );
}

/** What H and F ask for. */
export const versionOf = (key: string): Version | undefined =>
  order.find((one) => keyOf[one].toLowerCase() === key);
