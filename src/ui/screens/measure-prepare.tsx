import type { ComponentChildren } from "preact";
import { useState } from "preact/hooks";
import { HookUpPicture } from "#ui/parts/hook-up-picture.tsx";
import { useWords } from "#ui/words/use-words.ts";
import { Heading } from "./frame.tsx";
import { InstrumentCautions } from "./measure-cautions.tsx";
import { ChooseWays, Returns } from "./measure-hook-up.tsx";
import { Names, useDevices } from "./measure-names.tsx";
import type { Ways } from "./page.ts";
import type { Instruments } from "./use-instruments.ts";
import type { Held } from "./use-page.ts";
import { useWorld } from "./use-world.ts";

interface Props {
  readonly held: Held;
  readonly instruments: Instruments;
  /** Said over the picture of how it is plugged, and under. */
  readonly title: string;
  readonly hint: string;
  /** Why the last try led to nothing. */
  readonly trouble: string | undefined;
  /** What else is asked, and the press that starts. */
  readonly children: ComponentChildren;
}

/** How it is hooked up, as it was left; what stands at the far end can be said, where the way of proving a lead has not said it already. */
export function useWays({ page, change }: Held) {
  const own = page.ways?.returns ?? "joined";
  const by = page.view.screen === "prove" ? page.view.lead.by : undefined;
  const said = by && (by === "load box" ? by : "joined");
  const ways: Ways = { ...page.ways, returns: said ?? own };
  const onWays = (next: Ways) =>
    change((one) => ({ ...one, ways: said === undefined ? next : { ...next, returns: own } }));
  return { ways, onWays, isSaid: said !== undefined };
}

/** One question after the other until it can start: the names, the two ends, and then how to plug it, with its cautions. */
export function Prepare({ held, instruments, title, hint, trouble, children }: Props) {
  const { measure, sounding } = useWords();
  const { recorder, measurer } = instruments;
  const { devices, ask } = useDevices(recorder, held.edges.outputs);
  const [without, setWithout] = useState(false);
  const [chosen, setChosen] = useState(held.page.ways !== undefined);
  const { ways, onWays, isSaid } = useWays(held);
  const world = useWorld(measurer);
  if (devices === undefined) return <Heading key="wait">{title}</Heading>;
  if (devices.inputs.length === 0 && !without && !chosen)
    return (
      <>
        <Heading key="names">{measure.names.inputs}</Heading>
        <Names devices={devices} onAsk={ask} onWithout={() => setWithout(true)} />
      </>
    );
  if (!chosen) {
    const next = () => {
      onWays(ways);
      setChosen(true);
    };
    return <ChooseWays {...{ held, measurer, world, devices, ways, onWays }} onNext={next} />;
  }
  return (
    <>
      {trouble && (
        <p class="message" role="alert">
          {trouble}
        </p>
      )}
      <Heading key="plug">{title}</Heading>
      <p class="hint">{hint}</p>
      <HookUpPicture first={world.route.first} returns={ways.returns} />
      <p class="from-to">
        {measure.ways.fromTo(
          world.route.device?.name ?? sounding.system,
          ways.input?.name ?? measure.ways.systemIn,
        )}{" "}
        <button type="button" class="quiet" onClick={() => setChosen(false)}>
          {measure.ways.others}
        </button>
      </p>
      <InstrumentCautions />
      {!isSaid && <Returns ways={ways} onWays={onWays} />}
      {children}
    </>
  );
}
