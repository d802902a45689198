import { solid } from "./adapters.ts";
import { kindOf } from "./kind.ts";
import { type LeadWire, leadOf } from "./lead.ts";
import { odds, otherPinOrder } from "./lead-faults.ts";
import { point } from "./part.ts";
import { otherOrder, type PinOrder, pinOrders, rearOf } from "./slips.ts";

/** Where the device's socket has its common. */
const device = { choices: pinOrders, typical: "common on ring 2" } as const;

const forDevice = (order: PinOrder) => [{ at: "plug", end: "plug", order, odds: odds.moulded }];

const side = (contact: "tip" | "ring", socket: string): LeadWire => [
  contact,
  point("plug", contact),
  point(socket, contact),
];

/** For a headset of one pin order at a device of the other: exchanges the second ring and the sleeve. */
export const headsetAdapter = kindOf("adapter", { device }, ({ device: order }) => {
  const headset = otherOrder(order);
  const [from, to] = [rearOf(order), rearOf(headset)];
  return leadOf(
    {
      ends: [
        { name: "plug", kind: "TRRS", size: "3.5 mm" },
        { name: "socket", kind: "TRRS", size: "3.5 mm", socket: `four-pole, ${headset}` },
      ],
      wires: [
        side("tip", "socket"),
        side("ring", "socket"),
        ["return", point("plug", from.common), point("socket", to.common)],
        ["microphone", point("plug", from.microphone), point("socket", to.microphone)],
      ],
      weak: forDevice(order),
      more: [otherPinOrder("plug", order)],
    },
    solid,
  );
});

/** A four-contact plug to a socket for headphones and one for a microphone, which a hurried hand takes for each other. */
export const headsetSplitter = kindOf("adapter", { device }, ({ device: order }) => {
  const { common, microphone } = rearOf(order);
  return leadOf(
    {
      ends: [
        { name: "plug", kind: "TRRS", size: "3.5 mm" },
        {
          name: "headphones",
          kind: "TRS",
          size: "3.5 mm",
          socket: "TRS",
          mistakenFor: { microphone: 80 },
        },
        { name: "microphone", kind: "TRS", size: "3.5 mm", socket: "TRS" },
      ],
      wires: [
        side("tip", "headphones"),
        side("ring", "headphones"),
        ["return", point("plug", common), "lug"],
        ["headphones return", "lug", point("headphones", "sleeve"), 0],
        ["microphone", point("plug", microphone), point("microphone", "tip")],
        ["microphone return", "lug", point("microphone", "sleeve"), 0],
      ],
      weak: [...forDevice(order), { at: "headphones", end: "headphones", odds: odds.worn }],
      more: [otherPinOrder("plug", order)],
    },
    solid,
  );
});
