import { useMemo, useState } from "preact/hooks";
import { placeName } from "#core/report/names.ts";
import { sentence } from "#core/report/phrases.ts";
import type { RigFault } from "#core/rig/rig-faults.ts";
import { faultText } from "#core/words/fault-text.ts";
import { EffectGlyph } from "#ui/parts/effect-glyph.tsx";
import { useLetters } from "#ui/parts/keys.ts";
import { useWords, type Words } from "#ui/words/use-words.ts";
import { OwnCautions } from "./cautions.tsx";
import { Heading } from "./frame.tsx";
import { Level } from "./level.tsx";
import { chainsFor, faultsAt, type Heard, heardIn, placesIn } from "./listen-what.ts";
import { type Own, OwnSoundChoice } from "./own-sound-choice.tsx";
import type { View } from "./page.ts";
import { testProgramme } from "./test-programme.ts";
import { TwoVersions, versionOf } from "./two-versions.tsx";
import { useAudition } from "./use-audition.ts";
import type { Held } from "./use-page.ts";
import { ownHeadphones, useArrive } from "./use-place.ts";
import { WayPicture } from "./way-picture.tsx";

type ListenView = Extract<View, { screen: "listen" }>;

interface Props {
  readonly held: Held;
  readonly view: ListenView;
}

/** What a fault of any part sounds like, healthy beside it; or what a patch will, beside a straight feed. */
export function Listen({ held, view }: Props) {
  const words = useWords();
  const { titles, healthy, faulty } = words.listening;
  useArrive(held, ownHeadphones);
  const heard = useMemo(() => heardIn(view.rig), [view.rig]);
  const [own, setOwn] = useState<Own>();
  const fault = heard.faults.find(({ id }) => id === view.fault);
  const choose = (next: Partial<ListenView>) =>
    held.change((page) =>
      page.view.screen === "listen" ? { ...page, view: { ...page.view, ...next } } : page,
    );
  const sound = useAudition(held, {
    key: `${view.rig.name} ${JSON.stringify(view.rig.parts)} ${fault?.id ?? ""} ${own?.taken ?? ""}`,
    programme: () => own?.sound ?? testProgramme(held.edges.player.rate(), 1),
    chains: () => chainsFor(heard, fault),
  });
  useLetters((key) => {
    const version = versionOf(key);
    if (version !== undefined) sound.hear(version);
  });
  return (
    <section class="listen">
      <Heading>{view.plan ? titles.plan : titles.faults}</Heading>
      <WayPicture
        rig={heard.rig}
        position={heard.position}
        {...(fault ? { fault } : {})}
        {...(view.place ? { place: view.place } : {})}
        {...(heard.own ? { own: heard.own } : {})}
      />
      <p class="fault-said">
        {fault ? sentence(faultText(words.language, heard.rig, fault)) : asItIs(words, view)}
      </p>
      <TwoVersions
        held={held}
        sound={sound}
        names={fault ? { healthy, faulty } : ownNames(words, view)}
      />
      {!held.page.sounded && <OwnCautions />}
      <OwnSoundChoice held={held} own={own} onOwn={setOwn} />
      <Places heard={heard} view={view} choose={choose} />
      <Level held={held} />
    </section>
  );
}

/** What is compared while nothing is broken. */
const ownNames = ({ listening }: Words, { plan }: ListenView) => ({
  healthy: listening.straight,
  faulty: plan ? listening.asItWillBe : listening.thisRig,
});

const asItIs = ({ listening }: Words, { plan }: ListenView): string =>
  plan ? listening.asDrawn : listening.nothingYet;

interface PlacesProps {
  readonly heard: Heard;
  readonly view: ListenView;
  readonly choose: (next: Partial<ListenView>) => void;
}

/** Where something may be wrong, and at the place pointed at, what. */
function Places({ heard, view, choose }: PlacesProps) {
  const words = useWords();
  const places = placesIn(heard);
  return (
    <>
      <h2>{words.listening.what}</h2>
      <ul class="places">
        {places.map((part) => (
          <li key={part}>
            <button
              type="button"
              class="tape"
              aria-pressed={view.place === part}
              onClick={() => choose({ place: part, fault: undefined })}
            >
              {words.listening.place(placeName(words.language, heard.rig, part))}
            </button>
          </li>
        ))}
      </ul>
      {view.place && (
        <ul class="soundings">
          {faultsAt(heard, view.place).map(({ fault, effect }) => (
            <li key={fault.id}>
              <button
                type="button"
                aria-pressed={view.fault === fault.id}
                onClick={() => choose({ fault: view.fault === fault.id ? undefined : fault.id })}
              >
                <EffectGlyph effect={effect} />
                <span>{briefly(words, heard, fault)}</span>
              </button>
            </li>
          ))}
        </ul>
      )}
    </>
  );
}

/** Without the place, which is chosen already. */
const briefly = ({ language, listening }: Words, { rig }: Heard, fault: RigFault): string =>
  listening.briefly(faultText(language, rig, fault), placeName(language, rig, fault.part));
