import { expect } from "vitest";
import { cdp, page as tab } from "vitest/browser";
import type { Outputs } from "#audio/outputs.ts";
import { heading, open, press } from "./open.tsx";

/** Two outputs that may be chosen. */
const rackAndDesk: Outputs = {
  canChoose: () => true,
  known: async () => [
    { id: "rack", name: "Rack outputs" },
    { id: "desk", name: "Desk" },
  ],
  named: async () => "none",
};

const inputs = [
  { id: "line", name: "Rack interface" },
  { id: "mic", name: "Built-in microphone" },
];

const sizes = { wide: [1280, 800], narrow: [390, 844] } as const;

/** How the page is looked at: its size and its scheme, nothing moving by itself. */
export async function seenAs(size: keyof typeof sizes, scheme: "dark" | "light"): Promise<void> {
  const features = [
    { name: "prefers-color-scheme", value: scheme },
    { name: "prefers-reduced-motion", value: "reduce" },
  ];
  await cdp().send("Emulation.setEmulatedMedia", { features });
  const [width, height] = sizes[size];
  await tab.viewport(width, height);
}

/** From the first screen to where the lead is to be plugged in, its two ends chosen. */
export async function hookedUp(offer: "Bend a lead and watch" | "Measure with a sound card") {
  const opened = open({ outputs: rackAndDesk });
  opened.recorder.offer(inputs);
  await press(offer);
  if (offer === "Measure with a sound card") await press(/^here:/);
  await expect.element(heading()).toHaveTextContent("Out of which, and back into which?");
  await press("Rack outputs");
  await press("Rack interface");
  await press("Go on");
  return opened;
}
