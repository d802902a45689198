import type { Measurer, MeasurerWorld } from "#audio/measurer.ts";
import type { Device, Route } from "#audio/route.ts";
import { OutputPicture } from "#ui/parts/output-picture.tsx";
import { Roving } from "#ui/parts/roving.tsx";
import { useWords } from "#ui/words/use-words.ts";
import { Heading } from "./frame.tsx";
import type { Devices } from "./measure-names.tsx";
import type { Ways } from "./page.ts";
import type { Held } from "./use-page.ts";
import { routeWords } from "./words.ts";

interface Props {
  readonly held: Held;
  readonly measurer: Measurer;
  readonly world: MeasurerWorld;
  readonly devices: Devices;
  readonly ways: Ways;
  readonly onWays: (ways: Ways) => void;
  readonly onNext: () => void;
  /** What is asked, where it is not a lead that is measured. */
  readonly words?: WaysWords;
}

export interface WaysWords {
  readonly title: string;
  readonly hint: string;
  readonly back: string;
}

const leadWords: WaysWords = {
  title: "Out of which, and back into which?",
  hint: "Best both of one interface: then they have one clock.",
  back: "Back into which",
};

/** Which output feeds it, and which input it comes back to. */
export function ChooseWays({ ways, onWays, onNext, words = leadWords, ...props }: Props) {
  return (
    <>
      <Heading key="ways">{words.title}</Heading>
      <p class="hint">{words.hint}</p>
      <div class="in-and-out">
        <Outs {...props} />
        <Ins devices={props.devices} ways={ways} onWays={onWays} title={words.back} />
      </div>
      <div class="foot">
        <button type="button" class="main" onClick={onNext}>
          Go on
        </button>
      </div>
    </>
  );
}

/** Whatever the system plays to, every output whose name is known, and the pair that the ears have where it is another one. */
function Outs({
  held,
  measurer,
  world,
  devices,
}: Omit<Props, "ways" | "onWays" | "onNext" | "words">) {
  const { sounding } = useWords();
  const routes: readonly Route[] = [
    { first: 0 },
    ...devices.outputs.map((device) => ({ device, first: 0 })),
    ...(held.world.route.first > 0 ? [held.world.route] : []),
  ];
  const same = (route: Route) =>
    route.device?.id === world.route.device?.id && route.first === world.route.first;
  return (
    <div>
      <h2>Out of which</h2>
      <Roving label="Output" kind="points outputs">
        {routes.map((route) => (
          <button
            key={`${route.device?.id} ${route.first}`}
            type="button"
            class="point"
            aria-pressed={same(route)}
            onClick={() => measurer.use(route)}
          >
            <OutputPicture first={route.first} used={same(route)} />
            <span>{routeWords(sounding, { ...held.world, route, channels: 2 })}</span>
          </button>
        ))}
      </Roving>
    </div>
  );
}

type InsProps = Pick<Props, "devices" | "ways" | "onWays"> & { readonly title: string };

function Ins({ devices, ways, onWays, title }: InsProps) {
  const all: readonly (Device | undefined)[] = [undefined, ...devices.inputs];
  return (
    <div>
      <h2>{title}</h2>
      <Roving label="Input" kind="points inputs">
        {all.map((input) => (
          <button
            key={input?.id}
            type="button"
            class="point"
            aria-pressed={input?.id === ways.input?.id}
            onClick={() => onWays({ ...ways, input })}
          >
            <span>{input?.name ?? "whatever the system records from"}</span>
          </button>
        ))}
      </Roving>
    </div>
  );
}

/** The far end of the lead: straight back into inputs, or a box that lets the sleeve be seen. */
export function Returns({ ways, onWays }: Pick<Props, "ways" | "onWays">) {
  const box = ways.returns === "load box";
  return (
    <div class="returns">
      <label class="check">
        <input
          type="checkbox"
          checked={box}
          onChange={() => onWays({ ...ways, returns: box ? "joined" : "load box" })}
        />
        a load box stands before the inputs
      </label>
      <details class="note">
        <summary>Why a load box</summary>
        <p>
          An interface that feeds its own inputs has joined their grounds already: a lead whose
          sleeve is lost measures as whole. So the sleeve counts as not tested, unless its current
          has no other way back.
        </p>
        <p>
          To build one: two resistors of 33 Ω, 1 %. One from the far plug's tip, one from its ring,
          both to one point, and that point on nothing but the far plug's sleeve. Each resistor is
          read by a balanced input: hot on the tip or the ring, cold on the common point, the
          input's own ground on nothing.
        </p>
      </details>
    </div>
  );
}
