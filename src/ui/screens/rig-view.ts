import type { Grown, PlugEnd, Refusal } from "#core/drawing/edited.ts";
import type { Meant } from "#ui/parts/rig-keys.ts";

/** The rig as a picture to be changed, and what of it is in hand. */
export interface RigView {
  readonly screen: "rig";
  /** The thing that was pressed, whose few actions are shown. */
  readonly chosen?: Meant | undefined;
  readonly doing?: RigDoing | undefined;
  /** Why the last edit was not made. */
  readonly refused?: Refusal | undefined;
  /** What the last press did, where the picture alone does not say it. */
  readonly did?: "undone" | "redone" | undefined;
  /** What the last edit drew besides what was asked for. */
  readonly grown?: Grown | undefined;
  /** What has the focus once it is drawn. */
  readonly focus?: Meant | "heading" | undefined;
}

/** What is being chosen or written for the thing in hand. */
export type RigDoing =
  | { readonly do: "name" | "change" | "put" | "source" | "lead" }
  | { readonly do: "re-plug" | "between"; readonly end: PlugEnd };
