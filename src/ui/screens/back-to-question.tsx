import { useWords } from "#ui/words/use-words.ts";

interface Props {
  readonly at: { readonly onBack: () => void } | undefined;
}

/** From the microphone back to where it was asked for; nothing outside of a session. */
export function BackToQuestion({ at }: Props) {
  const { asking } = useWords();
  return (
    at && (
      <button type="button" class="quiet" onClick={at.onBack}>
        {asking.backToQuestion}
      </button>
    )
  );
}
