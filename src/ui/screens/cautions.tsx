import { useWords } from "#ui/words/use-words.ts";

/** What stands before the first sound of a session. */
export function Cautions({ bench }: { readonly bench: boolean }) {
  const { cautions } = useWords().sounding;
  return <Listed items={bench ? [cautions.bench] : [cautions.volumes, cautions.muted]} />;
}

/** Before a sound that may come out of anything. */
export function OutCautions() {
  const { cautions } = useWords().sounding;
  return <Listed items={[cautions.outMuted, cautions.outVolumes]} />;
}

/** Before something is played that is not meant for the rig. */
export function OwnCautions() {
  const { cautions } = useWords().sounding;
  return <Listed items={[cautions.own]} />;
}

const Listed = ({ items }: { readonly items: readonly string[] }) => (
  <ul class="cautions">
    {[...items, useWords().sounding.emergency].map((text) => (
      <li key={text}>{text}</li>
    ))}
  </ul>
);
