import { describe, expect, test } from "vitest";
import { auditionOf } from "#core/hearing/audition.ts";
import { finish } from "#core/hearing/work.ts";
import { render } from "#core/signals/render.ts";
import { real } from "#core/units/complex.ts";
import { Stage, settled } from "./stage.ts";
import { levelOf, soundingSpan } from "./tap.ts";
import { quiet, twoTones } from "./two-tones.ts";

const stage = new Stage();
const rate = 48_000;
const tones = twoTones(0.4, rate);

describe("an audition", () => {
  test("of a signal behind a healthy chain sounds as the signal, at the start level", async () => {
    const stereo = () => [
      [real(0.7), real(0)],
      [real(0), real(0.7)],
    ];
    const swapped = () => [
      [real(0), real(0.7)],
      [real(0.7), real(0)],
    ];
    const programme = render("left-ident", stage.player.rate(), 1);
    const audition = finish(auditionOf(programme, { healthy: stereo, faulty: swapped }));
    if ("refused" in audition) throw new Error(audition.refused);
    for (const first of ["healthy", "faulty"] as const) {
      stage.tap.heard.length = 0;
      expect(await stage.player.audition(audition, { first })).toEqual({ ended: "played" });
      await settled();
      const begin = soundingSpan(stage.tap.heard)?.first ?? 0;
      const level = (side: "left" | "right") => levelOf(stage.tap.heard, side, begin, begin + 0.12);
      const [sounds, silent] =
        first === "healthy" ? (["left", "right"] as const) : (["right", "left"] as const);
      expect(level(sounds)).toBeCloseTo(-50, 0);
      expect(level(silent)).toBe(Number.NEGATIVE_INFINITY);
    }
  });

  test("tells the world what is heard, from the press to the end", async () => {
    const { player } = stage;
    const heard: unknown[] = [player.world().heard];
    const stop = player.subscribe(() => heard.push(player.world().heard));
    const ending = player.audition(tones);
    player.hear("faulty");
    expect(player.world()).toMatchObject({ playing: true, heard: "faulty" });
    expect(await ending).toEqual({ ended: "played" });
    stop();
    const changes = heard.filter((one, at) => at === 0 || one !== heard[at - 1]);
    expect(changes).toEqual([undefined, "healthy", "faulty", undefined]);
    expect(player.world()).toMatchObject({ playing: false });
  });

  test("hears the other version from the beginning when asked before it sounds", async () => {
    const { player, tap } = stage;
    const ending = player.audition(tones);
    player.hear("faulty");
    await ending;
    await settled();
    const greatest = Math.max(...tap.heard.map(({ left }) => Math.abs(left)));
    expect(greatest / quiet).toBeCloseTo(0.05, 3);
  });

  test("ends a signal, and a signal ends it; then nothing is to be heard of", async () => {
    const { player } = stage;
    const signal = player.play("burst-pair", 1);
    const audition = player.audition(tones, { loop: true });
    expect(await signal).toEqual({ ended: "silenced" });
    await stage.sounding();
    const silence = player.play("silence", 1);
    expect(await audition).toEqual({ ended: "silenced" });
    player.hear("faulty");
    expect(player.world().heard).toBeUndefined();
    expect(await silence).toEqual({ ended: "played" });
  });

  test("is not played while a hand is on, and a hand silences it", async () => {
    const { player } = stage;
    const ending = player.audition(tones, { loop: true });
    await stage.sounding();
    player.handOn();
    expect(await ending).toEqual({ ended: "silenced" });
    expect(await player.audition(tones)).toEqual({ ended: "silenced" });
    expect(player.world()).toMatchObject({ playing: false, heard: undefined, muted: true });
    player.handOff();
    expect(player.world().level).toBe(-70);
  });

  test("is ended by what the world does; what is not in step is refused", async () => {
    const ending = stage.player.audition(tones, { loop: true });
    const context = await stage.sounding();
    await context.suspend();
    expect(await ending).toEqual({ ended: "trouble", why: "suspended" });
    expect(stage.player.world()).toMatchObject({ playing: false, heard: undefined, level: -50 });
    const unequal = { ...tones, faulty: twoTones(0.3, rate).faulty };
    expect(await stage.player.audition(unequal)).toEqual({ ended: "trouble", why: "refused" });
  });
});

test("the rate is the output's, and a usual one before there is an output", async () => {
  expect(stage.player.rate()).toBe(48_000);
  await stage.heardOf("left-ident", 1);
  expect(stage.player.rate()).toBe(stage.tap.contexts.at(-1)?.sampleRate);
});
