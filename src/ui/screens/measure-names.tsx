import { useEffect, useState } from "preact/hooks";
import type { Outputs } from "#audio/outputs.ts";
import type { NoInputs, Recorder } from "#audio/recorder.ts";
import type { Device } from "#audio/route.ts";
import { useWords } from "#ui/words/use-words.ts";

/** What there is to choose from, as far as the browser tells. */
export interface Devices {
  readonly inputs: readonly Device[];
  readonly outputs: readonly Device[];
  /** Why it names none. */
  readonly refused: NoInputs | undefined;
}

/** The devices whose names may be seen, and the press that asks for them; undefined until the browser has said what may. */
export function useDevices(recorder: Recorder, outputs: Outputs) {
  const [devices, setDevices] = useState<Devices>();
  useEffect(() => {
    void Promise.all([recorder.known(), outputs.known()]).then(([inputs, out]) =>
      setDevices({ inputs, outputs: out, refused: undefined }),
    );
  }, [recorder, outputs]);
  const ask = async () => {
    const inputs = await recorder.named();
    const out = await outputs.known();
    setDevices(
      typeof inputs === "string"
        ? { inputs: [], outputs: out, refused: inputs }
        : { inputs, outputs: out, refused: undefined },
    );
  };
  return { devices, ask };
}

interface Props {
  readonly devices: Devices;
  readonly onAsk: () => void;
  readonly onWithout: () => void;
}

/** Before anything is chosen: the browser names inputs to a page that was allowed one. */
export function Names({ devices: { refused }, onAsk, onWithout }: Props) {
  const { names } = useWords().measure;
  return (
    <>
      <p class="ask-names">{names.willAsk}</p>
      {refused !== undefined && <p role="alert">{names.refused[refused]}</p>}
      <div class="foot">
        {refused !== "cannot record" && (
          <button type="button" class="main" onClick={onAsk}>
            {refused === undefined ? names.ask : names.again}
          </button>
        )}
        <button type="button" class="quiet" onClick={onWithout}>
          {names.without}
        </button>
      </div>
    </>
  );
}
