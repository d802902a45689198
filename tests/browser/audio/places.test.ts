import { describe, expect, test } from "vitest";
import { pause, Stage, settled } from "./stage.ts";

const stage = new Stage();

/** To a level on the way up from the start, once it is reached. */
async function raise(steps: number): Promise<void> {
  stage.press("louder", steps);
  await pause(260 * steps);
}

describe("another place", () => {
  test("is never louder on arrival, neither a new one nor one that was louder", async () => {
    const { player } = stage;
    player.arrive("one");
    await stage.heardOf("left-ident", 1);
    await raise(4);
    expect(player.world().level).toBe(-38);
    player.arrive("two");
    expect((await stage.heardOf("left-ident", 1)).left).toBeCloseTo(-50, 0);
    await raise(2);
    player.arrive("one");
    expect((await stage.heardOf("left-ident", 1)).left).toBeCloseTo(-44, 0);
    await raise(1);
    player.arrive("two");
    expect(player.world().level).toBe(-44);
  });

  test("begins at the start level after a hand touched what all may share", async () => {
    const { player } = stage;
    player.arrive("one");
    await stage.heardOf("left-ident", 1);
    player.softer();
    player.arrive("two");
    player.handOn();
    player.handOff();
    expect(player.world().level).toBe(-70);
    player.arrive("one");
    expect(player.world().level).toBe(-70);
  });

  test("has its own count of what was heard", async () => {
    const { player } = stage;
    player.arrive("one");
    expect(player.world().exposure.seconds).toBe(0);
    await player.play("left-ident", 1);
    const { seconds, energy } = player.world().exposure;
    expect(seconds).toBeGreaterThan(0.2);
    expect(seconds).toBeLessThan(0.4);
    expect(10 * Math.log10(energy / seconds)).toBeCloseTo(-50, 1);
    player.arrive("two");
    expect(player.world().exposure.seconds).toBe(0);
    player.arrive("one");
    expect(player.world().exposure.seconds).toBe(seconds);
  });
});

describe("after a sound that is listened to with the volume up", () => {
  test.for(["silence", "hum-50", "buzz-search"] as const)("as %s", async (name) => {
    const { player } = stage;
    await stage.heardOf("left-ident", 1);
    await raise(3);
    const playing = player.play(name, 1);
    await pause(200);
    player.silence();
    await playing;
    await settled();
    expect(player.world()).toMatchObject({ muted: true, turnedUp: true, level: -50 });
    expect(await player.play("left-ident", 1)).toEqual({ ended: "silenced" });
    player.handOff();
    expect(player.world()).toMatchObject({ muted: false, turnedUp: false, level: -50 });
    expect((await stage.heardOf("left-ident", 1)).left).toBeCloseTo(-50, 0);
  });

  test("a hand on the gear meanwhile does not turn the volume down: both are asked for, and it is 20 dB lower", async () => {
    const { player } = stage;
    await stage.heardOf("left-ident", 1);
    const playing = player.play("silence", 1);
    await pause(200);
    player.handOn();
    await playing;
    player.handOn();
    expect(player.world()).toMatchObject({ muted: true, turnedUp: true, level: -50 });
    player.handOff();
    expect(player.world()).toMatchObject({ muted: false, turnedUp: false, level: -70 });
  });
});

describe("what is spoken", () => {
  test("is said in one ear, or in both", async () => {
    const { player, tap } = stage;
    const sides = async (to: "left" | "either ear") => {
      tap.heard.length = 0;
      expect(await player.speak([{ prompt: "position", number: 21 }], { to })).toEqual({
        ended: "played",
      });
      await pause(200);
      const peak = (side: "left" | "right") =>
        tap.heard.reduce((greatest, one) => Math.max(greatest, Math.abs(one[side])), 0);
      return [peak("left"), peak("right")];
    };
    const [left = 0, right = 0] = await sides("left");
    expect(left).toBeGreaterThan(0.003);
    expect(right).toBe(0);
    const [both = 0, also = 0] = await sides("either ear");
    expect(also / both).toBeCloseTo(1, 1);
  });

  test("is trouble where its file does not come, and is asked for again", async () => {
    const { createPlayer } = await import("#audio/web-player.ts");
    const { shippedWords } = await import("#audio/speech.ts");
    let down = true;
    const player = createPlayer(undefined, (word, tag) =>
      down ? Promise.reject(new TypeError("no network")) : shippedWords(word, tag),
    );
    expect(await player.speak([{ prompt: "left" }])).toEqual({
      ended: "trouble",
      why: "not loaded",
    });
    down = false;
    expect(await player.speak([{ prompt: "left" }])).toEqual({ ended: "played" });
    player.close();
  });
});
