import type { HelpName, HelpText } from "#ui/words/help-names.ts";

const screens: Readonly<Record<HelpName, HelpText>> = {
  start: {
    question: "What brings you here?",
    answer:
      "Three jobs begin here: everyone's headphones before a show, one pair that sounds wrong, a lead that nobody trusts yet. Nothing is plugged in for the first try: the rig without gear has a fault to find.",
  },
  board: {
    question: "Who is next?",
    answer:
      "The rig from its source to every pair of ears: left is the filled lane, right the outlined one. A tick is healthy, yellow tape needs you, a pale branch was not heard yet. Press a name to go there.",
  },
  "hands up": {
    question: "Who points elsewhere than the others?",
    answer:
      "Everybody wears their headphones and hears the same sounds at once, and points to where they are. Look along the table and press only those who differ: all others are entered as well.",
  },
  curtain: {
    question: "What was really wrong?",
    answer:
      "The rig without gear had one fault, drawn by its number. Here it is: where it was, what it did to the lanes, and whether you had named it.",
  },
  rig: {
    question: "What hangs on what?",
    answer:
      "The rig from its source to every pair of ears, as this program has it. Drag the end of a lead to another socket, press a thing to name, change or copy it; whatever you do can be undone.",
  },
  levels: {
    question: "How loud is it, and how much does it hiss?",
    answer:
      "The programme from its source to the ears: its peaks above it, noise below, and over every box the level at which it clips. Turn the knobs and see what arrives; what nobody typed is taken as usual, with how far that may be off.",
  },
  sessions: {
    question: "Which evening do you want?",
    answer:
      "Every session that is kept in this browser, the newest first. Go on with one, begin tomorrow's from it, lay two beside each other, or take one away as a file.",
  },
  plan: {
    question: "Which lead makes these two work together?",
    answer:
      "Say what the sound comes out of, what it goes into and what you want to hear. The circuit of each lead is worked out with the sockets at both ends; what the ears get is drawn at the far side.",
  },
  listen: {
    question: "What does this fault sound like?",
    answer:
      "Choose a fault of the rig and hear it in your own good headphones, which need no fault of their own for it. Sound and drawing come from the same four numbers: what each ear gets of each side.",
  },
  sheet: {
    question: "What is handed over?",
    answer:
      "One page of what was heard, found and mended here, and of what was not tested. Write a name on it, print it or save it as PDF; the file for spreadsheets has the same in rows.",
  },
  words: {
    question: "What does that word mean?",
    answer:
      "The words of the trade as this program uses them, each in a sentence or two. Type a part of one to find it.",
  },
  complaint: {
    question: "What do they say, and where?",
    answer:
      "Take down what somebody complains of in their own words. No word decides anything: each only makes some faults likelier, and the next question is chosen from there.",
  },
  noise: {
    question: "Where does the noise come in?",
    answer:
      "Whatever is turned down takes with it what comes in before it, and nothing that comes in behind it. So each knob tells in which half of the way a hiss, a hum or a crackle begins. Try the one thing, say what became of it, and put it back.",
  },
  "sound out": {
    question: "Where does the sound come out?",
    answer:
      "Which of this device's outputs feeds the rig. Play to each, quietly, and hear which it is before anybody else does.",
  },
  prove: {
    question: "Which lead is in your hand?",
    answer:
      "Say what is on each end, and how it can be tested: with a multimeter, by sound card, or by ear. From that follow the contacts that must be joined, and those that must not.",
  },
  "prove reading": {
    question: "What does the instrument show?",
    answer:
      "Touch the two contacts that are drawn and say what is read. The next pair is the one that tells most of what is left; a sound lead is done once every fault that a meter can find is ruled out.",
  },
  sounds: {
    question: "Which sound do you need?",
    answer:
      "Every test sound, to be played by hand or taken along as files. The strip shows when it is on the left and when on the right; a hollow bar is upside down.",
  },
  flex: {
    question: "Does it break when it is bent?",
    answer:
      "Tones run through the lead while you bend it from plug to plug. Each short break is marked where your hand was, with what it was: one side, both, or the return.",
  },
  measure: {
    question: "What does the lead do, in numbers?",
    answer:
      "A sound card plays through the lead and records what comes back: levels, what crosses over, polarity and noise. Two sockets and a good lead to compare with are all it takes.",
  },
  training: {
    question: "Can you name the fault by ear?",
    answer:
      "A sound is played as some fault would let it through: say which. What was taken for something else comes more often, and the score is kept by fault.",
  },
  asked: {
    question: "Where in the head was the sound?",
    answer:
      "Play, listen and point to where it was: an ear, the middle, off to a side, or all round with no place. If they point and you press while you face them, turn the head on the screen.",
  },
  absent: {
    question: "Why is nothing asked here?",
    answer:
      "It was said that nobody is here: nobody is sent here any more, and the sheet says that it was not tested. Once somebody is here again, say so, and it is heard like any other position.",
  },
  balance: {
    question: "How much louder must one side be?",
    answer:
      "A noise goes on; push it until it sits in the middle of the head. How far it had to be pushed is by how much the two sides differ.",
  },
  look: {
    question: "What do you see there?",
    answer:
      "Some faults show before they are heard: a plug that is not home, a button that is pressed, a knob at its end. Look at the place that is named and press what you see.",
  },
  twist: {
    question: "Does it change when the plug is turned?",
    answer:
      "A dirty or bent contact comes and goes when its plug is twisted in its socket. Twist it gently while something plays, and say whether anything changed.",
  },
  do: {
    question: "What is changed now?",
    answer:
      "One thing at a time, the volume down first. Do it and say so; what is heard afterwards tells whether it was that. If it cannot be done here, say that: something else is chosen.",
  },
  verdict: {
    question: "What is wrong, and what mends it?",
    answer:
      "The place in the chain where the lanes break, cross, join or twist, how sure that is, and one move. Do the move, say so, and listen again: a repair counts once it was heard.",
  },
  healthy: {
    question: "Is this position done?",
    answer:
      "Left, right and middle were heard where they belong, and all that could be wrong together is less than 3 in 100. What these checks cannot hear stands under 'not tested'.",
  },
  cups: {
    question: "What does each cup play?",
    answer:
      "Hold one cup flat to the microphone, the other turned away, then the other way round. It hears which of them plays, how loud, and with which polarity against the other.",
  },
};

/** Help where one stands, and the way to the words of the trade. */
export const help = {
  screens,
  toWords: "The words of the trade",
  close: "close",
};
