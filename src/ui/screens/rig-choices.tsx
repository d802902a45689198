import { added, type Place } from "#core/drawing/adding.ts";
import { leadPut, otherLeads } from "#core/drawing/changing.ts";
import type { PlugEnd } from "#core/drawing/edited.ts";
import { placesFor } from "#core/drawing/places.ts";
import { replugged, spotsFor } from "#core/drawing/replugging.ts";
import type { PartKind } from "#core/parts/catalogue.ts";
import { KindButton } from "#ui/parts/kind-button.tsx";
import { spotKey } from "#ui/parts/rig-keys.ts";
import { Roving } from "#ui/parts/roving.tsx";
import { useWords, type Words } from "#ui/words/use-words.ts";
import { focusAt, keyOfPlace, placeWords } from "./rig-dragging.ts";
import type { AtRig } from "./rig-edit.ts";
import { everyKind } from "./rig-tray.tsx";

interface Of {
  readonly at: AtRig;
}

/** The sockets that a plug goes into. */
export function ChooseSpot({ at, end }: Of & { readonly end: PlugEnd }) {
  const { rig: words } = useWords();
  const spots = spotsFor(at.built, end);
  const inUse = new Map(at.rig.plugged.map((one) => [spotKey(one), one.part]));
  return (
    <>
      <h2>{words.whichSocket}</h2>
      {spots.length === 0 && <p>{words.noSocket}</p>}
      <ul class="rig-choices">
        {spots.map((spot) => {
          const by = inUse.get(spotKey(spot));
          return (
            <li key={spotKey(spot)}>
              <button
                type="button"
                class="say"
                onClick={() => at.edit((rig) => replugged(rig, end, spot), { end })}
              >
                {words.at(spot.socket, spot.into)}
                {by !== undefined && <span class="note">{` ${words.swaps(by)}`}</span>}
              </button>
            </li>
          );
        })}
      </ul>
    </>
  );
}

/** A thing of a kind put into a place. */
const put = (at: AtRig, kind: PartKind, place: Place, { language }: Words): void =>
  at.edit(
    (rig) => added(rig, kind, place, (one) => language.patching.kinds[one].name),
    focusAt(place),
  );

/** The places where a thing may go. */
export function WhereTo({ at, kind }: Of & { readonly kind: PartKind }) {
  const words = useWords();
  const places = placesFor(at.built, kind);
  return (
    <>
      <h2>{words.rig.whereTo(words.language.patching.kinds[kind].name)}</h2>
      {places.length === 0 && <p>{words.rig.noPlace}</p>}
      <ul class="rig-choices">
        {places.map((place) => {
          return (
            <li key={keyOfPlace(at.built, place)}>
              <button type="button" class="say" onClick={() => put(at, kind, place, words)}>
                {placeWords(at.built, place, words)}
              </button>
            </li>
          );
        })}
      </ul>
    </>
  );
}

interface KindsProps extends Of {
  readonly title: string;
  /** The first place of a kind that is meant, or nothing where it has none. */
  readonly placeOf: (kind: PartKind) => Place | undefined;
}

/** The kinds that have a place, as pictures. */
function KindsFor({ at, title, placeOf }: KindsProps) {
  const words = useWords();
  const kinds = everyKind.flatMap((kind) => {
    const place = placeOf(kind);
    return place === undefined ? [] : [{ kind, place }];
  });
  return (
    <>
      <h2>{title}</h2>
      {kinds.length === 0 && <p>{words.rig.noPlace}</p>}
      <Roving label={title} kind="rig-kinds">
        {kinds.map(({ kind, place }) => (
          <KindButton key={kind} kind={kind} onPress={() => put(at, kind, place, words)} />
        ))}
      </Roving>
    </>
  );
}

/** What goes into the first free socket of a part that takes it. */
export function PutIn({ at, part }: Of & { readonly part: string }) {
  const { rig: words } = useWords();
  const placeOf = (kind: PartKind) =>
    placesFor(at.built, kind).find((place) => place.place === "socket" && place.spot.into === part);
  return <KindsFor at={at} title={words.whatIn} placeOf={placeOf} />;
}

/** What goes in the way before a plug. */
export function ChooseBetween({ at, end }: Of & { readonly end: PlugEnd }) {
  const { rig: words } = useWords();
  const placeOf = (kind: PartKind) =>
    placesFor(at.built, kind).find(
      (place) =>
        place.place === "plug" && place.end.part === end.part && place.end.plug === end.plug,
    );
  return <KindsFor at={at} title={words.between} placeOf={placeOf} />;
}

/** What may feed a box that nothing feeds. */
export function ChooseSource({ at, part }: Of & { readonly part: string }) {
  const { rig: words } = useWords();
  const placeOf = (kind: PartKind) =>
    placesFor(at.built, kind).find((place) => place.place === "box" && place.part === part);
  return <KindsFor at={at} title={words.source} placeOf={placeOf} />;
}

/** The kinds of lead that join the same two. */
export function ChooseLead({ at, part }: Of & { readonly part: string }) {
  const { rig: words, language } = useWords();
  const kinds = [...new Set(otherLeads(at.rig, part).map(({ kind }) => kind))];
  const now = at.built.part(part).kind;
  return (
    <>
      <h2>{words.otherLead}</h2>
      {kinds.every((kind) => kind === now) && <p>{words.noOtherLead}</p>}
      <ul class="rig-choices">
        {kinds.map((kind) => (
          <li key={kind}>
            <button
              type="button"
              class="say"
              aria-pressed={kind === now}
              onClick={() => at.edit((rig) => leadPut(rig, part, kind), { part })}
            >
              {language.patching.kinds[kind].name}
              <span class="note">{` ${language.patching.kinds[kind].note}`}</span>
            </button>
          </li>
        ))}
      </ul>
    </>
  );
}
