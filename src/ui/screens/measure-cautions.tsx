import { useWords } from "#ui/words/use-words.ts";

/** Before something for instruments is played. */
export function InstrumentCautions() {
  const { measure, sounding } = useWords();
  const { cautions } = measure;
  return (
    <ul class="cautions">
      <li>{cautions.off}</li>
      <li>{cautions.nothingElse}</li>
      <li>{cautions.monitoring}</li>
      <li>{cautions.quietly}</li>
      <li>{sounding.emergency}</li>
    </ul>
  );
}

/** Before a cup is played to a microphone. */
export function CupCautions() {
  const { cups, sounding } = useWords();
  const { cautions, first } = cups;
  return (
    <ul class="cautions">
      <li>{first.wired}</li>
      <li>{cautions.off}</li>
      <li>{cautions.nothingElse}</li>
      <li>{cautions.quietly}</li>
      <li>{sounding.emergency}</li>
    </ul>
  );
}
