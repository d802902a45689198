import { expect, test } from "vitest";
import { createMemoryStorage } from "#storage/memory-storage.ts";
import { createSettings } from "#storage/settings.ts";

test("what one tab chose stays when another chooses something else", () => {
  const storage = createMemoryStorage();
  const [one, other] = [storage, storage].map((at) => createSettings(() => at, ["en"]));
  const before = other?.read();
  one?.keep({ theme: "light" });
  other?.keep({ numbers: before?.numbers !== true });
  expect(createSettings(() => storage, ["en"]).read()).toMatchObject({
    theme: "light",
    numbers: true,
  });
});
