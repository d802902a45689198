import type { Measurer, MeasurerWorld } from "#audio/measurer.ts";
import type { Device, Route } from "#audio/route.ts";
import { OutputPicture } from "#ui/parts/output-picture.tsx";
import { Roving } from "#ui/parts/roving.tsx";
import { useWords, type Words } from "#ui/words/use-words.ts";
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
  readonly asks?: keyof Pick<Words["measure"]["ways"], "lead" | "cups">;
}

/** Which output feeds it, and which input it comes back to. */
export function ChooseWays({ ways, onWays, onNext, asks = "lead", ...props }: Props) {
  const { measure } = useWords();
  const words = measure.ways[asks];
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
          {measure.ways.goOn}
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
}: Omit<Props, "ways" | "onWays" | "onNext" | "asks">) {
  const { measure, sounding } = useWords();
  const { ways } = measure;
  const routes: readonly Route[] = [
    { first: 0 },
    ...devices.outputs.map((device) => ({ device, first: 0 })),
    ...(held.world.route.first > 0 ? [held.world.route] : []),
  ];
  const same = (route: Route) =>
    route.device?.id === world.route.device?.id && route.first === world.route.first;
  return (
    <div>
      <h2>{ways.out}</h2>
      <Roving label={ways.outLabel} kind="points outputs">
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
  const words = useWords().measure.ways;
  const all: readonly (Device | undefined)[] = [undefined, ...devices.inputs];
  return (
    <div>
      <h2>{title}</h2>
      <Roving label={words.inLabel} kind="points inputs">
        {all.map((input) => (
          <button
            key={input?.id}
            type="button"
            class="point"
            aria-pressed={input?.id === ways.input?.id}
            onClick={() => onWays({ ...ways, input })}
          >
            <span>{input?.name ?? words.systemIn}</span>
          </button>
        ))}
      </Roving>
    </div>
  );
}

/** The far end of the lead: straight back into inputs, or a box that lets the sleeve be seen. */
export function Returns({ ways, onWays }: Pick<Props, "ways" | "onWays">) {
  const { loadBox } = useWords().measure;
  const box = ways.returns === "load box";
  return (
    <div class="returns">
      <label class="check">
        <input
          type="checkbox"
          checked={box}
          onChange={() => onWays({ ...ways, returns: box ? "joined" : "load box" })}
        />
        {loadBox.before}
      </label>
      <details class="note">
        <summary>{loadBox.why}</summary>
        <p>{loadBox.because}</p>
        <p>{loadBox.build}</p>
      </details>
    </div>
  );
}
