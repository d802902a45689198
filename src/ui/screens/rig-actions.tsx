import { useLayoutEffect, useRef } from "preact/hooks";
import { placedBy } from "#ui/parts/placed-by.ts";
import { keyOf, type Meant } from "#ui/parts/rig-keys.ts";
import { useWords, type Words } from "#ui/words/use-words.ts";
import { RigChange } from "./rig-change.tsx";
import {
  ChooseBetween,
  ChooseLead,
  ChooseSource,
  ChooseSpot,
  PutIn,
  WhereTo,
} from "./rig-choices.tsx";
import { type AtRig, elementOf } from "./rig-edit.ts";
import { EndActions, PartActions, PositionActions } from "./rig-few.tsx";
import { RigName } from "./rig-name.tsx";
import type { RigDoing } from "./rig-view.ts";

interface Props {
  readonly at: AtRig;
  readonly chosen: Meant;
  readonly doing: RigDoing | undefined;
}

/** The few things that may be done to what was pressed, close by it; on a small screen at its foot, under the thumb. */
export function RigActions({ at, chosen, doing }: Props) {
  const words = useWords();
  const panel = useRef<HTMLElement>(null);
  const key = `${keyOf(chosen)} ${doing?.do}`;
  // biome-ignore lint/correctness/useExhaustiveDependencies: each thing and each step has its place and its focus
  useLayoutEffect(() => {
    if (panel.current === null) return;
    placedBy(panel.current, elementOf(chosen));
    const first = panel.current.querySelector<HTMLElement>(
      "input, .rig-kinds button, .rig-choices button",
    );
    (first ?? panel.current).focus({ preventScroll: true });
  }, [key]);
  const away = () => at.leave(chosen);
  return (
    <section
      class="rig-actions"
      tabIndex={-1}
      ref={panel}
      aria-label={titleOf(at, chosen, words)}
      onKeyDown={(event) => event.key === "Escape" && !event.defaultPrevented && away()}
    >
      <p class="tray-head">
        <span class="tape">{titleOf(at, chosen, words)}</span>
        <button type="button" class="quiet" onClick={away}>
          {words.rig.putAway}
        </button>
      </p>
      <Within at={at} chosen={chosen} doing={doing} />
    </section>
  );
}

function Within({ at, chosen, doing }: Props) {
  if (doing?.do === "re-plug") return <ChooseSpot at={at} end={doing.end} />;
  if (doing?.do === "between") return <ChooseBetween at={at} end={doing.end} />;
  if ("kind" in chosen) return <WhereTo at={at} kind={chosen.kind} />;
  if ("end" in chosen) return <EndActions at={at} end={chosen.end} />;
  const part =
    "part" in chosen
      ? chosen.part
      : at.rig.positions.find(({ id }) => id === chosen.position)?.wears;
  if (part === undefined || !at.rig.parts.some(({ id }) => id === part)) return null;
  switch (doing?.do) {
    case "name":
      return <RigName at={at} chosen={chosen} part={part} />;
    case "change":
      return <RigChange at={at} part={part} />;
    case "put":
      return <PutIn at={at} part={part} />;
    case "source":
      return <ChooseSource at={at} part={part} />;
    case "lead":
      return <ChooseLead at={at} part={part} />;
    default:
      return "part" in chosen ? (
        <PartActions at={at} part={part} />
      ) : (
        <PositionActions at={at} position={chosen.position} part={part} />
      );
  }
}

function titleOf({ rig }: AtRig, chosen: Meant, { language, marks }: Words): string {
  if ("kind" in chosen) return language.patching.kinds[chosen.kind].name;
  if ("part" in chosen) return language.names.alone(chosen.part);
  if ("end" in chosen)
    return `${language.names.alone(chosen.end.part)}, ${marks.plug(chosen.end.plug)}`;
  return rig.positions.find(({ id }) => id === chosen.position)?.name ?? "";
}
