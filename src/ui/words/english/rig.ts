import type { Refusal } from "#core/drawing/edited.ts";
import type { Part } from "#core/parts/part.ts";
import type { JackSize } from "#core/parts/plugs.ts";
import { capital, counted } from "#core/report/phrases.ts";
import { withThe } from "#core/words/english-names.ts";

type Plug = Pick<Part["plugs"][number], "kind" | "size">;
type Socket = Pick<Part["sockets"][number], "kind" | "size">;

/** A kind with the size of a jack behind the word for how many poles it has. */
const sized = (kind: string, size: JackSize = "6.35 mm"): string =>
  kind.replace(/^(TR{0,2}S|four-pole)/, `$1 ${size}`);

/** A plug or a socket in as few signs as there are: 'TRS 6.35 mm', 'XLR', 'four-pole 3.5 mm, common on sleeve'. */
const plug = ({ kind, size }: Plug | Socket): string =>
  kind === "link" ? "radio or digital" : sized(kind, size);

/** The same where there is little room: 'TRS 6.35'. */
const plugBriefly = (one: Plug): string =>
  one.kind === "link" ? "link" : plug(one).replace(" mm", "");

function refused(refusal: Refusal): string {
  switch (refusal.refused) {
    case "no name":
      return "It needs a name: write one, then press again.";
    case "marks in the name":
      return "A name goes into sentences: leave out commas, colons and slashes.";
    case "name taken":
      return `Something here is called '${refusal.name}' already: take another name.`;
    case "does not fit":
      return `The ${plug(refusal.plug)} plug of ${refusal.part} does not go into this socket (${plug(refusal.socket)}). Put an adapter between, take another lead, or change the size of its plug.`;
    case "nothing free":
      return `${refusal.part} has no free socket for this. Put a splitter or an amplifier in the way first.`;
    case "nothing joins":
      return "No lead in the list joins these two. Choose another socket, or put an adapter or a box between.";
    case "last position":
      return "Somebody has to listen: add another position before this one goes.";
    case "socket in use":
      return `${refusal.by} is in ${refusal.socket}: plug it in elsewhere or remove it first.`;
    case "cannot be":
      return troubles[refusal.trouble.trouble](refusal.name);
  }
}

type Trouble = Extract<Refusal, { readonly refused: "cannot be" }>["trouble"]["trouble"];

const notUnderstood = (name: string) => `${name} cannot be set so: take another value.`;
const notThere = (name: string) =>
  `${name} would be plugged into what is not there. Plug it in first.`;

const troubles: Readonly<Record<Trouble, (name: string) => string>> = {
  "hangs from nothing": (name) =>
    `${name} would hang from nothing. Plug it into another socket instead, or remove the position.`,
  "goes round": (name) =>
    `The feed would go round and come back to ${name}. Choose a socket that leads away from it.`,
  "not one feed": (name) =>
    `${name} would be fed from two boxes, or from none. Pull the other plug first.`,
  "nobody listens": () => "Somebody has to listen: add a position first.",
  "name taken": (name) => `Something here is called '${name}' already: take another name.`,
  "a person": (name) => `${name} is a person, and people are added by themselves.`,
  setting: notUnderstood,
  "settings together": notUnderstood,
  "no such part": notThere,
  "no such plug": notThere,
  "no such socket": notThere,
  "does not fit": (name) =>
    `The plug of ${name} does not go in there. Choose another socket or lead.`,
  "used twice": (name) => `${name} would share a socket. Choose a free one.`,
  "worn is no part": notThere,
  "not to be worn": (name) => `${name} cannot be worn.`,
  "worn twice": (name) => `${name} would be on two heads.`,
};

/** The rig, drawn: the picture and what may be done to it. */
export const rig = {
  heading: "The rig",
  how: "Tap a thing to change it. Drag a plug to another socket, or a thing from below to where it goes.",
  done: "Check this rig",
  undo: "undo",
  redo: "redo",
  picture: "the rig, from its sources to the ears",
  positions: (count: number) => counted(count, "position", "positions"),
  plug,
  plugBriefly,
  refused,
  loose: "hangs in the air",
  thing: (name: string, kind: string) => `${name}, ${kind}`,
  seat: (name: string, worn: string) => `${name}, position with ${worn}`,
  end: (what: string, socketName: string, part: string) => `${what} in ${socketName} of ${part}`,
  looseEnd: (what: string, part: string) => `${what} of ${part}, in no socket`,
  lead: (name: string, kind: string, ends: string) => `${name}, ${kind}: ${ends}`,
  at: (socketName: string, part: string) => `${socketName} of ${part}`,
  /** Of a part with one plug, that has no name. */
  before: (plugName: string | undefined, part: string, socketName: string) =>
    `in the way of ${part}, before its ${plugName ?? "plug"}${socketName === "" ? "" : ` in ${socketName}`}`,
  inFront: (part: string) => `in front of ${part}`,
  run: (count: number) => `${count} alike`,
  free: (count: number) => counted(count, "free socket", "free sockets"),
  things: "To add",
  moreThings: "everything there is",
  whereTo: (kind: string) => `Where does it go: ${kind}?`,
  noPlace:
    "Nothing here takes it now. Free a socket, or put a splitter or an amplifier in the way first.",
  putAway: "put away",
  name: "name",
  tape: "What stands on its tape",
  partName: (kind: string) => `What is it called: ${kind}`,
  nameIt: "name it",
  copy: "copy it",
  rePlug: "re-plug",
  rePlugEnd: (what: string, socketName: string) => `re-plug ${what} from ${socketName}`,
  whichSocket: "Which socket?",
  noSocket: "No other socket here takes this plug.",
  swaps: (part: string) => `changes places with ${part}`,
  pull: "pull it out",
  put: "plug something in",
  whatIn: "What goes in?",
  between: "put something in the way",
  source: "put a source before it",
  otherLead: "another lead",
  noOtherLead: "No other kind of lead joins these sockets.",
  change: "change",
  otherKind: "another kind",
  set: "set",
  earlier: "hear it earlier",
  later: "hear it later",
  remove: "remove",
  removeWith: (count: number) =>
    `remove, with ${counted(count, "position", "positions")} that ${count === 1 ? "hangs" : "hang"} on it`,
  ownWay: "on its way",
  drop: (what: string, where: string) => `${what} to ${where}`,
  grown: (part: string, count: number, sockets: string) =>
    `${capital(withThe(part))} was full: it now has ${count} ${sockets}.`,
  undone: "The last change is undone.",
  redone: "It is done again.",
};
