// What a reminder told of, looked up again when one of its buttons is pressed.

import type { BikeId, ItemKey } from "../core/ids.ts";
import type { Ctx } from "./context.ts";
import { type DueReport, dueBike } from "./due.ts";
import { pick } from "./garage.ts";
import { ownGarage } from "./messages.ts";
import { nameIn } from "./record-work.ts";
import { done, type Result, refused } from "./refusals.ts";

export type Reminded = {
  readonly bike: BikeId;
  readonly nickname: string;
  readonly items: readonly ItemKey[];
  readonly named: readonly { readonly item: ItemKey; readonly name: string }[];
};

/** The bike and the items of one reminder; only the bike's owner may act on them. */
export async function remindedItems(ctx: Ctx, input: { readonly subject: string }): Promise<Result<Reminded>> {
  const [delivery = "", bike = ""] = input.subject.split(".");
  return ctx.store.read(async (q) => {
    const g = pick(await ownGarage(q, ctx), bike as BikeId);
    if (g === null) return refused({ why: "not yours" });
    const notices = (await q.notices.ofDelivery(delivery)).filter((notice) => notice.bike === bike && notice.state === "told");
    const there = notices.filter((notice) => g.plan.items.some((item) => item.key === notice.item));
    if (there.length === 0) return refused({ why: "gone" });
    // Done since, by this reminder or otherwise: it is not asked for again.
    const open = there.filter((notice) => !g.work.some((record) => record.loggedAt > notice.at && record.items.some(({ item }) => item === notice.item)));
    const told = [...new Set(open.flatMap((notice) => (notice.item === null ? [] : [notice.item])))];
    if (told.length === 0) return refused({ why: "already done" });
    return done({ bike: g.bike.id, nickname: g.bike.nickname, items: told, named: told.map((item) => ({ item, name: nameIn(ctx, g, item) })) });
  });
}

/** The bikes that a reminder spoke of, whole; for its member only. */
export async function whatWasTold(ctx: Ctx, delivery: string): Promise<Result<DueReport>> {
  return ctx.store.read(async (q) => {
    const notices = await q.notices.ofDelivery(delivery);
    if (notices.length === 0) return refused({ why: "gone" });
    if (notices.some((notice) => notice.member !== ctx.who.member)) return refused({ why: "not yours" });
    const all = (await ownGarage(q, ctx)).filter((g) => notices.some((notice) => notice.bike === g.bike.id));
    return done({ bikes: all.map((g) => dueBike(ctx, g)) });
  });
}
