import { plugAt } from "#core/drawing/edited.ts";
import { type Hanging, hangingIn, type Join, type Twig } from "#core/drawing/hanging.ts";
import type { BuiltRig } from "#core/rig/rig.ts";
import { useWords } from "#ui/words/use-words.ts";
import { glyphOf } from "./kind-glyphs.ts";
import { RigCable } from "./rig-cable.tsx";
import { FreeSockets, LooseEnds, RigEnds } from "./rig-ends.tsx";
import { foldedOn, type Run, widthOf } from "./rig-folded.ts";
import { endKey, keyOf, spotKey } from "./rig-keys.ts";
import { Roving } from "./roving.tsx";
import { Tape } from "./tape.tsx";
import { useWide } from "./use-wide.ts";

/** What a line has room for, in CSS pixels: in a window of 75 rem, and in a wide one. */
const [roomy, wideRoom] = [1220, 1305];
/** How far apart plugs stand, one under the other, as the style sheet has it. */
const rows = { across: 66, down: 46 };

interface Props {
  readonly rig: BuiltRig;
}

/** A rig from its sources to the ears, left to right where there is room, else from the top down; and the same as a list in that order. */
export function RigPicture({ rig }: Props) {
  const { rig: words } = useWords();
  const [wide, wider] = [useWide(75), useWide(80)];
  const hanging: Hanging = hangingIn(rig);
  const widest = Math.max(...hanging.roots.map((twig) => widthOf(rig, twig)));
  const across = wide && widest <= (wider ? wideRoom : roomy);
  const row = across ? rows.across : rows.down;
  return (
    <Roving label={words.picture} kind={across ? "rig-picture across" : "rig-picture down"}>
      <ol class="roots">
        {hanging.roots.map((twig) => (
          <li key={twig.part}>
            <Box rig={rig} row={row} twig={twig} />
          </li>
        ))}
        {hanging.loose.map((id) => (
          <li key={id} class="lying">
            <LeadTape rig={rig} id={id} />
            <LooseEnds rig={rig} part={id} />
          </li>
        ))}
      </ol>
    </Roving>
  );
}

interface InPicture extends Props {
  readonly row: number;
}

interface BoxProps extends InPicture {
  readonly twig: Twig;
}

/** A box with all that hangs on it. */
function Box({ rig, row, twig }: BoxProps) {
  const { rig: words, language } = useWords();
  const { part, joins } = twig;
  const { kind } = rig.part(part);
  const kindName = language.patching.kinds[kind].name;
  const shown = language.names.alone(part);
  return (
    <div class={joins.length > 1 ? "twig many" : "twig"}>
      <div class="box">
        <button
          type="button"
          class="rig-thing"
          data-thing={keyOf({ part })}
          aria-label={words.thing(part, kindName)}
        >
          <svg class="rig-glyph" viewBox="0 -4 96 52" aria-hidden="true">
            <path class="glyph" d={glyphOf(kind)} />
          </svg>
          <Tape>{shown}</Tape>
          {kindName !== shown && <span class="note">{kindName}</span>}
        </button>
        <FreeSockets rig={rig} part={part} />
      </div>
      {joins.length > 0 && (
        <ol class="joins">
          {foldedOn(rig, twig).map((one) =>
            "seats" in one ? (
              <RunOf key={one.seats[0]?.id} rig={rig} run={one} />
            ) : (
              <Joined key={keyOfJoin(one)} rig={rig} row={row} join={one} />
            ),
          )}
        </ol>
      )}
    </div>
  );
}

const keyOfJoin = ({ twig, leads }: Join): string => twig?.part ?? leads.join();

/** One way that leaves a box: the plugs in it, the cable, the plugs at its end, and what stands there. */
function Joined({ rig, row, join }: InPicture & { readonly join: Join }) {
  const { leads, near, far, twig } = join;
  const worn = twig && rig.positions.find(({ wears }) => wears === twig.part);
  const kindsOf = (ends: Join["near"]) =>
    ends.flatMap((end) => {
      const plug = plugAt(rig, end);
      return plug === undefined ? [] : [plug.kind];
    });
  return (
    <li class={worn ? "join leaf" : "join"}>
      <RigEnds rig={rig} ends={near} edge="near" />
      <span class="cable">
        <RigCable
          near={kindsOf(near)}
          far={kindsOf(far)}
          row={row}
          down={!worn && row === rows.down}
        />
        {leads.map((id) => (
          <LeadTape key={id} rig={rig} id={id} />
        ))}
      </span>
      {leads.map((id) => (
        <LooseEnds key={id} rig={rig} part={id} />
      ))}
      {far.length > 0 && <RigEnds rig={rig} ends={far} edge="far" />}
      {worn && <Seat rig={rig} position={worn.id} />}
      {twig && !worn && <Box rig={rig} row={row} twig={twig} />}
    </li>
  );
}

function LeadTape({ rig, id }: Props & { readonly id: string }) {
  const { rig: words, language } = useWords();
  const { kind, plugs } = rig.part(id);
  const kindName = language.patching.kinds[kind].name;
  const shown = language.names.alone(id);
  return (
    <button
      type="button"
      class="rig-lead"
      data-thing={keyOf({ part: id })}
      aria-label={words.lead(id, kindName, plugs.map(words.plug).join(", "))}
    >
      <Tape>{shown}</Tape>
      {kindName !== shown && <span class="note">{kindName}</span>}
    </button>
  );
}

/** Somebody who listens, and what is on the head. */
function Seat({ rig, position }: Props & { readonly position: string }) {
  const { rig: words, language } = useWords();
  const seat = rig.positions.find(({ id }) => id === position);
  if (seat === undefined) return null;
  return (
    <button
      type="button"
      class="rig-thing rig-seat"
      data-thing={keyOf({ position })}
      aria-label={words.seat(seat.name, seat.wears)}
    >
      <svg class="rig-glyph" viewBox="0 -4 96 70" aria-hidden="true">
        <path class="glyph" d={glyphOf(rig.part(seat.wears).kind)} />
      </svg>
      <span>
        <Tape>{seat.name}</Tape>
        <span class="note">{language.names.alone(seat.wears)}</span>
      </span>
    </button>
  );
}

/** Many ways alike, each as one tap; what their plugs are is said once. */
function RunOf({ rig, run: { joins, seats } }: Props & { readonly run: Run }) {
  const { rig: words, language } = useWords();
  const [first] = joins;
  const lead = first?.leads[0];
  const plug = first?.near.flatMap((end) =>
    rig.part(end.part).plugs.filter(({ name }) => name === end.plug),
  )[0];
  return (
    <li class="join run">
      <p class="note">
        {[words.run(seats.length), plug && words.plug(plug), lead && language.names.alone(lead)]
          .filter(Boolean)
          .join(" · ")}
      </p>
      <ul class="taps">
        {joins.map(({ near }, index) => {
          const seat = seats[index];
          const [end] = near;
          return (
            seat && (
              <li key={seat.id}>
                <button
                  type="button"
                  class="rig-tap"
                  data-thing={keyOf({ position: seat.id })}
                  {...(end && { "data-end": endKey(end), "data-spot": spotKey(end) })}
                  aria-label={words.seat(seat.name, seat.wears)}
                >
                  <Tape>{seat.name}</Tape>
                </button>
              </li>
            )
          );
        })}
      </ul>
    </li>
  );
}
