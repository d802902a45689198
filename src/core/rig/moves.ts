/** What somebody changed in the world. Ids are those of the rig's parts, plugs, sockets and positions. */
export type Move =
  /** Everything a look can show at a place was set right. */
  | { readonly move: "set right"; readonly place: string }
  /** What is at a place was replaced by a good one, for good. */
  | { readonly move: "replaced"; readonly place: string }
  /** A plug was pulled out and pushed home, where it belongs. */
  | { readonly move: "plugged anew"; readonly part: string; readonly plug: string }
  /** Two parts changed places: each stands where the other stood. */
  | { readonly move: "exchanged"; readonly parts: readonly [string, string] }
  /** A part was laid aside, and one of its kind that is known to be good put in its place. */
  | { readonly move: "known good in"; readonly part: string }
  /** The part that was laid aside is back in its place, or the plug that was moved back in its socket. */
  | { readonly move: "put back"; readonly part: string }
  /** A plug was moved to another socket that nothing stands in. */
  | {
      readonly move: "moved";
      readonly part: string;
      readonly plug: string;
      readonly into: string;
      readonly socket: string;
    }
  /** The headphones at a position were turned round on the head; a second time turns them back. */
  | { readonly move: "turned round"; readonly position: string }
  /** A control was set, as a balance to its end. */
  | {
      readonly move: "set";
      readonly part: string;
      readonly control: string;
      readonly value: number;
    };
