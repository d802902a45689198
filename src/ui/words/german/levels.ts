import type { Words } from "#ui/words/use-words.ts";

export const levels: Words["levels"] = {
  link: "Wie laut, wie viel Rauschen",
  nothingFed: "Hier kommt nichts an, oder ein Messgerät steht dort, wo Ohren wären.",
  headline: {
    nothing: () => "An den Ohren kommt nichts an",
    "hardly there": (level) => `Kaum da: ${level} dB am Ohr`,
    soft: (level) => `Leise: ${level} dB am Ohr`,
    comfortable: (level) => `Angenehm: ${level} dB am Ohr`,
    loud: (level) => `Laut: ${level} dB am Ohr`,
    "too loud for long": (level) => `Auf Dauer zu laut: ${level} dB am Ohr`,
    "far too loud": (level) => `Viel zu laut: ${level} dB am Ohr`,
  },
  loud: {
    nothing: "nichts",
    "hardly there": "kaum da",
    soft: "leise",
    comfortable: "angenehm",
    loud: "laut",
    "too loud for long": "auf Dauer zu laut",
    "far too loud": "viel zu laut",
  },
  hissIs: {
    nowhere: "Rauschen ist nicht zu hören, auch nicht in einem stillen Raum.",
    silent: "Rauschen ist nur in einem stillen Raum zu hören.",
    studio: "Rauschen ist zu hören, wo es so leise ist wie in einem Studio.",
    "quiet room": "Rauschen ist in einem leisen Raum zu hören, zwischen den Worten.",
    "room with people": "Rauschen ist selbst unter Leuten zu hören.",
    "stage before the show": "Rauschen ist überall zu hören, selbst auf einer Bühne vor Beginn.",
  },
  hissHeard: "Rauschen, hörbar",
  hissUnheard: "Rauschen, unhörbar",
  hissAt: (level) => `Das Rauschen hat ${level} dB am Ohr.`,
  coveredIn: {
    silent: "in Stille nicht zu hören",
    studio: "im Studio nicht zu hören",
    "quiet room": "in einem leisen Raum nicht zu hören",
    "room with people": "unter Leuten nicht zu hören",
    "stage before the show": "auf der Bühne nicht zu hören",
  },
  rooms: {
    silent: "Stille",
    studio: "Studio",
    "quiet room": "leiser Raum",
    "room with people": "unter Leuten",
    "stage before the show": "Bühne",
  },
  wants: {
    "quiet talk": (level) => `leises Reden, ${level} dB`,
    music: (level) => `Musik, ${level} dB`,
    "loud stage": (level) => `laute Bühne, ${level} dB`,
  },
  between: (low, high, unknown) =>
    `Es können ${low} bis ${high} dB sein: ${unknown === 1 ? "Eine Zahl gilt" : `${unknown} Zahlen gelten`} als üblich. Ein Gerät antippen, um einzutragen, was sein Datenblatt sagt.`,
  noticed: (times) =>
    `In das Rauschen geht ein, was davon bemerkt wurde: ${times === 1 ? "eine Antwort" : `${times} Antworten`}.`,
  cutAt: (part, by) =>
    `Hier werden Spitzen abgeschnitten, um ${by} dB: ${part}. Davor leiser stellen`,
  chain: "von der Quelle bis zu den Ohren",
  lines: {
    programme: "Programm",
    peaks: "seine Spitzen",
    noise: "Rauschen",
    ceiling: "darüber verzerrt es",
    volts: "dBu",
    pressure: "dB SPL",
  },
  cut: (by) => `hier abgeschnitten, ${by} dB`,
  place: {
    input: (level, noise, room) =>
      `Am Eingang: Programm ${level} dBu, Rauschen ${noise} dBu, mit den Spitzen ${room} dB unter der Grenze.`,
    output: (level, noise, room) =>
      `Am Ausgang: Programm ${level} dBu, Rauschen ${noise} dBu, mit den Spitzen ${room} dB unter der Grenze.`,
  },
  numbersOf: (part) => `Zahlen: ${part}`,
  noKnob: "kein Regler",
  knobOf: (part) => `Regler: ${part}`,
  knobSays: (up, down, level) => `${up} von 10, ${down} dB; ${level} dB am Ohr`,
  knobAt: (up) => `auf ${up}`,
  knobTo: (up) => `nach ${up}`,
  knobGuessed: "halb angenommen",
  wanted: "So laut soll es sein:",
  where: "Dort wird gehört:",
  setSo: "Regler so stellen",
  setAlready: "Die Regler stehen so",
  whatThen: (level, now, then) =>
    `Dann sind es ${level} dB am Ohr. Rauschen: jetzt ${now} dB, dann ${then}.`,
  byThumb: (hiss) =>
    `Gerechnet mit dem, was üblich ist, da von diesen Geräten keine Zahl eingetragen ist. Die Faustregel, wenn nichts bekannt ist: der erste Regler etwa halb, und der Verstärker holt auf. Damit rauscht es hier mit ${hiss} dB.`,
  setByThumb: "nach der Faustregel stellen",
  byNumbers:
    "Wie die Zahlen es sagen: jeder Regler vom ersten an so hoch, wie es sauber bleibt, und der letzte holt auf. So rauscht es am wenigsten.",
  short: (by) => `So laut geht es nicht, ohne Spitzen abzuschneiden: Es fehlen ${by} dB.`,
};
