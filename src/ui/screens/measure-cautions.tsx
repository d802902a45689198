import { useWords } from "#ui/words/use-words.ts";
import { emergency } from "./words.ts";

/** Before something for instruments is played. */
export function InstrumentCautions() {
  const { cautions } = useWords().measure;
  return (
    <ul class="cautions">
      <li>{cautions.off}</li>
      <li>{cautions.nothingElse}</li>
      <li>{cautions.monitoring}</li>
      <li>{cautions.quietly}</li>
      <li>{emergency}</li>
    </ul>
  );
}

/** Before a cup is played to a microphone. */
export function CupCautions() {
  const { cautions, first } = useWords().cups;
  return (
    <ul class="cautions">
      <li>{first.wired}</li>
      <li>{cautions.off}</li>
      <li>{cautions.nothingElse}</li>
      <li>{cautions.quietly}</li>
      <li>{emergency}</li>
    </ul>
  );
}
