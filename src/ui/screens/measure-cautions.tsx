import { useWords } from "#ui/words/use-words.ts";

/** Before something for instruments is played. */
export const InstrumentCautions = () => (
  <ul class="cautions">
    <li>Headphones off and laid down: this is for instruments, and nobody listens to it.</li>
    <li>Nothing else on this output: PA, stream and recorder off it. Phantom power (48 V) off.</li>
    <li>Direct monitoring off in the interface, or the input feeds the output and it howls.</li>
    <li>
      It starts quietly. The input is open, and its light on, only while it measures; nothing of it
      is kept.
    </li>
    <li>{useWords().sounding.emergency}</li>
  </ul>
);

/** Why wired ones: before a microphone is opened. */
export const wired =
  "Wired headphones only: opening a microphone may turn a wireless headset mono, or send the sound to the output that calls use.";

/** Before a cup is played to a microphone. */
export const CupCautions = () => (
  <ul class="cautions">
    <li>{wired}</li>
    <li>Headphones off the head: the tones are for instruments, and nobody listens to them.</li>
    <li>Nothing else on this output: PA, stream and recorder off it.</li>
    <li>
      It starts quietly and goes up in slow steps. The microphone is open, and its light on, only
      while it measures; nothing of it is kept.
    </li>
    <li>{useWords().sounding.emergency}</li>
  </ul>
);
