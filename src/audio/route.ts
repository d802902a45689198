/** An output device, by the name the browser knows it by in this page and by the one people know. */
export interface Device {
  readonly id: string;
  readonly name: string;
}

/** Where the sound goes. */
export interface Route {
  /** Left out: whatever the system plays to. */
  readonly device?: Device;
  /** The first of two channels that get left and right, counted from nought; all others are silent. */
  readonly first: number;
}

/** The first pair of whatever the system plays to. */
export const systemRoute: Route = { first: 0 };
