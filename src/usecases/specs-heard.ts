// Specs asked for in a plain message to the bot, answered as /spec answers them.

import { specAsked } from "../message/spec-asked.ts";
import type { Repos } from "../store/store.ts";
import type { Ctx } from "./context.ts";
import { type Garaged, pick } from "./garage.ts";
import { lookUp } from "./look-up.ts";
import type { MessageOutcome } from "./message-outcome.ts";
import { knownOf } from "./own-garage.ts";
import { answerOf, keysMeant, type SpecAnswer } from "./spec-ask.ts";

/** As many bikes as a phone reads at a glance. */
const MOST = 4;

/** What is known of the spec asked for, on the bikes named or on all of the speaker's; null where no spec is meant. */
export async function specsHeard(q: Repos, ctx: Ctx, all: readonly Garaged[], text: string): Promise<MessageOutcome | null> {
  const asked = specAsked(text, knownOf(ctx, all));
  if (asked === null) return null;
  const table = asked.bikes.length > 0 ? null : lookUp(ctx, text);
  if (table !== null) return { is: "looked up", table };
  const bikes = asked.bikes.length > 0 ? asked.bikes.flatMap((id) => pick(all, id) ?? []) : all.slice(0, MOST);
  const meant = bikes.flatMap((g) => {
    const found = asked.spoken.map((vocabulary) => keysMeant({ vocabulary }, g, asked.what)).find(({ is }) => is === "done");
    return found?.is === "done" ? [{ g, asked: found.value }] : [];
  });
  if (meant.length === 0) return null;
  const answers: SpecAnswer[] = [];
  for (const { g, asked: keys } of meant) answers.push(await answerOf(q, ctx, g, keys, asked.unit));
  // With no bike named, those of which nothing is known would only be in the way.
  const known = answers.filter(({ lines }) => lines.some(({ specs }) => specs.length > 0));
  if (known.length > 0) return { is: "specs", answers: asked.bikes.length > 0 ? answers : known };
  // "Is the front brake ok?" is no question about a spec: only its very name asks for one that nobody has entered.
  return meant.some(({ asked: { exact } }) => exact) ? { is: "specs", answers } : null;
}
