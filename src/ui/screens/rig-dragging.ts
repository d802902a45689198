import { added, type Place } from "#core/drawing/adding.ts";
import { type PlugEnd, plugAt, type Spot } from "#core/drawing/edited.ts";
import { placesFor } from "#core/drawing/places.ts";
import { replugged, spotsFor } from "#core/drawing/replugging.ts";
import type { PartKind } from "#core/parts/catalogue.ts";
import type { BuiltRig } from "#core/rig/rig.ts";
import type { Dragging, Target } from "#ui/parts/rig-drag.ts";
import { keyOf, type Meant, meantBy, spotKey } from "#ui/parts/rig-keys.ts";
import type { Words } from "#ui/words/use-words.ts";
import type { AtRig } from "./rig-edit.ts";

/** What a pointer takes up: a plug, or a thing to add; nothing where it presses something else. */
export function draggingOf(pressed: Element, at: AtRig, words: Words): Dragging | undefined {
  const element = pressed.closest<HTMLElement>("[data-end], [data-thing]");
  const { end, thing } = element?.dataset ?? {};
  const meant = end === undefined ? meantBy(thing ?? "") : meantBy(`end\n${end}`);
  if (meant === undefined) return undefined;
  if ("end" in meant) return plugDragged(meant.end, at, words);
  return "kind" in meant ? kindDragged(meant.kind, at, words) : undefined;
}

/** A free socket of a box stands for the box: what is let go there goes into the first. */
function withBoxes<Goes>(
  all: ReadonlyMap<string, Goes>,
  boxOf: (goes: Goes) => string,
): ReadonlyMap<string, Goes> {
  const boxes = new Map<string, Goes>();
  for (const goes of all.values()) {
    const key = keyOf({ part: boxOf(goes) });
    if (!boxes.has(key)) boxes.set(key, goes);
  }
  return new Map([...boxes, ...all]);
}

function plugDragged(end: PlugEnd, at: AtRig, { rig: words, marks, language }: Words): Dragging {
  const plug = plugAt(at.built, end);
  let spots: ReadonlyMap<string, Spot> = new Map();
  const said = `${language.names.alone(end.part)}: ${plug === undefined ? marks.plug(end.plug) : words.plug(plug)}`;
  return {
    said,
    targets: () => {
      const fitting = spotsFor(at.built, end);
      const used = new Set(at.rig.plugged.map(spotKey));
      const free = fitting.filter((spot) => !used.has(spotKey(spot)));
      spots = new Map([
        ...withBoxes(new Map(free.map((spot) => [spotKey(spot), spot])), ({ into }) => into),
        ...fitting.map((spot) => [spotKey(spot), spot] as const),
      ]);
      return [...spots].map(
        ([key, { into, socket }]): Target => ({
          key,
          said: words.drop(said, words.at(socket, into)),
        }),
      );
    },
    drop: (key) => {
      const spot = spots.get(key) ?? spotIn(at.built, key);
      if (spot !== undefined) at.edit((rig) => replugged(rig, end, spot), { end });
    },
  };
}

/** The socket that an element stands for, whether or not anything fits there. */
function spotIn({ parts }: BuiltRig, key: string): Spot | undefined {
  const [into = "", socket = ""] = key.split("\n");
  return parts.some(({ id }) => id === into) ? { into, socket } : undefined;
}

function kindDragged(kind: PartKind, at: AtRig, words: Words): Dragging {
  const called = (one: PartKind) => words.language.patching.kinds[one].name;
  let places: ReadonlyMap<string, Place> = new Map();
  return {
    said: called(kind),
    targets: () => {
      const all = placesFor(at.built, kind);
      const keyed = new Map(all.map((place) => [keyOfPlace(at.built, place), place]));
      const inSockets = new Map([...keyed].filter(([, { place }]) => place === "socket"));
      places = new Map([
        ...withBoxes(inSockets, (place) => (place.place === "socket" ? place.spot.into : "")),
        ...keyed,
      ]);
      return [...places].map(([key, place]) => ({
        key,
        said: droppedAt(at.built, called(kind), place, words),
      }));
    },
    drop: (key) => {
      const place = places.get(key);
      if (place !== undefined) at.edit((rig) => added(rig, kind, place, called), focusAt(place));
    },
  };
}

/** The element of the picture that stands for a place. */
export function keyOfPlace(rig: BuiltRig, place: Place): string {
  if (place.place === "box") return keyOf({ part: place.part });
  if (place.place === "socket") return spotKey(place.spot);
  const own = endAt(rig, place.end);
  return own === undefined ? "" : spotKey(own);
}

/** Where a plug is. */
export const endAt = ({ plugged }: BuiltRig, { part, plug }: PlugEnd) =>
  plugged.find((one) => one.part === part && one.plug === plug);

/** Where something goes, in words. */
export function placeWords(rig: BuiltRig, place: Place, { rig: words }: Words): string {
  if (place.place === "box") return words.inFront(place.part);
  if (place.place === "socket") return words.at(place.spot.socket, place.spot.into);
  const { part, plug } = place.end;
  const own = endAt(rig, place.end);
  const one = rig.part(part).plugs.length === 1;
  return words.before(
    one ? undefined : plug,
    part,
    own === undefined ? "" : words.at(own.socket, own.into),
  );
}

/** What is in the hand, and where it would go: into a socket, or to a place that says itself how. */
function droppedAt(rig: BuiltRig, what: string, place: Place, words: Words): string {
  const where = placeWords(rig, place, words);
  return place.place === "socket" ? words.rig.drop(what, where) : `${what}: ${where}`;
}

/** What is looked at after something was put into a place. */
export function focusAt(place: Place): Meant {
  if (place.place === "box") return { part: place.part };
  return place.place === "socket" ? { part: place.spot.into } : { end: place.end };
}
