// What a member calls a bike beside its nickname: asked once, remembered, and forgotten when the member says so.

import { nicknameKey } from "../core/bike.ts";
import type { BikeId } from "../core/ids.ts";
import type { Gap } from "../core/reading/intent.ts";
import type { Refusal } from "../core/refusal.ts";
import type { Repos } from "../store/store.ts";
import type { Ctx } from "./context.ts";
import type { Garaged } from "./garage.ts";
import type { Learned } from "./message-outcome.ts";
import { whyUnusable } from "./nicknames.ts";

/** Nobody calls their bikes by more names than these; beyond them the bike is asked for each time. */
const MOST = 40;

/** Remembers the word about which a question was answered; null when there is nothing to remember: the word fits several bikes, or could be taken for something else. */
export async function learnt(q: Repos, ctx: Ctx, all: readonly Garaged[], gap: Gap, chosen: BikeId | null): Promise<Learned | null> {
  const g = all.find(({ bike }) => bike.id === chosen);
  if (gap.need !== "bike" || gap.unheard !== true || gap.named === null || g === undefined || whyUnusable(ctx, gap.named) !== null) return null;
  // The name of a bike that was sold stays that bike's.
  const sold = (await q.bikes.ofOwner(ctx.who.member)).some((bike) => nicknameKey(bike.nickname) === nicknameKey(gap.named ?? ""));
  if (sold || (await q.byNames.ofOwner(ctx.who.member)).length >= MOST) return null;
  await q.byNames.put(ctx.who.member, { bike: g.bike.id, name: gap.named }, ctx.now);
  return { name: gap.named, nickname: g.bike.nickname };
}

/** Teaches or forgets a by-name of a bike. Null when it was done, else why not. */
export async function renamed(
  q: Repos,
  ctx: Ctx,
  all: readonly Garaged[],
  g: Garaged,
  { called, notCalled }: { readonly called?: string | undefined; readonly notCalled?: string | undefined },
): Promise<Refusal | null> {
  if (notCalled !== undefined) {
    const name = bare(ctx, notCalled);
    if (!(await q.byNames.remove(ctx.who.member, { bike: g.bike.id, name })))
      return { why: "not called so", nickname: g.bike.nickname, name, names: g.bike.byNames ?? [] };
  }
  if (called !== undefined) {
    const name = bare(ctx, called);
    const unusable = whyUnusable(ctx, name);
    if (unusable !== null) return { why: "nickname unusable", because: unusable };
    if (all.some(({ bike }) => nicknameKey(bike.nickname) === nicknameKey(name))) return { why: "nickname taken", nickname: name };
    await q.byNames.put(ctx.who.member, { bike: g.bike.id, name }, ctx.now);
  }
  return null;
}

/** "The big one" as it is kept: without the word before it, which may be another the next time. */
function bare(ctx: Ctx, typed: string): string {
  const words = typed.normalize("NFKC").trim().split(/\s+/u);
  const [first = "", ...rest] = words;
  const isBefore = [ctx.vocabulary, ...ctx.also.map(({ vocabulary }) => vocabulary)].some(({ measuring }) => measuring.definite.includes(first.toLowerCase()));
  return (isBefore && rest.length > 0 ? rest : words).join(" ");
}
