/** How the page looks: by the system's own choice, or one that was chosen. */
const themes = ["as the system", "dark", "light", "red lamp"] as const;
export type Theme = (typeof themes)[number];

/** The languages there are, by their tags (BCP 47). */
const tongues = ["en", "de"] as const;
export type Tongue = (typeof tongues)[number];

/** What somebody chose for the page itself; it belongs to the browser, not to a session. */
export interface Settings {
  readonly theme: Theme;
  readonly tongue: Tongue;
  /** The strip of numbers stands open at every position. */
  readonly numbers: boolean;
}

/** Where settings are kept. No member ever throws. */
export interface SettingsStore {
  readonly read: () => Settings;
  /** Writes what was chosen over what lies there; what was not chosen stays as it is, also what another tab chose. */
  readonly keep: (chosen: Partial<Settings>) => void;
}

const key = "leftwright.settings";

/** Kept in the browser's own storage. `open` may throw, as it does where storage is forbidden; `asked` are the languages a browser asks for. */
export const createSettings = (open: () => Storage, asked: readonly string[]): SettingsStore => ({
  read: () => {
    const kept = keptIn(open);
    return {
      theme: themes.find((theme) => theme === kept.theme) ?? "as the system",
      tongue: tongues.find((tongue) => tongue === kept.tongue) ?? tongueFor(asked),
      numbers: kept.numbers === true,
    };
  },
  keep: (chosen) => {
    try {
      open().setItem(key, JSON.stringify({ ...keptIn(open), ...chosen }));
    } catch {
      // A choice of look that is lost on a reload is no harm.
    }
  },
});

function keptIn(open: () => Storage): Readonly<Record<string, unknown>> {
  try {
    const kept: unknown = JSON.parse(open().getItem(key) ?? "{}");
    return typeof kept === "object" && kept !== null ? { ...kept } : {};
  } catch {
    return {};
  }
}

/** The first language asked for that there is; English where there is none. */
function tongueFor(asked: readonly string[]): Tongue {
  const found = asked
    .map((tag) => tongues.find((tongue) => tag.toLowerCase().split("-")[0] === tongue))
    .find((tongue) => tongue !== undefined);
  return found ?? "en";
}
