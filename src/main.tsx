import { render } from "preact";
import { createOutputs } from "#audio/outputs.ts";
import { createPlayer } from "#audio/web-player.ts";
import { createCopy } from "#offline/copy.ts";
import { createDatabase } from "#storage/database.ts";
import { createSettings } from "#storage/settings.ts";
import { createStore } from "#storage/store.ts";
import { createTurns } from "#storage/turns.ts";
import { App } from "#ui/screens/app.tsx";
import { packing } from "#worker/packing.ts";
import "#ui/style.css";

const chance = () => crypto.getRandomValues(new Uint32Array(1))[0] ?? 0;

const instruments = async () => {
  const [{ createRecorder }, { createMeasurer }, { judging }, { measuring }] = await Promise.all([
    import("#audio/web-recorder.ts"),
    import("#audio/web-measurer.ts"),
    import("#worker/judging.ts"),
    import("#worker/measuring.ts"),
  ]);
  const recorder = createRecorder();
  return { recorder, measurer: createMeasurer(recorder), judging, reading: measuring };
};

const store = createStore({
  shelf: createDatabase(),
  turns: createTurns(),
  older: () => localStorage,
  now: Date.now,
  name: () => `${Date.now()}-${chance()}`,
  persist: async () => navigator.storage.persist(),
});

const root = document.getElementById("app");
if (root === null) throw new Error("the page has no place for the program");
render(
  <App
    player={createPlayer()}
    store={store}
    settings={createSettings(() => localStorage, navigator.languages)}
    outputs={createOutputs()}
    copy={createCopy(import.meta.env.PROD ? "service-worker.js" : undefined)}
    packing={packing}
    instruments={instruments}
    decode={(file, rate) => import("#audio/decode.ts").then((audio) => audio.decode(file, rate))}
    now={Date.now}
    chance={chance}
  />,
  root,
);
