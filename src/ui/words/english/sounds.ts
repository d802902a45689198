/** Test sounds to play or take away, where the sound goes, and a sound of one's own. */
export const sounds = {
  title: "Test sounds",
  hint: "Press one to hear it; once more to stop it.",
  toHear: (what: string, hear: string) => `${what}. To hear: ${hear}`,
  loop: "over and over",
  /** Each by a short name. */
  names: {
    "left-ident": "Left ident",
    "right-ident": "Right ident",
    "burst-pair": "Burst pair",
    silence: "Silence",
    "line-up": "Line up",
    "stereo-ident": "Stereo ident",
    "line-ident": "Line ident",
    "high-pair": "High pair",
    "high-left": "High left",
    "high-right": "High right",
    "polarity-pulse": "Polarity pulse",
    "pink-noise": "Pink noise",
    "white-noise": "White noise",
    "balance-tone": "Balance tone",
    rotation: "Rotation",
    "buzz-search": "Buzz search",
    "seal-check": "Seal check",
    click: "Click",
    "hum-50": "Hum 50",
    "hum-60": "Hum 60",
  },
  takeAway: {
    title: "Take them with you",
    what: "WAV files of 24 bits, and a sheet that says what each is and what to hear, for a player that runs no browser. What is for instruments only is in it too, and says so.",
    stop: "stop",
    save: (megabytes: number) => `Save the files, ${megabytes} MB`,
    failed:
      "The files could not be made: too little memory, or a part of the program did not load. Close other pages and press again.",
    make: "Make the files",
  },
  recording: {
    save: (megabytes: number) => `Save the recording, ${megabytes} MB`,
    failed: "It could not be made: try again",
    keep: "keep this recording",
  },
  out: {
    title: "Where the sound goes",
    hint: "Plug nothing in or out while it sounds: another output begins at the start level again.",
    again:
      "Hear it again before you go on: an open microphone can turn a wireless headset to one channel.",
    outputs: "Output",
    channels: "Channels",
    pair: (first: number, second: number) => `output ${first} and ${second}`,
    says: (first: number, second: number) =>
      `Says “output ${first} and ${second}”, then “left” in the left ear and “right” in the right one.`,
    hear: "Hear which it is",
    another: "Another output?",
    willAsk:
      "The browser names the outputs to a page that may use the microphone. It will ask you; the microphone is closed again at once and nothing is recorded.",
    ask: "Ask the browser for their names",
    askAgain: "Ask again",
  },
  own: {
    knocks: "knocks and bursts",
    choose: "a sound of your own",
    reading: "Reading it.",
    stays: "A file stays on this device.",
    notes: {
      "first minute only": "Only its first minute is played.",
      "first two channels only": "Only its first two channels are played.",
    },
    trouble: {
      "too big": "That file is over 200 MB. Take a shorter one; a minute is enough.",
      unreadable: "That file cannot be read. It may have been moved; choose it again.",
      "not a sound":
        "The browser finds no sound in that file. Take a WAV, MP3 or other sound file.",
      "not loaded":
        "What reads sound files did not load. Look at the connection and choose it again.",
      "not finite": "That file has broken samples in it. Take another one.",
      "too short": "That sound is shorter than half a second. Take a longer one.",
      silent: "There is nothing to hear in that file. Take another one.",
      "only clicks": "There is nothing but clicks in that file. Take another one.",
    },
  },
};
