import type { ComponentChildren } from "preact";
import { useRef } from "preact/hooks";
import type { Trouble } from "#audio/world.ts";
import { useArrival } from "#ui/parts/use-arrival.ts";
import { useFirstWords, type Words } from "#ui/words/use-words.ts";
import { backFrom } from "./back-from.ts";
import { Help, HelpButton } from "./help.tsx";
import { LookChoice } from "./look-choice.tsx";
import { Newer } from "./own-copy.tsx";
import type { Held } from "./use-page.ts";
import { useStrip } from "./use-strip.ts";

interface Props {
  readonly held: Held;
  /** The words behind the first screen, once they have come. */
  readonly behind: Words | undefined;
  readonly children: ComponentChildren;
}

/** Silence in its corner, what the world has to say, and the screen. */
export function Frame({ held, behind, children }: Props) {
  const { page, world, measuring, show } = held;
  const words = useFirstWords();
  const away = page.view.screen !== "start" && page.view.screen !== "board";
  const back = backFrom(page.view);
  const [open, press] = useStrip(page.view);
  return (
    <div class={world.playing || measuring ? "page playing" : "page"}>
      <header class="top">
        {away && (
          <button type="button" class="quiet back" onClick={() => show(back)}>
            <svg viewBox="0 0 24 24" aria-hidden="true">
              <path d="M14 5l-7 7 7 7M7 12h14" />
            </svg>
            {back.screen === "board" ? words.board : words.back}
          </button>
        )}
        <HelpButton open={open === "help"} onPress={() => press("help")} />
        <LookChoice held={held} open={open === "look"} onPress={() => press("look")} />
        <button type="button" class="silence" aria-keyshortcuts="Escape" onClick={held.silence}>
          {words.silence}{" "}
          <span class="key" aria-hidden="true">
            {words.escape}
          </span>
        </button>
        {open === "help" && <Help held={held} behind={behind} />}
      </header>
      <main>
        <Message held={{ page, world, show }} />
        <Follows held={held} />
        <Newer held={held} />
        {children}
      </main>
    </div>
  );
}

/** What another output may help against. */
const outTroubles: readonly Trouble[] = ["no output", "lost", "gone", "not that device"];

function Message({
  held: { page, world, show },
}: {
  readonly held: Pick<Held, "page" | "world" | "show">;
}) {
  const words = useFirstWords();
  const text = world.trouble
    ? words.trouble[world.trouble]
    : page.notice && words.notice[page.notice];
  if (text === undefined || world.playing) return null;
  const { view } = page;
  const elsewhere = world.trouble !== undefined && outTroubles.includes(world.trouble);
  return (
    <p class="message" role="alert">
      {text}
      {elsewhere && view.screen !== "sound out" && (
        <button
          type="button"
          class="quiet"
          onClick={() => show({ screen: "sound out", from: view })}
        >
          {words.soundOut}
        </button>
      )}
    </p>
  );
}

/** Another tab writes the session: nothing is entered here, until it is taken over. */
function Follows({ held: { page, keeping, takeOver } }: { readonly held: Held }) {
  const words = useFirstWords();
  if (!keeping.follows || page.view.screen === "start") return null;
  return (
    <p class="message" role="status">
      {words.follows}
      <button type="button" class="quiet" onClick={takeOver}>
        {words.writeHere}
      </button>
    </p>
  );
}

/** The heading of a screen. It takes the focus when the screen comes, so that it is read out and Tab goes on from here. */
export function Heading({ children }: { readonly children: ComponentChildren }) {
  const heading = useRef<HTMLHeadingElement>(null);
  useArrival(heading);
  return (
    <h1 tabIndex={-1} ref={heading}>
      {children}
    </h1>
  );
}
