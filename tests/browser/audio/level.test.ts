import { describe, expect, test } from "vitest";
import { burst, pause, Stage, settled } from "./stage.ts";
import { levelOf, peakOf, soundingSpan } from "./tap.ts";

const stage = new Stage();

describe("level", () => {
  test("of the first sound is -50 dBFS, on its own side only, whatever was pressed before", async () => {
    stage.press("louder", 5);
    const { left, right } = await stage.heardOf("left-ident", 1);
    expect(left).toBeCloseTo(-50, 0);
    expect(right).toBe(Number.NEGATIVE_INFINITY);
    expect(stage.player.world()).toMatchObject({ level: -50, playing: false, trouble: undefined });
  });

  test("goes up and down by 3 dB, and the next sound starts there", async () => {
    await stage.heardOf("left-ident", 1);
    stage.press("louder", 1);
    expect(stage.player.world().level).toBe(-47);
    await pause(300);
    expect((await stage.heardOf("left-ident", 1)).left).toBeCloseTo(-47, 0);
    stage.press("softer", 2);
    await pause(600);
    expect((await stage.heardOf("right-ident", 1)).right).toBeCloseTo(-53, 0);
  });

  test("rises along a ramp however fast it is pressed: 3 dB in 250 ms and no jump", async () => {
    const { player, tap } = stage;
    const playing = player.play("burst-pair", 1);
    await stage.sounding();
    stage.press("louder", 20);
    expect(player.world().level).toBe(-20);
    await playing;
    await settled();
    const { first } = soundingSpan(tap.heard) ?? { first: 0 };
    const [one = 0, two = 0] = [first, first + burst + 0.3].map((from) =>
      levelOf(tap.heard, "left", from + burst / 2, from + burst),
    );
    expect(two - one).toBeCloseTo((burst + 0.3) * 12, 0);
    // at most what the level can have come to by the end, with the crest of the bursts
    expect(peakOf(tap.heard)).toBeLessThan(10 ** ((-50 + 1.2 * 12 + 7) / 20));
  });

  test("stops at the cap of -20 dBFS, below a peak of -12 dBFS", async () => {
    await stage.heardOf("left-ident", 1);
    stage.press("louder", 20);
    expect(stage.player.world().level).toBe(-20);
    await pause(2600);
    const { left, peak } = await stage.heardOf("left-ident", 1);
    expect(left).toBeCloseTo(-20, 0);
    expect(peak).toBeLessThan(10 ** (-12 / 20));
  });
});

describe("a hand", () => {
  test("silences, refuses to play while it is on, and sound comes back 20 dB lower", async () => {
    const { player, tap } = stage;
    const playing = player.play("left-ident", 1);
    await stage.sounding();
    player.handOn();
    expect(await playing).toEqual({ ended: "silenced" });
    await settled();
    tap.heard.length = 0;
    expect(await player.play("left-ident", 1)).toEqual({ ended: "silenced" });
    await settled();
    expect(tap.heard.length).toBeGreaterThan(1000);
    expect(soundingSpan(tap.heard)).toBeUndefined();
    expect(player.world()).toMatchObject({ muted: true, playing: false });
    player.handOff();
    expect(player.world()).toMatchObject({ muted: false, level: -70 });
    expect((await stage.heardOf("left-ident", 1)).left).toBeCloseTo(-70, 0);
  });

  test("lowers by what was heard, not by what was pressed just before", async () => {
    await stage.heardOf("left-ident", 1);
    stage.press("louder", 10);
    stage.player.handOn();
    stage.player.handOff();
    expect(stage.player.world().level).toBeLessThan(-69);
  });

  test("taken off twice lowers once, before any sound not at all", async () => {
    const { player } = stage;
    player.handOn();
    player.handOff();
    expect(player.world().level).toBe(-50);
    await stage.heardOf("left-ident", 1);
    stage.press("louder", 6);
    await pause(1600);
    player.handOn();
    player.handOff();
    player.handOff();
    expect(player.world().level).toBe(-52);
  });
});
