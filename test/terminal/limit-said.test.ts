// A limit said beside a reading is offered as the spec that it is, with one press; nothing of it is saved before.

import { afterEach, beforeEach, expect, test } from "vitest";
import { button, type Talk, talk } from "../support/talk.ts";

let t: Talk;
const dm = { as: "Ines", in: "dm" };
const say = (text: string) => t.one({ ...dm, say: text });
const run = (line: string) => t.one({ ...dm, run: line });

beforeEach(async () => {
  t = await talk("2026-11-25T10:00:00Z");
  await run("/bike add name:Heron kind:chain-drive twin odometer:14,210 mi");
});
afterEach(() => t.close());

test.each([
  ["front disc 6.2 mm, stamped 6.0", "front disc limit 6.0 mm", "front disc limit"],
  ["rear pads 3 mm, limit 1.5 mm", "rear pad limit 1.5 mm", "rear pad limit"],
  ["rear pads 3 mm, manual says min 1.5", "rear pad limit 1.5 mm", "rear pad limit"],
])("%s", async (text, label, key) => {
  const logged = await say(text);
  expect(logged.react).toBe("logged");
  expect((await run(`/spec what:${key}`)).text).toContain("nothing is entered");
  const saved = await t.one({ ...dm, press: button(logged, `Save as spec: ${label}`) });
  expect(saved.data).toMatchObject({ key });
  expect((await run(`/spec what:${key}`)).text).not.toContain("nothing is entered");
});

test.each(["rear pads 3 mm, backing plate 4 mm", "front pads 3 mm, rear pads 4 mm, limit 1.5 mm", "rear pads 3 mm, limit 900 mm"])(
  "what is no limit, or of either end, or beyond any bike, is only told back: %s",
  async (text) => {
    const logged = await say(text);
    expect(logged.text).toContain("Not understood");
    expect(logged.actions.map(({ label }) => label).filter((label) => label.startsWith("Save as spec"))).toEqual([]);
  },
);
