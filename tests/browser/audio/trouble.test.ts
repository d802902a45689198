import type { IAudioContext } from "standardized-audio-context";
import { describe, expect, test, vi } from "vitest";
import { createPlayer } from "#audio/web-player.ts";
import { pause, Stage, settled, soon } from "./stage.ts";
import { soundingSpan } from "./tap.ts";

const stage = new Stage();

function hide(hidden: boolean): void {
  vi.spyOn(document, "hidden", "get").mockReturnValue(hidden);
  document.dispatchEvent(new Event("visibilitychange"));
}

/** Something that happens while a sound plays, and what it is called. */
const happenings: [why: string, happen: (context: AudioContext) => unknown][] = [
  ["hidden", () => hide(true)],
  ["suspended", (context) => context.suspend()],
  ["lost", (context) => context.close()],
  ["lost", () => navigator.mediaDevices.dispatchEvent(new Event("devicechange"))],
  ["no output", (context) => context.dispatchEvent(new Event("error"))],
];

describe("while a sound plays", () => {
  test.for(happenings)(
    "%s: it ends, stays ended, and the next starts quietly",
    async ([why, happen]) => {
      const { player, tap } = stage;
      await stage.heardOf("left-ident", 1);
      stage.press("louder", 4);
      expect(player.world().level).toBe(-38);
      const playing = player.play("burst-pair", 1);
      const context = await stage.sounding();
      await happen(context);
      expect(await playing).toEqual({ ended: "trouble", why });
      expect(player.world()).toMatchObject({ trouble: why, playing: false, level: -50 });
      await settled();
      expect(context.state).toBe("closed");

      vi.restoreAllMocks();
      document.dispatchEvent(new Event("visibilitychange"));
      tap.heard.length = 0;
      await settled();
      expect(soundingSpan(tap.heard)).toBeUndefined();

      expect((await stage.heardOf("left-ident", 1)).left).toBeCloseTo(-50, 0);
      expect(player.world().trouble).toBeUndefined();
    },
  );

  test("hidden: silent within 20 ms", async () => {
    const playing = stage.player.play("burst-pair", 1);
    const context = await stage.sounding();
    await pause(100);
    const at = context.currentTime;
    hide(true);
    await playing;
    await settled();
    const { last } = soundingSpan(stage.tap.heard) ?? { last: 0 };
    expect(last).toBeGreaterThan(at);
    expect(last - at).toBeLessThan(soon);
  });
});

test("a device that goes without a word is noticed by its clock, which stands", async () => {
  const playing = stage.player.play("rotation", 1, { loop: true });
  const context = await stage.sounding();
  await pause(1200);
  expect(stage.player.world().playing).toBe(true);
  vi.spyOn(context, "currentTime", "get").mockReturnValue(context.currentTime);
  expect(await playing).toEqual({ ended: "trouble", why: "lost" });
});

test("hidden between two sounds begins again too; a level below the start level stays", async () => {
  const { player } = stage;
  await stage.heardOf("left-ident", 1);
  stage.press("louder", 1);
  hide(true);
  expect(player.world()).toMatchObject({ trouble: "hidden", level: -50 });
  hide(false);
  player.handOn();
  player.handOff();
  await stage.heardOf("left-ident", 1);
  hide(true);
  expect(player.world().level).toBe(-70);
});

test("play on a hidden page is trouble, not sound", async () => {
  hide(true);
  expect(await stage.player.play("left-ident", 1)).toEqual({ ended: "trouble", why: "hidden" });
});

describe("what cannot begin", () => {
  const fails = async (load: Parameters<typeof createPlayer>[0], why: string) => {
    const other = createPlayer(load);
    other.warm();
    expect(await other.play("left-ident", 1)).toEqual({ ended: "trouble", why });
    expect(other.world()).toMatchObject({ trouble: why, playing: false });
    other.close();
  };

  test("not loaded: the file cannot be fetched", () =>
    fails(() => Promise.reject(new TypeError("no network")), "not loaded"));

  test("no output: no context is to be had", () =>
    fails(async () => {
      const newContext = () => {
        throw new DOMException("no device", "NotSupportedError");
      };
      return { newContext };
    }, "no output"));

  test("no output: one channel cannot hold two sides", async () => {
    vi.spyOn(AudioDestinationNode.prototype, "maxChannelCount", "get").mockReturnValue(1);
    expect(await stage.player.play("left-ident", 1)).toEqual({
      ended: "trouble",
      why: "no output",
    });
  });

  test("suspended: the browser does not let it begin", () =>
    fails(async () => {
      const { newContext } = await import("#audio/new-context.ts");
      const asleep = (): IAudioContext => {
        const context = newContext();
        vi.spyOn(context, "state", "get").mockReturnValue("suspended");
        vi.spyOn(context, "resume").mockReturnValue(new Promise(() => undefined));
        return context;
      };
      return { newContext: asleep };
    }, "suspended"));
});

test("once warm, the context is made before play returns: inside the press", async () => {
  const made = vi.fn();
  const { newContext } = await import("#audio/new-context.ts");
  const warm = createPlayer(async () => ({
    newContext: () => {
      made();
      return newContext();
    },
  }));
  warm.warm();
  await settled();
  expect(made).not.toHaveBeenCalled();
  const playing = warm.play("silence", 1);
  expect(made).toHaveBeenCalledOnce();
  expect(await playing).toEqual({ ended: "played" });
  warm.close();
});
