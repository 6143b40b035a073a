// What strangers wrote, said to a whole bot: how much of it came out as they meant it, printed; and that nothing else is saved in silence.

import { expect, test } from "vitest";
import { type Shown, talk } from "../support/talk.ts";
import { STRANGERS, type Stranger } from "./strangers.ts";
import { STRANGERS_AGAIN } from "./strangers-again.ts";

type Logged = { readonly kind: string; readonly place: string | null; readonly value: number; readonly on: string; readonly nickname: string };
const readingsOf = (shown: Shown): readonly string[] =>
  shown.data.logged.map(({ kind, place, value, on, nickname }: Logged) => [kind, place, Number(value.toFixed(4)), on, nickname].join("|"));
const wantedOf = ({ readings = [] }: Stranger): readonly string[] =>
  readings.map(({ kind, place, value, on, bike }) => [kind, place, Number(value.toFixed(4)), on, bike].join("|"));

type Came = "as meant" | "asked without need" | "missed" | "false alarm" | "saved otherwise" | "part of it missed";
function cameOf(stranger: Stranger, shown: Shown | undefined): Came {
  const is = shown === undefined ? "silence" : shown.react;
  if (is !== stranger.is) {
    if (is === "logged") return "saved otherwise";
    return is === "silence" ? "missed" : stranger.is === "silence" ? "false alarm" : "asked without need";
  }
  if (shown === undefined || is === "asked") return "as meant";
  const [got, want] = [readingsOf(shown), wantedOf(stranger)];
  if (got.some((each) => !want.includes(each))) return "saved otherwise";
  const whole = want.every((each) => got.includes(each)) && shown.data.work.length > 0 === (stranger.work ?? []).length > 0;
  return whole && shown.data.defects.length === (stranger.defects ?? 0) ? "as meant" : "part of it missed";
}

/** They would have asked; but 230 is a pressure in kilopascals and in nothing else. */
const TAKEN = ["front tyre pressure 230"];

test.each([
  ["the first", STRANGERS, 146],
  ["the second", STRANGERS_AGAIN, 140],
] as const)(
  "strangers are understood, or asked; nothing but what they meant is saved in silence: %s 150",
  async (which, strangers, least) => {
    expect(strangers).toHaveLength(150);
    const t = await talk("2026-11-01T09:00:00Z");
    for (const [n, { bikes }] of strangers.entries()) {
      await t.one({ as: `m${n}`, run: "/bike add name:Heron kind:chain-drive twin odometer:14,210 mi" });
      if (bikes === "two") await t.one({ as: `m${n}`, run: "/bike add name:Bramble kind:belt-drive cruiser odometer:41,950 km" });
    }
    await t.send({ advance: "P25D", asleep: true });
    const came = new Map<Came, string[]>();
    for (const [n, stranger] of strangers.entries()) {
      const [shown] = await t.send({ as: `m${n}`, say: stranger.say });
      const is = cameOf(stranger, shown);
      came.set(is, [...(came.get(is) ?? []), stranger.say]);
    }
    await t.close();
    console.info(`strangers, ${which}: ${[...came].map(([is, of]) => `${of.length} ${is}`).join(", ")}, of ${strangers.length}`);
    expect((came.get("saved otherwise") ?? []).filter((say) => !TAKEN.includes(say))).toEqual([]);
    expect(came.get("as meant")?.length).toBeGreaterThanOrEqual(least);
    expect(came.get("false alarm") ?? []).toEqual([]);
  },
  60_000,
);
