// Which bike a command means: the one named, the only one, or a question.

import { nicknameKey } from "../core/bike.ts";
import type { Garaged } from "./garage.ts";
import { done, type Result, refused } from "./refusals.ts";

/** Resolves a typed nickname, or a bike's id from a button, among the speaker's own bikes. A beginning that fits one bike only is enough. */
export function whichBike(all: readonly Garaged[], typed: string | undefined): Result<Garaged> {
  const nicknames = all.map((g) => g.bike.nickname);
  if (all.length === 0) return refused({ why: "no bikes yet" });
  if (typed === undefined || typed.trim() === "") {
    const [only] = all;
    return all.length === 1 && only !== undefined ? done(only) : refused({ why: "which bike", bikes: nicknames });
  }
  const key = nicknameKey(typed);
  const byId = all.find((g) => g.bike.id === typed);
  if (byId !== undefined) return done(byId);
  const exact = all.find((g) => nicknameKey(g.bike.nickname) === key);
  if (exact !== undefined) return done(exact);
  const called = all.find((g) => (g.bike.byNames ?? []).some((name) => nicknameKey(name) === key));
  if (called !== undefined) return done(called);
  const begins = all.filter((g) => nicknameKey(g.bike.nickname).startsWith(key));
  const [one] = begins;
  if (begins.length === 1 && one !== undefined) return done(one);
  return begins.length > 1
    ? refused({ why: "which bike", bikes: begins.map((g) => g.bike.nickname) })
    : refused({ why: "unknown bike", named: typed, bikes: nicknames });
}
