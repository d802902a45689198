import type { VNode } from "preact";
import type { TrialName } from "#core/checks/noise.ts";

const arrow = (x: number, y: number, turn: number) => (
  <path
    class="said-over"
    d="M0 0L-13 -8M0 0L-13 8"
    transform={`translate(${x} ${y}) rotate(${turn})`}
  />
);

const knob = (
  <>
    <circle class="box" cx="130" cy="62" r="36" />
    <path class="said-over" d="M130 62L107 84" />
  </>
);

const plug = (
  <>
    <path class="box" d="M30 22H52V98H30Z" />
    <path class="box" d="M74 54H112V66H74ZM112 44H170V76H112Z" />
    <path class="said-over" d="M170 60C200 60 200 92 236 92" />
  </>
);

/** What a hand does, in a few lines. The words beside it say it too. */
const drawings: Readonly<Record<TrialName, VNode>> = {
  "programme stopped": (
    <>
      <circle class="box" cx="130" cy="58" r="42" />
      <path class="said-over" d="M114 42H146V74H114Z" />
    </>
  ),
  "knob down": (
    <>
      {knob}
      <path class="said-over" d="M172 36C162 12 98 8 84 44C80 56 80 66 84 78" />
      {arrow(84, 79, 75)}
    </>
  ),
  "knob to and fro": (
    <>
      {knob}
      <path class="said-over" d="M80 48C92 6 168 6 180 48" />
      {arrow(80, 49, 105)}
      {arrow(180, 49, 75)}
    </>
  ),
  "feed out": (
    <>
      {plug}
      <path class="said-over" d="M84 26H150" />
      {arrow(151, 26, 0)}
    </>
  ),
  "on battery": (
    <>
      <path class="box" d="M84 36H176V84H84ZM176 50H186V70H176Z" />
      <path class="said-over" d="M134 44L120 62H140L126 78" />
    </>
  ),
  "one outlet": (
    <>
      <path class="box" d="M40 46H220V84H40Z" />
      <path
        class="said-over"
        d="M78 60v.1M90 60v.1M124 60v.1M136 60v.1M170 60v.1M182 60v.1M84 46V20M130 46V20M176 46V20"
      />
    </>
  ),
  "other leads out": (
    <>
      <path class="box" d="M40 50H100V90H40ZM160 50H220V90H160Z" />
      <path
        class="said-over"
        d="M100 70H160M62 50C62 16 92 16 104 22M198 50C198 16 168 16 156 22"
      />
      {arrow(103, 22, 20)}
      {arrow(157, 22, 160)}
    </>
  ),
  "lead bent": (
    <>
      <path class="said-over" d="M20 84C70 84 80 30 130 30S190 84 240 84" />
      <path class="said-over" d="M130 46V76" />
      {arrow(130, 77, 90)}
      {arrow(130, 46, -90)}
    </>
  ),
  "plugs turned": (
    <>
      {plug}
      <path class="said-over" d="M124 34C128 8 156 8 160 34" />
      {arrow(160, 35, 75)}
    </>
  ),
  "nearer the sender": (
    <>
      <path class="said-over" d="M60 96V40M46 30C52 22 68 22 74 30M36 20C46 6 74 6 84 20" />
      <path class="box" d="M176 44H216V96H176Z" />
      <path class="said-over" d="M164 70H108" />
      {arrow(107, 70, 180)}
    </>
  ),
  "quieter source": (
    <>
      <circle class="box" cx="76" cy="66" r="30" />
      <path class="said-over" d="M76 66L58 84M110 46C104 24 66 18 48 42" />
      {arrow(47, 43, 130)}
      <circle class="box" cx="188" cy="66" r="30" />
      <path class="said-over" d="M188 66L206 48M154 46C160 24 198 18 216 42" />
      {arrow(217, 43, 50)}
    </>
  ),
  "other headphones": (
    <>
      <path class="said-over" d="M88 66C88 10 172 10 172 66" />
      <rect class="cup left" x="76" y="60" width="22" height="40" rx="8" />
      <rect class="cup right" x="162" y="60" width="22" height="40" rx="8" />
    </>
  ),
  elsewhere: (
    <>
      <circle class="box" cx="72" cy="60" r="26" />
      <circle class="box" cx="196" cy="60" r="26" />
      <path class="said-over" d="M108 60H156" />
      {arrow(157, 60, 0)}
    </>
  ),
  recording: (
    <>
      <path class="box" d="M40 26H220V94H40Z" />
      <path
        class="said-over"
        d="M60 60V60.1M78 50V70M96 40V80M114 54V66M132 36V84M150 48V72M168 42V78M186 56V64M204 60V60.1"
      />
    </>
  ),
};

export const TrialPicture = ({ name }: { readonly name: TrialName }) => (
  <svg class="trial-picture" viewBox="0 0 260 112" aria-hidden="true">
    {drawings[name]}
  </svg>
);
