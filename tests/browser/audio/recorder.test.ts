import { beforeEach, describe, expect, test, vi } from "vitest";
import { server } from "vitest/browser";
import { InputStage } from "./input-stage.ts";
import { pause } from "./stage.ts";

const stage = new InputStage();

/** Both ways there are; engines but Chromium have the second alone. */
const byThread = "by the audio thread";
const ways = ["as the samples of the track", byThread].slice(server.browser === "chromium" ? 0 : 1);

describe.for(ways)("the recorder, %s", (way) => {
  beforeEach(() => {
    if (way === byThread) vi.stubGlobal("MediaStreamTrackProcessor", undefined);
  });

  test("records as long as it is told, tells what it was given, and closes the input", async () => {
    const ats: number[] = [];
    const doings: string[] = [];
    const stop = stage.recorder.subscribe(() => void doings.push(stage.recorder.world().doing));
    const onBlock = (_: unknown, at: number) => void ats.push(at);
    const recorded = await stage.recorder.record({ longest: 1.2, keep: true, onBlock });
    stop();
    if (recorded.recorded === "trouble") throw new Error(recorded.why);
    const { granted, capture, gaps } = recorded;
    expect(recorded.recorded).toBe("to the end");
    expect(granted).toMatchObject({ processed: [], rate: capture?.rate });
    expect(granted?.device.name).toMatch(/fake|mock|default/i);
    // The input beeps, the same on both channels: one channel that was doubled.
    expect(capture?.channels).toHaveLength(1);
    const [samples = new Float32Array()] = capture?.channels ?? [];
    expect(samples.length).toBe(Math.round(1.2 * (capture?.rate ?? 0)));
    expect(samples.reduce((most, x) => Math.max(most, Math.abs(x)), 0)).toBeGreaterThan(0.05);
    expect(gaps.missing).toBe(0);
    expect(ats[0]).toBe(0);
    expect(ats.every((at, n) => n === 0 || at > (ats[n - 1] ?? at))).toBe(true);
    expect(doings).toEqual(["opening", "recording", "nothing"]);
    expect(stage.contexts).toHaveLength(way === byThread ? 1 : 0);
  });

  test("what is stopped is whole as far as it went; stopping again does nothing", async () => {
    const { ended } = await stage.recording();
    expect(stage.live).toBe(true);
    await pause(300);
    stage.recorder.stop();
    stage.recorder.stop();
    expect(stage.live).toBe(false);
    const recorded = (await ended) as { capture: { channels: Float32Array[]; rate: number } };
    expect(recorded).toMatchObject({ recorded: "stopped" });
    const { channels, rate } = recorded.capture;
    expect((channels[0]?.length ?? 0) / rate).toBeGreaterThan(0.2);
  });
});

type Happening = readonly [why: string, happen: () => unknown];
const eventsOfTracks: readonly Happening[] = [
  ["gone", () => stage.track?.dispatchEvent(new Event("ended"))],
  ["muted", () => stage.track?.dispatchEvent(new Event("mute"))],
];

describe("while it records", () => {
  const happenings: readonly Happening[] = [
    // Firefox 153 hands no event of ours to who listens at a track; that it has ended or is muted is seen there too.
    ...(server.browser === "firefox" ? [] : eventsOfTracks),
    ["gone", () => stage.track?.stop()],
    ["muted", () => vi.spyOn(MediaStreamTrack.prototype, "muted", "get").mockReturnValue(true)],
    [
      "gone",
      () => {
        const other = { kind: "audioinput", deviceId: "another", groupId: "", label: "" };
        vi.spyOn(navigator.mediaDevices, "enumerateDevices").mockResolvedValue([
          { ...other, toJSON: () => other } as MediaDeviceInfo,
        ]);
        navigator.mediaDevices.dispatchEvent(new Event("devicechange"));
      },
    ],
    [
      "hidden",
      () => {
        vi.spyOn(document, "hidden", "get").mockReturnValue(true);
        document.dispatchEvent(new Event("visibilitychange"));
      },
    ],
  ];
  test.for(happenings)("%s: it ends and the input is closed", async ([why, happen]) => {
    const { ended } = await stage.recording();
    happen();
    expect(await ended).toEqual({ recorded: "trouble", why });
    expect(stage.live).toBe(false);
    expect(stage.recorder.world()).toMatchObject({ doing: "nothing", trouble: why });
  });

  test.for([
    ["suspended", (context: AudioContext) => context.suspend()],
    ["lost", (context: AudioContext) => context.close()],
  ] as const)("%s: the context that it takes where it must", async ([why, happen]) => {
    vi.stubGlobal("MediaStreamTrackProcessor", undefined);
    const { ended } = await stage.recording();
    await happen(stage.contexts[0] as AudioContext);
    expect(await ended).toEqual({ recorded: "trouble", why });
  });

  test("a second recording stops the first", async () => {
    const { ended } = await stage.recording();
    const second = stage.recorder.record({ longest: 0.2 });
    expect(await ended).toMatchObject({ recorded: "stopped" });
    expect(await second).toMatchObject({ recorded: "to the end", capture: undefined });
  });

  test("an input that is still there stays when devices change", async () => {
    const { ended } = await stage.recording();
    navigator.mediaDevices.dispatchEvent(new Event("devicechange"));
    await pause(300);
    expect(stage.recorder.world().doing).toBe("recording");
    stage.recorder.stop();
    expect(await ended).toMatchObject({ recorded: "stopped" });
  });
});
