import type { PartKind } from "#core/parts/catalogue.ts";
import type { PlugKind } from "#core/parts/plugs.ts";
import type { Connection } from "./rig.ts";

/** One thing that keeps a drawing from being a rig. `index` is its place in the rig's list of parts, plugs or positions. */
export type RigTrouble =
  | {
      readonly trouble: "name taken";
      readonly of: "parts" | "positions";
      readonly index: number;
      readonly id: string;
    }
  | {
      readonly trouble: "a person";
      readonly index: number;
      readonly id: string;
      readonly kind: PartKind;
    }
  | {
      readonly trouble: "setting";
      readonly index: number;
      readonly id: string;
      readonly name: string;
      readonly value: number | string;
      /** What would be understood. */
      readonly understood: string;
    }
  | {
      readonly trouble: "settings together";
      readonly index: number;
      readonly id: string;
      readonly understood: string;
    }
  | PlugTrouble
  | SeatTrouble
  | FeedTrouble;

/** What is amiss with one plug and its socket. */
export type PlugTrouble = { readonly index: number; readonly end: Connection } & (
  | { readonly trouble: "no such part"; readonly key: "part" | "into" }
  | { readonly trouble: "no such plug" | "no such socket"; readonly has: readonly string[] }
  | { readonly trouble: "does not fit"; readonly plug: PlugKind }
  | { readonly trouble: "used twice"; readonly key: "plug" | "socket" }
);

/** What is amiss with who listens. */
type SeatTrouble =
  | { readonly trouble: "nobody listens" }
  | {
      readonly trouble: "worn is no part" | "not to be worn" | "worn twice";
      readonly index: number;
      readonly position: string;
      /** What is worn. */
      readonly id: string;
    };

/** A position that nothing feeds, a part that two boxes drive, and a way that leads back to where it comes from. */
export type FeedTrouble =
  | { readonly trouble: "hangs from nothing"; readonly index: number; readonly id: string }
  | { readonly trouble: "goes round"; readonly part: string; readonly index: number | undefined }
  | {
      readonly trouble: "not one feed";
      readonly part: string;
      readonly index: number | undefined;
      readonly said: string;
    };
