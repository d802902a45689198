import type { Words } from "#ui/words/use-words.ts";

const quoted = (names: readonly string[]): string => names.map((name) => `»${name}«`).join(" und ");

export const plan: Words["plan"] = {
  title: "Vor dem Einstecken",
  undo: "rückgängig",
  again: "von vorn",
  care: "Bevor eine Hand an den Stecker geht",
  wants: "Was soll es werden?",
  gets: {
    brief: {
      left: "links",
      right: "rechts",
      both: "links + rechts",
      nothing: "nichts",
      "left, inverted": "−links",
      "right, inverted": "−rechts",
      "both, inverted": "−(links + rechts)",
      difference: "links − rechts",
      "difference, inverted": "rechts − links",
    },
    said: {
      left: "links",
      right: "rechts",
      both: "links und rechts",
      nothing: "nichts",
      "left, inverted": "links, verpolt",
      "right, inverted": "rechts, verpolt",
      "both, inverted": "links und rechts, verpolt",
      difference: "links minus rechts",
      "difference, inverted": "rechts minus links",
    },
  },
  lead: {
    nothing: "noch nichts",
    straight: "kein Kabel, direkt eingesteckt",
    twoOf: (name) => `zweimal: ${name}`,
  },
  hint: {
    inHand: (plug) =>
      `In der Hand: der Stecker »${plug}«. Auf eine Buchse zeigen, oder noch einmal drücken zum Loslassen.`,
    leaveOut: "nicht einstecken",
    point: "Auf Buchse, Stecker oder Namen zeigen, um etwas zu ändern.",
    unjoined: (from, into) =>
      `Von dieser Buchse (${from}) führt kein Stecker und kein Kabel hierher: ${into}. Andere Buchse wählen, oder auf einem Namen ein anderes Gerät.`,
    otherLead: (was, is) => `»${was}« passt dort nicht, jetzt ist es »${is}«.`,
  },
  tray: {
    from: "Was ist vorhanden?",
    wires: "Was kommt dazwischen?",
    into: "Wo geht es hinein?",
    worn: "Was sitzt auf dem Kopf?",
  },
  putAway: "schließen",
  outputStage: (name) => `seine Ausgangsstufe: ${name}`,
  stageNotSaid: "noch nicht angegeben",
  groups: {
    source: "woher es kommt",
    box: "ein Gerät dazwischen",
    straight: "direkt auf den Kopf",
    worn: "auf dem Kopf",
  },
  leads: "Kabel",
  adapters: { summary: "mit Adapter", label: "Kabel mit Adapter" },
  madeOf: (part) => `Daten: ${part}`,
  stage: {
    title: (box) => `Welche Ausgangsstufe steckt hier drin: ${box}?`,
    titleAndWhy: (box) =>
      `Welche Ausgangsstufe steckt hier drin: ${box}? Davon hängt ab, welches Kabel das richtige ist.`,
    where:
      "Das steht in der Anleitung, bei den technischen Daten. Oder wie gezeichnet stecken, vorher leise drehen, und hören.",
    heard: (effect) => `Zu hören wäre: ${effect}`,
    all: "Ausgangsstufen",
    manual: (carries, manual) => `${carries}. In der Anleitung: ${manual}.`,
    unknown: "Weiß ich nicht",
  },
  picture: {
    outputs: (box) => `Ausgänge: ${box}`,
    inputs: (box) => `Eingänge: ${box}`,
    plug: (kind, socket) => `${kind}, in »${socket}«; in die Hand nehmen`,
    markedPlug: (kind, mark, socket) => `${kind} »${mark}«, in »${socket}«; in die Hand nehmen`,
  },
  sentence: {
    likely: (effect) => `Am wahrscheinlichsten: ${effect}.`,
    ears: (left, right) => `Linkes Ohr: ${left}. Rechtes Ohr: ${right}.`,
    sides: (left, right) => `Linke Seite: ${left}. Rechte Seite: ${right}.`,
    hangsOn: (box) => `Das hängt von der Ausgangsstufe ab (${box}): siehe unten.`,
    hear: "Anhören",
    check: "Jetzt prüfen",
    you: "1 Sie",
    rig: (from, into) => `${from} an ${into}`,
  },
  advice: {
    given: (want) => `Wie gezeichnet kommt das Gewünschte an: ${want}.`,
    working: "Die Kabel werden durchgesehen …",
    take: "Nehmen",
    rightFor: (odds) => `Passt bei ${odds} solcher Geräte. Nehmen`,
    ifSilent: "Wenn es stumm bleibt oder dünn klingt",
    or: "Oder",
    none: (want, from, into, needed) =>
      `Kein Kabel und kein Adapter bringt »${want}« von »${from}« nach »${into}«. Dafür braucht es ${needed}.`,
    needed: {
      stereo: "einen Kopfhörerausgang oder ein Paar Ausgänge für links und rechts",
      "mono in both ears":
        "einen Ausgang mit dem ganzen Mix und ein Kabel von der Spitze auf beide Seiten",
      "an own mix": "einen eigenen Send oder einen Mix-Ausgang, der nicht Main ist",
      "left ear only":
        "einen Ausgang mit dem, was zu hören sein soll, und ein Kabel nur auf die Spitze",
      "right ear only":
        "einen Ausgang mit dem, was zu hören sein soll, und ein Kabel nur auf den Ring",
    },
    outputsOf: (sockets, box) => `${quoted(sockets)} (${box})`,
    from: (outputs) => `von ${outputs}`,
    fromToMake: (outputs) => `von ${outputs}; muss angefertigt werden`,
    toMake: "Nicht von der Stange: anfertigen oder bestellen, wie gezeichnet.",
    shelf: "Handelsüblich.",
    volumeFirst: "Zuerst leise drehen, an beiden Enden.",
    use: "Dieses nehmen",
    whereTo: (outputs, sockets, box) =>
      sockets.length === 0
        ? `Von ${outputs} an »${box}«.`
        : `Von ${outputs} in ${quoted(sockets)} (${box}).`,
  },
  pins: {
    alone: (contact) => `${contact} bleibt frei`,
    to: (contact, others) => `${contact} an ${others.join(" und ")}`,
    at: (end, contact) => `${contact} (${end})`,
    socketFor: (plug) => `Buchse für: ${plug}`,
  },
};
