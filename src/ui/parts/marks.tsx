/** A tick, drawn: not every font has one. */
export const Tick = () => (
  <svg class="tick" viewBox="0 0 28 24" aria-hidden="true">
    <path d="M3 13l8 8L25 3" />
  </svg>
);
