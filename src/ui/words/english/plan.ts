/** Before anything is plugged in: the picture, what may stand in it, and what is soldered where. */
export const plan = {
  title: "Before you plug in",
  undo: "undo",
  again: "start again",
  care: "Before a hand touches a plug",
  wants: "What should it be?",
  /** What a contact or an ear gets: in a drawing, and as it is said. */
  gets: {
    brief: {
      left: "left",
      right: "right",
      both: "left + right",
      nothing: "nothing",
      "left, inverted": "−left",
      "right, inverted": "−right",
      "both, inverted": "−(left + right)",
      difference: "left − right",
      "difference, inverted": "right − left",
    },
    said: {
      left: "left",
      right: "right",
      both: "left and right",
      nothing: "nothing",
      "left, inverted": "left, upside down",
      "right, inverted": "right, upside down",
      "both, inverted": "left and right, upside down",
      difference: "left minus right",
      "difference, inverted": "right minus left",
    },
  },
  lead: {
    nothing: "nothing yet",
    straight: "no lead, straight in",
    twoOf: (name: string) => `two of: ${name}`,
  },
  hint: {
    inHand: (plug: string) =>
      `In your hand: the plug marked ${plug}. Point at a socket for it, or press it again to let go.`,
    leaveOut: "leave it unplugged",
    point: "Point at a socket, a plug or a name to change it.",
    unjoined: (from: string, into: string) =>
      `No plug or lead goes from this socket of the ${from} to the ${into}. Point at another socket, or press a name for another box.`,
    otherLead: (was: string, is: string) => `The ${was} does not go there, so it is ${is} now.`,
  },
  tray: {
    from: "What have you got?",
    wires: "What goes between?",
    into: "What does it go into?",
    worn: "What is on the head?",
  },
  putAway: "put away",
  outputStage: (name: string) => `its output stage: ${name}`,
  stageNotSaid: "not said yet",
  groups: {
    source: "where it comes from",
    box: "a box on the way",
    straight: "straight on the head",
    worn: "on the head",
  },
  leads: "leads",
  adapters: { summary: "with an adapter", label: "leads with an adapter" },
  madeOf: (part: string) => `what the ${part} is made of`,
  stage: {
    title: (box: string) => `What is inside the ${box}?`,
    titleAndWhy: (box: string) => `What is inside the ${box}? It decides which lead is right.`,
    where: "Its manual says, near its data. Or plug it as drawn, volume down first, and listen.",
    heard: (effect: string) => `You would hear: ${effect}`,
    all: "output stages",
    manual: (carries: string, manual: string) => `${carries}. The manual: ${manual}.`,
    unknown: "I do not know",
  },
  picture: {
    outputs: (box: string) => `outputs of the ${box}`,
    inputs: (box: string) => `inputs of the ${box}`,
    plug: (kind: string, socket: string) => `${kind}, in ${socket}; take it in the hand`,
    markedPlug: (kind: string, mark: string, socket: string) =>
      `${kind}, marked ${mark}, in ${socket}; take it in the hand`,
  },
  sentence: {
    likely: (effect: string) => `Most likely: ${effect}.`,
    ears: (left: string, right: string) => `Left ear: ${left}. Right ear: ${right}.`,
    sides: (left: string, right: string) => `Left side: ${left}. Right side: ${right}.`,
    hangsOn: (box: string) => `It hangs on what is inside the ${box}: see below.`,
    hear: "Hear it",
    check: "Check it now",
    you: "1 you",
    rig: (from: string, into: string) => `${from} into ${into}`,
  },
  advice: {
    given: (want: string) => `What is drawn gives it: ${want}.`,
    working: "Looking through the leads…",
    take: "Take",
    rightFor: (odds: string) => `Right for ${odds} such boxes. Take`,
    ifSilent: "If it is silent or thin",
    or: "Or",
    none: (want: string, from: string, into: string, needed: string) =>
      `No lead or adapter gives ${want} from the ${from} into ${into}. It would take ${needed}.`,
    /** What would be needed for each thing wanted. */
    needed: {
      stereo: "a headphone socket, or a pair of outputs marked left and right",
      "mono in both ears": "one output that carries the whole mix, and a lead from its tip to both",
      "an own mix": "a send of its own, or a mix output that is not the main one",
      "left ear only": "an output that carries what shall be heard, and a lead to the tip alone",
      "right ear only": "an output that carries what shall be heard, and a lead to the ring alone",
    },
    outputsOf: (sockets: readonly string[], box: string) =>
      `${sockets.join(" and ")} of the ${box}`,
    from: (outputs: string) => `from ${outputs}`,
    fromToMake: (outputs: string) => `from ${outputs}; to be made`,
    toMake: "Not on a shop's wall: to be made or ordered, as drawn.",
    shelf: "Off the shelf.",
    volumeFirst: "Volume down first, at both ends.",
    use: "Use this one",
    whereTo: (outputs: string, sockets: readonly string[], box: string) =>
      sockets.length === 0
        ? `From ${outputs} into the ${box}.`
        : `From ${outputs} into ${sockets.join(" and ")} of the ${box}.`,
  },
  pins: {
    alone: (contact: string) => `${contact} left alone`,
    to: (contact: string, others: readonly string[]) => `${contact} to ${others.join(" and ")}`,
    at: (end: string, contact: string) => `the ${end} ${contact}`,
    socketFor: (plug: string) => `socket for a ${plug}`,
  },
};
