interface Props {
  /** The theme it is drawn in; left out, the page's own. */
  readonly theme?: string;
}

/** Two short lanes on their ground, as a theme draws them; by the system's choice it is half of each. */
export function Swatch({ theme }: Props) {
  if (theme === "as the system")
    return (
      <span class="halves">
        <Lanes theme="dark" />
        <Lanes theme="light" />
      </span>
    );
  return <Lanes theme={theme} />;
}

const Lanes = ({ theme }: { readonly theme: string | undefined }) => (
  <svg class="swatch" data-theme={theme} viewBox="0 0 44 28" aria-hidden="true">
    <rect class="under" width="44" height="28" />
    <path class="lane left" d="M5 9H39" />
    <path class="lane right" d="M5 19H39" />
    <path class="lane core" d="M5 19H39" />
  </svg>
);
