// A reminder as its rider reads it: short with twelve things, clear about what to do, kind to who is away.

import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { button, type Shown, type Talk, talk } from "../support/talk.ts";

const dm = { as: "Ines", in: "dm" };
let t: Talk;
beforeEach(async () => {
  t = await talk("2026-11-25T10:00:00Z");
});
afterEach(() => t.close());

const heron = async (): Promise<void> => {
  const added = await t.one({ ...dm, run: "/bike add name:Heron kind:chain-drive twin odometer:14,210 mi" });
  await t.one({ ...dm, press: button(added, "Don't know") });
};
/** The 16,000 mi service passed by in two days. */
const twentyOne = async (): Promise<Shown | undefined> => {
  await t.one({ ...dm, say: "15,000 mi" });
  await t.send({ advance: "P1D" });
  await t.one({ ...dm, say: "16,100 mi" });
  return (await t.send({ advance: "P3D" }))[0];
};
const linesOf = (shown: Shown | undefined): readonly string[] => shown?.text?.split("\n") ?? [];

describe("with many things at once", () => {
  test("what shares a status and a reason is one line, its reason first, and every thing is named", async () => {
    await heron();
    const told = await twentyOne();
    const lines = linesOf(told);
    expect(lines).toContain(
      "- Was due at 16,000 mi, the first such mark since it came to you; now 100 mi past: chain and sprocket wear, front brake pads, rear brake pads, rims, throttle cable free play, fasteners, front brake discs, rear brake disc, wheel bearings, steering head bearings and swingarm bearings. Overdue.",
    );
    // Twenty-one things in a handful of lines, and none left out.
    expect(lines.filter((line) => line.startsWith("- ")).length).toBeLessThanOrEqual(8);
    const names: string[] = told?.data.told[0].items.map(({ name }: { name: string }) => name);
    expect(names).toHaveLength(21);
    for (const name of names) expect(told?.text?.toLowerCase()).toContain(name.toLowerCase());
  });

  test("why it came is one line for what came for one reason", async () => {
    await heron();
    const told = await twentyOne();
    const why = linesOf(await t.one({ ...dm, press: button(told as Shown, "Why did I get this") }));
    expect(why).toHaveLength(3);
    expect(why.filter((line) => /: overdue; again after a week, then two, then every four, until it is done or put off\.$/u.test(line))).toHaveLength(1);
    expect(why.filter((line) => /: due; told once\.$/u.test(line))).toHaveLength(1);
  });
});
