import { emergency } from "./words.ts";

/** What stands before the first sound of a session. */
export const Cautions = ({ bench }: { readonly bench: boolean }) => (
  <ul class="cautions">
    {bench ? (
      <li>Your own good headphones, L on the left ear, volume low.</li>
    ) : (
      <>
        <li>Everyone's volume at zero, then the signal on; they raise it themselves.</li>
        <li>Are the PA, the stream and the recorder muted?</li>
      </>
    )}
    <li>{emergency}</li>
  </ul>
);

/** Before a sound that may come out of anything. */
export const OutCautions = () => (
  <ul class="cautions">
    <li>Are the PA, the stream and the recorder muted? This output may feed more than ears.</li>
    <li>Everyone's volume at zero, then the sound on; they raise it themselves.</li>
    <li>{emergency}</li>
  </ul>
);

/** Before something is played that is not meant for the rig. */
export const OwnCautions = () => (
  <ul class="cautions">
    <li>
      Your own good headphones in this device, L on the left ear, volume low: not the rig's feed.
    </li>
    <li>{emergency}</li>
  </ul>
);
