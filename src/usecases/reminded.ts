// What a reminder told of, looked up again when one of its buttons is pressed.

import type { LocalDate } from "../core/calendar/dates.ts";
import { localDateAt } from "../core/calendar/zones.ts";
import type { BikeId, ItemKey } from "../core/ids.ts";
import { type NoticeKind, type Topic, USUAL_DIGEST, type WeekHour } from "../core/reminding.ts";
import type { Notice } from "../store/notices.ts";
import type { Repos } from "../store/store.ts";
import { type Aside, asidesOf } from "./asides.ts";
import type { Ctx } from "./context.ts";
import { type DueReport, dueBike } from "./due.ts";
import { type Garaged, itemsOf, pick } from "./garage.ts";
import { AGAIN, kindRow } from "./notice-kinds.ts";
import { ownGarage } from "./own-garage.ts";
import { nameIn } from "./record-work.ts";
import { done, type Result, refused } from "./refusals.ts";

export type Reminded = {
  readonly bike: BikeId;
  readonly nickname: string;
  readonly items: readonly ItemKey[];
  readonly named: readonly { readonly item: ItemKey; readonly name: string }[];
  /** Told of, and done since. */
  readonly doneSince: readonly ItemKey[];
};

/** The bike and the items of one reminder; only the bike's owner may act on them. */
export async function remindedItems(ctx: Ctx, input: { readonly subject: string }): Promise<Result<Reminded>> {
  const [delivery = "", bike = ""] = input.subject.split(".");
  return ctx.store.read(async (q) => {
    const g = pick(await ownGarage(q, ctx), bike as BikeId);
    if (g === null) return refused({ why: "not yours" });
    const notices = (await q.notices.ofDelivery(delivery)).filter((notice) => notice.bike === bike && notice.state === "told");
    if (!notices.some((notice) => itemsOf(g).some((item) => item.key === notice.item))) return refused({ why: "gone" });
    const reminded = remindedOf(ctx, g, notices);
    return reminded.items.length === 0 ? refused({ why: "already done" }) : done(reminded);
  });
}

export type WhyLine = {
  readonly bike: BikeId;
  readonly nickname: string;
  readonly kind: NoticeKind;
  readonly topic: Topic;
  /** Of the item; null where it is about the bike. */
  readonly name: string | null;
  /** Not told for the first time. */
  readonly again: boolean;
};
/** `digest`: it was a group's digest, and when that comes. */
export type WhyTold = { readonly why: readonly WhyLine[]; readonly sent: LocalDate; readonly digest: WeekHour | null };

/** Why a reminder came, a line for each thing it told; for its member only. */
export async function whyTold(ctx: Ctx, delivery: string): Promise<Result<WhyTold>> {
  return ctx.store.read(async (q) => {
    const notices = (await q.notices.ofDelivery(delivery)).filter(({ state }) => state === "told");
    if (notices.length === 0) return whyDigest(q, ctx, delivery);
    if (notices.some((notice) => notice.member !== ctx.who.member)) return refused({ why: "not yours" });
    const all = await ownGarage(q, ctx);
    const why = notices.flatMap(({ bike, kind, item, key }): WhyLine[] => {
      const g = pick(all, bike);
      if (g === null) return [];
      const name = item === null ? null : nameIn(ctx, g, item);
      return [{ bike, nickname: g.bike.nickname, kind, topic: kindRow(kind).topic, name, again: key.includes(AGAIN) }];
    });
    return why.length === 0 ? refused({ why: "gone" }) : done({ why, sent: localDateAt(notices[0]?.notBefore ?? ctx.now, ctx.who.zone), digest: null });
  });
}

/** Anyone in the group may ask why its digest comes. */
async function whyDigest(q: Repos, ctx: Ctx, id: string): Promise<Result<WhyTold>> {
  const delivery = await q.notices.delivery(id);
  if (delivery === null || delivery.member !== null) return refused({ why: "gone" });
  if (delivery.group !== ctx.who.group) return refused({ why: "not yours" });
  const digest = ctx.who.home?.digest ?? USUAL_DIGEST;
  return done({ why: [], sent: localDateAt(delivery.notBefore, ctx.who.zone), digest: digest === "off" ? USUAL_DIGEST : digest });
}

/** The bikes that a reminder spoke of, with what of it is still to do and what beside their plans is still so. */
export type ReminderShown = DueReport & { readonly delivery: string; readonly told: readonly (Reminded & { readonly asides: readonly Aside[] })[] };

/** For its member only. @param only one of its bikes */
export async function whatWasTold(ctx: Ctx, delivery: string, only?: BikeId): Promise<Result<ReminderShown>> {
  return ctx.store.read(async (q) => {
    const notices = (await q.notices.ofDelivery(delivery)).filter((notice) => only === undefined || notice.bike === only);
    if (notices.length === 0) return refused({ why: "gone" });
    if (notices.some((notice) => notice.member !== ctx.who.member)) return refused({ why: "not yours" });
    const all = (await ownGarage(q, ctx)).filter((g) => notices.some((notice) => notice.bike === g.bike.id));
    const groups = await q.members.groupsByIds([...new Set(all.flatMap((g) => g.bike.homeGroup ?? []))]);
    const dates = await q.dates.ofBikes(all.map((g) => g.bike.id));
    const names = new Set(notices.map(({ key }) => key.split(AGAIN)[0]));
    const told: ReminderShown["told"][number][] = [];
    for (const g of all) {
      const home = g.bike.homeGroup === null ? null : (groups.get(g.bike.homeGroup) ?? null);
      const asides = (await asidesOf(q, g, home, dates)).now.filter(({ key }) => names.has(key)).map(({ aside }) => aside);
      told.push({ ...remindedOf(ctx, g, notices), asides });
    }
    return done({ bikes: all.map((g) => dueBike(ctx, g)), delivery, told });
  });
}

/** What a reminder told of a bike and was not done since, by it or otherwise. */
function remindedOf(ctx: Ctx, g: Garaged, notices: readonly Notice[]): Reminded {
  const told = notices.filter((notice) => notice.bike === g.bike.id && notice.state === "told" && itemsOf(g).some((item) => item.key === notice.item));
  const open = told.filter((notice) => !g.work.some((record) => record.loggedAt > notice.at && record.items.some(({ item }) => item === notice.item)));
  const itemsOfAll = (all: readonly Notice[]): ItemKey[] => [...new Set(all.flatMap(({ item }) => item ?? []))];
  const items = itemsOfAll(open);
  const doneSince = itemsOfAll(told).filter((item) => !items.includes(item));
  return { bike: g.bike.id, nickname: g.bike.nickname, items, doneSince, named: items.map((item) => ({ item, name: nameIn(ctx, g, item) })) };
}
