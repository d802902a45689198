import type { NoiseWords } from "./noise-words.ts";

export const answersIn: NoiseWords["answers"] = {
  gone: "gone",
  less: "less",
  "the same": "the same",
  more: "more",
  "it goes with it": "it goes with the hand",
  "there too": "there too",
  "not there": "not there",
};

/** What each cause is, and what helps against it, in English. Common practice, no source. */
export const remediesIn: Pick<NoiseWords, "means" | "remedies" | "cautions"> = {
  means: {
    "in the programme":
      "A microphone, its preamplifier or an old recording brings it along. Nothing behind it takes it away.",
    "before the knob":
      "Every input has a little noise of its own. Where what comes in is weak, it is turned up together with it.",
    "behind the knob":
      "An output has noise of its own that is always there. It is heard where little is sent, or where headphones are very sensitive.",
    "behind the last knob":
      "Its output has noise of its own that is always there, whatever is turned. Very sensitive headphones show it.",
    "the box itself": "Every box has noise of its own; without a knob it is always as loud.",
    "radio link": "Weak or disturbed reception is heard as rushing, cracks or gaps.",
    "ground loop":
      "Both boxes come to earth by their mains leads, and the audio lead joins the two a second time. A current of the mains flows round that ring and through the lead's return, where it is heard.",
    "loop by another lead":
      "A lead that carries no sound, such as USB, a network, a control lead or a screen, joins the earths of two boxes, and the audio lead joins them a second time.",
    "lead picks it up":
      "A long unbalanced lead beside supplies, dimmers or mains leads takes their field in.",
    "return lost":
      "Without its return the programme comes back by another way, and the mains with it. It is mostly thin as well.",
    "power supply":
      "The supply passes on a little of the mains: a small plug-in one through its filter, an old one through tired capacitors.",
    "knob dirty": "Dust or wear on the track breaks the contact while the knob moves.",
    "plugs not clean": "Oxide or dirt between plug and spring makes and breaks.",
    "lead breaking": "It mostly breaks where it goes into the plug, and works again as it is bent.",
    "cord breaking": "It mostly breaks at the plug or where it goes into the cup.",
    "source stutters":
      "A computer that gives its sound too little time leaves gaps, mostly short and sharp.",
    "input overloaded":
      "More comes in than the input can take, and its peaks are cut off before any knob of the box. Turning that box down only makes it softer.",
    "output at its end":
      "More is asked of it than it can give into these headphones, and its peaks are cut off.",
    "driver torn": "A torn or loose membrane rattles, most of all with bass and loud.",
    "something else": "None of the causes here goes well with what was noticed.",
  },
  remedies: {
    "turn the earlier up":
      "Turn up what comes before it, as far as it stays clean, and turn this down again to the old loudness.",
    "turn it up and the next down":
      "Turn this knob up, as far as it stays clean, and the next one after it down to the old loudness.",
    "earlier up, next down":
      "Turn up what comes before it, as far as it stays clean, and the next knob after it down to the old loudness.",
    "that lead left out":
      "Leave that lead out while it is listened, or put an isolator made for it between: for USB, for the network.",
    "wheel before the ears":
      "Put a lead with a volume wheel before the headphones: the wheel down, the knob up. It takes the hiss down with the rest.",
    "less sensitive headphones":
      "Give out headphones that are less sensitive, such as ones over the ears in place of in-ears.",
    "quieter box": "Take another output, or a box with less noise of its own.",
    "mend at the source":
      "Go to where it comes from: another microphone or channel, the gain set anew there, another recording.",
    "nearer and another channel":
      "Antennas in sight of each other, a few steps apart from other radio; then another channel, and fresh batteries.",
    "other way by cable": "Where it matters, feed this seat by cable.",
    "all from one outlet":
      "Take the power of all boxes from one outlet or distribution, so that the ring is small.",
    "on its battery": "Run the computer on its battery, if it lasts for the show.",
    "balanced or transformer":
      "Join the two with a balanced lead, or put an isolating transformer (a ground-loop isolator) into the signal.",
    "screen lifted at one end":
      "Between balanced boxes: a proper lead whose screen is joined at one end only. This is the signal's screen, never the mains earth.",
    "away from supplies":
      "Lay the lead away from supplies and mains leads, and across them where they must meet.",
    "balanced lead": "Use a balanced way, or as short a lead as will do.",
    "another lead": "Put another lead in, and tie a knot into this one.",
    "another supply": "Try another supply of the same voltage, polarity and current.",
    "clean the plug": "Plug it out and in five times; then wipe it, or use contact cleaner.",
    "turn the knob to and fro":
      "Turn it twenty times from end to end, with the volume behind it down.",
    "spray the knob":
      "Switch it off and use contact cleaner for tracks; in the long run, another one.",
    "other headphones": "Give out other headphones, and put these aside for repair.",
    "bigger buffer":
      "Set a bigger sound buffer, close other programs, switch off saving power; take another USB socket.",
    "source down, amplifier up":
      "Turn down what comes before it, and make up at the last knob before the ears.",
    pad: "If that is not enough, put a pad in: the input's own switch, or one in the lead.",
    "turn it down": "Turn it down; what is missing, better headphones or a bigger amplifier give.",
    "fewer or other headphones":
      "Hang fewer pairs on this output, or headphones that suit it better.",
    "ask by ear": "Ask the position by ear: left, right and the pair show a lost return.",
  },
  cautions: {
    "never lift a mains earth":
      "Never take the earth off a mains plug, and use no adapter that does: it is there so that nobody is killed by a fault.",
    "a tingle":
      "If anything metal tingles, stop: hands off, leave it switched off at the wall, and have a licensed electrician look at it.",
    "volume first": "Volume down before anything is plugged or switched.",
    "power off": "Off before anything is sprayed, and on again only once it is dry.",
  },
};
