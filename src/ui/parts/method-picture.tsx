import type { Method } from "#core/proving/choice.ts";
import { glyphs } from "./kind-glyphs.ts";
import { PlugPicture } from "./plug-picture.tsx";

/** A way of proving a lead, as it lies on the bench. */
export const MethodPicture = ({ by }: { readonly by: Method }) => (
  <svg class="method-picture" viewBox="0 0 260 120" aria-hidden="true">
    {drawings[by]()}
  </svg>
);

const Box = ({ x, width = 60 }: { readonly x: number; readonly width?: number }) => (
  <rect class="box" x={x} y="34" width={width} height="52" rx="4" />
);

const Socket = ({ x, y }: { readonly x: number; readonly y: number }) => (
  <circle class="nut used" cx={x} cy={y} r="7" />
);

/** A resistor as it is drawn: a body on a wire. */
const Resistor = ({ x, y }: { readonly x: number; readonly y: number }) => (
  <>
    <path class="wire" d={`M${x - 22} ${y}H${x + 22}`} />
    <rect class="resistor" x={x - 12} y={y - 5} width="24" height="10" rx="2" />
  </>
);

const drawings: Readonly<Record<Method, () => preact.JSX.Element>> = {
  return: () => (
    <>
      <Box x={86} width={88} />
      <path class="cord" d="M104 72V92C104 120 156 120 156 92V72" />
      <Socket x={104} y={70} />
      <Socket x={156} y={70} />
      <path class="glyph" d="M96 54H112M106 49L112 54L106 59M148 54H164M158 49L164 54L158 59" />
    </>
  ),
  "load box": () => (
    <>
      <Box x={8} width={76} />
      <rect class="box" x="166" y="26" width="86" height="68" rx="4" />
      <path class="cord" d="M46 70C46 112 126 112 130 76S150 60 170 60" />
      <Socket x={46} y={68} />
      <Socket x={168} y={60} />
      <Resistor x={206} y={44} />
      <Resistor x={206} y={76} />
      <path class="wire" d="M184 44L168 60L184 76M228 44V76" />
      <circle class="knot" cx="228" cy="60" r="4" />
      <path class="wire back" d="M200 26C196 6 70 4 62 34" />
    </>
  ),
  ear: () => (
    <>
      <Box x={8} width={52} />
      <Box x={136} width={46} />
      <path class="cord" d="M34 70C34 112 96 112 100 78S120 60 142 60" />
      <Socket x={34} y={68} />
      <Socket x={138} y={60} />
      <path class="wire" d="M182 60C192 60 192 92 208 88" />
      <path class="glyph" transform="translate(176 30) scale(0.95)" d={glyphs.headphones} />
    </>
  ),
  meter: () => (
    <>
      <path class="cord" d="M88 84C120 84 120 104 140 104S160 84 178 84" />
      <PlugPicture kind="TRS" tip={[12, 84]} facing="west" scale={0.8} />
      <PlugPicture kind="TRS" tip={[248, 84]} facing="east" scale={0.8} />
      <rect class="box" x="106" y="6" width="48" height="62" rx="5" />
      <rect class="display" x="113" y="13" width="34" height="16" rx="2" />
      <circle class="glyph" cx="130" cy="47" r="11" />
      <path class="glyph" d="M130 47L136 39" />
      <path class="probe" d="M112 66C96 82 60 40 46 54L20 80" />
      <path class="probe" d="M148 66C164 82 200 40 214 54L240 80" />
    </>
  ),
};
