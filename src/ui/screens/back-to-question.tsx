interface Props {
  readonly at: { readonly onBack: () => void } | undefined;
}

/** From the microphone back to where it was asked for; nothing outside of a session. */
export const BackToQuestion = ({ at }: Props) =>
  at && (
    <button type="button" class="quiet" onClick={at.onBack}>
      back to the question
    </button>
  );
