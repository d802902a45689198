import { type Carried, shown } from "./content.ts";
import { Lane } from "./lane.tsx";

/** What an output stage puts on its contacts: a short lane for each, with the contact's name and a minus where it is upside down. */
export const StagePicture = ({ contacts }: { readonly contacts: readonly Carried[] }) => (
  <svg class="stage-picture" viewBox="-14 0 134 56" aria-hidden="true">
    {contacts.map(({ contact, content }, index) => {
      const seen = shown(content);
      const y = contacts.length < 2 ? 28 : 16 + index * 24;
      return (
        <g key={contact}>
          <text class="gets" x="34" y={y + 5} text-anchor="end">
            {contact}
          </text>
          <Lane carries={seen.carries} d={`M44 ${y}H112`} />
          {seen.inverted && (
            <g transform={`translate(78 ${y})`}>
              <circle class="knot open" r="8" />
              <path class="sign" d="M-4 0H4" />
            </g>
          )}
        </g>
      );
    })}
  </svg>
);
