/** Where a sound can be, seen from above. 'All round' is spread with no place of its own. */
const places = [
  "left ear",
  "right ear",
  "middle",
  "off to the left",
  "off to the right",
  "all round",
] as const;
export type Place = (typeof places)[number];

/** What a listener can say of one sound: a place, at full strength or faint, or nothing at all. */
export const heards = [
  ...places,
  ...places.map((place): Faint => `faint, ${place}`),
  "nothing",
] as const;
type Faint = `faint, ${Place}`;
export type Heard = Place | Faint | "nothing";

const mirror: Readonly<Record<Place, Place>> = {
  "left ear": "right ear",
  "right ear": "left ear",
  middle: "middle",
  "off to the left": "off to the right",
  "off to the right": "off to the left",
  "all round": "all round",
};

/** What somebody says who takes left for right. */
export function mirrored(heard: Heard): Heard {
  if (heard === "nothing") return heard;
  const place = placeOf(heard);
  return heard === place ? mirror[place] : `faint, ${mirror[place]}`;
}

/** The place of an answer that has one. Throws on 'nothing', which has none. */
export function placeOf(heard: Heard): Place {
  const place = places.find((one) => heard.endsWith(one));
  if (place === undefined) throw new Error(`'${heard}' names no place`);
  return place;
}
