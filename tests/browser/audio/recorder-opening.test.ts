import { describe, expect, test, vi } from "vitest";
import { InputStage } from "./input-stage.ts";
import { pause } from "./stage.ts";

const stage = new InputStage();

describe("before it records", () => {
  test.for(["stop", "close"] as const)(
    "%s while it opens: the input is closed as it comes",
    async (press) => {
      let go = () => {};
      stage.gate = new Promise((resolve) => {
        go = resolve;
      });
      const ended = stage.recorder.record({ longest: 5, keep: true });
      await expect.poll(() => stage.streams.length).toBe(1);
      stage.recorder[press]();
      expect(await ended).toMatchObject({
        recorded: "stopped",
        granted: undefined,
        capture: undefined,
      });
      expect(stage.live).toBe(true);
      go();
      await pause(50);
      expect(stage.live).toBe(false);
    },
  );

  test("a chosen input that is not there is gone, and no other is taken for it", async () => {
    const input = { id: "0".repeat(64), name: "Line in" };
    expect(await stage.recorder.record({ longest: 1, input })).toEqual({
      recorded: "trouble",
      why: "gone",
    });
    expect(stage.streams).toEqual([]);
  });

  test.for([
    ["NotAllowedError", "not allowed"],
    ["NotFoundError", "no input"],
    ["NotReadableError", "busy"],
    ["TypeError", "cannot record"],
  ])("%s is: %s", async ([name, why]) => {
    const error = new DOMException("no", name);
    vi.spyOn(MediaDevices.prototype, "getUserMedia").mockRejectedValue(error);
    expect(await stage.recorder.record({ longest: 1 })).toEqual({ recorded: "trouble", why });
    expect(stage.recorder.world().trouble).toBe(why);
  });

  test("a page that gets no inputs at all says so", async () => {
    vi.spyOn(navigator, "mediaDevices", "get").mockReturnValue(undefined as never);
    expect(stage.recorder.canRecord()).toBe(false);
    expect(await stage.recorder.record({ longest: 1 })).toMatchObject({ why: "cannot record" });
    expect(await stage.recorder.named()).toBe("cannot record");
  });

  test("on a hidden page nothing is opened", async () => {
    vi.spyOn(document, "hidden", "get").mockReturnValue(true);
    expect(await stage.recorder.record({ longest: 1 })).toMatchObject({ why: "hidden" });
    expect(stage.streams).toEqual([]);
  });

  test("a file that does not load is told, and the input is closed", async () => {
    vi.stubGlobal("MediaStreamTrackProcessor", undefined);
    vi.spyOn(AudioWorklet.prototype, "addModule").mockRejectedValue(new Error("404"));
    expect(await stage.recorder.record({ longest: 1 })).toMatchObject({ why: "not loaded" });
  });

  test("what was asked for and not granted is told", async () => {
    const settings = { ...{ echoCancellation: true, autoGainControl: false }, sampleRate: 44_100 };
    vi.spyOn(MediaStreamTrack.prototype, "getSettings").mockReturnValue(settings);
    expect(await stage.recorder.record({ longest: 0.1 })).toMatchObject({
      granted: {
        processed: ["echoCancellation"],
        unsaid: ["noiseSuppression"],
        channels: undefined,
        inputRate: 44_100,
      },
    });
  });
});

test("the names of inputs: asked for once, the input closed at once; refused, it is said", async () => {
  const named = await stage.recorder.named();
  expect(named).toEqual(await stage.recorder.known());
  expect(named.length).toBeGreaterThan(0);
  expect(stage.streams).toHaveLength(1);
  expect(stage.live).toBe(false);
  vi.spyOn(navigator.mediaDevices, "enumerateDevices").mockResolvedValue([]);
  vi.spyOn(MediaDevices.prototype, "getUserMedia").mockRejectedValue(
    new DOMException("no", "NotAllowedError"),
  );
  expect(await stage.recorder.named()).toBe("not allowed");
});
