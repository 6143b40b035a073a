// Holds every message of a year against the promises, by rules of its own: the wall clock is Temporal's, not ours.
// Each breach is a sentence; a year without one answers an empty list.

import { Temporal } from "@js-temporal/polyfill";
import type { Instant } from "../../../src/core/calendar/dates.ts";
import { STANDARD_ITEMS } from "../../../src/trade/standard-items.ts";
import type { House, Sent } from "./house.ts";
import type { Riders, Turn } from "./riders.ts";
import type { WorldBike, WorldGroup, WorldMember } from "./world.ts";

type Aside = { readonly want: string; readonly on: string; readonly what?: string };
type ToldBike = { readonly bike: string; readonly items: readonly { readonly item: string; readonly status: string }[]; readonly asides: readonly Aside[] };
type Data = { readonly delivery: string; readonly told?: readonly ToldBike[]; readonly digest?: unknown };

/** What does not wait for the week. */
const AT_ONCE: readonly string[] = ["defect", "trip ahead", "trip back"];
/** What is told of a bike laid up beside items. */
const STANDING: readonly string[] = ["out of storage", "charge", "date"];
/** Of these more than one telling is promised: a paper's day is told a month and a week before, a trip in three stages. */
const STAGES: Readonly<Record<string, number>> = { date: 2, "trip ahead": 3 };
const DAY = 86_400_000;
const days = (a: string, b: string): number => (Date.parse(b) - Date.parse(a)) / DAY;

const wall = (at: Instant, zone: string): { readonly day: number; readonly time: string } => {
  const zoned = Temporal.Instant.from(at).toZonedDateTimeISO(zone);
  return { day: zoned.dayOfWeek, time: zoned.toPlainTime().toString().slice(0, 5) };
};
const within = (time: string, from: string, to: string): boolean => (from === to ? false : from < to ? time >= from && time < to : time >= from || time < to);

export class Judge {
  readonly breaches: string[] = [];
  readonly counts = { messages: 0, items: 0, asides: 0, digests: 0, why: 0, shown: 0 };
  private readonly lastWeekly = new Map<string, Instant>();
  private readonly lastDigest = new Map<string, Instant>();
  /** Tellings by bike, item and stage. */
  private readonly told = new Map<string, Instant[]>();
  private readonly besides = new Map<string, Instant[]>();

  private readonly house: House;
  private readonly riders: Riders;
  private readonly world: readonly WorldGroup[];

  constructor(house: House, riders: Riders, world: readonly WorldGroup[]) {
    this.house = house;
    this.riders = riders;
    this.world = world;
  }

  private breach(what: string, sent: Sent): void {
    this.breaches.push(`${what} (${sent.at}, ${sent.to.member ?? sent.to.where.group}: ${sent.reply.lines.join(" / ")})`);
  }

  /** One message, at the moment at which it arrives. @param thorough asks the bot, too, what stands and why it came */
  async judge(sent: Sent, thorough: boolean): Promise<void> {
    this.counts.messages++;
    const data = sent.reply.data as Data;
    if (data.delivery !== sent.delivery) this.breach("a message that does not name its delivery", sent);
    if (sent.to.member === null) return this.judgeDigest(sent);
    const member = this.world.flatMap(({ members }) => members).find(({ name }) => name === sent.to.member);
    if (member === undefined || data.told === undefined) return this.breach("nobody's message", sent);
    this.judgeHour(sent, member);
    const atOnce = (data.told ?? []).some(
      ({ items, asides }) => asides.some(({ want }) => AT_ONCE.includes(want)) || items.some(({ item }) => !(item in STANDARD_ITEMS)),
    );
    const weekly = data.told.some(
      ({ items, asides }) => asides.some(({ want }) => !AT_ONCE.includes(want)) || items.some(({ item }) => item in STANDARD_ITEMS),
    );
    const before = this.lastWeekly.get(`${member.name} ${sent.to.where.channel}`);
    if (!atOnce && before !== undefined && days(before, sent.at) < 6) this.breach(`${days(before, sent.at).toFixed(1)} days after the last of the week`, sent);
    if (weekly) this.lastWeekly.set(`${member.name} ${sent.to.where.channel}`, sent.at);
    for (const told of data.told) this.judgeBike(sent, member, told);
    if (thorough) await this.judgeWhy(sent, member, data.told);
  }

  private judgeHour(sent: Sent, member: WorldMember): void {
    const zone = member.zone ?? member.group.zone;
    const { time } = wall(sent.at, zone);
    if (within(time, member.quiet.from, member.quiet.to)) this.breach(`at ${time}, in the quiet hours`, sent);
    if (member.by === "off") this.breach("to one who wants none", sent);
    const isDirect = sent.to.where.channel === "dm";
    if (member.by === "direct message" && !isDirect) this.breach("in a channel, unasked", sent);
    if (sent.to.where.group !== null && sent.to.where.group !== member.group.id) this.breach("in another group", sent);
  }

  private judgeBike(sent: Sent, member: WorldMember, { bike, items, asides }: ToldBike): void {
    const own = member.bikes.find(({ id }) => id === bike);
    if (own === undefined) {
      this.breach("of a bike that is not theirs", sent);
      return;
    }
    for (const { item, status } of items) {
      this.counts.items++;
      this.judgeItem(sent, member, own, item, status);
    }
    for (const aside of asides) {
      this.counts.asides++;
      if (own.state === "laid up" && !STANDING.includes(aside.want)) this.breach(`of a bike laid up: ${aside.want}`, sent);
      if (aside.want === "defect" && sent.to.where.channel !== "dm") this.breach("a defect in a channel", sent);
      const topic =
        { date: "dates", charge: "charging", reading: "readings", "trip ahead": "trips", "trip back": "trips", defect: "defects" }[aside.want] ?? "season";
      if (member.off.includes(topic)) this.breach(`switched off: ${topic}`, sent);
      const key = `${bike} ${aside.want} ${aside.what ?? ""} ${aside.on}`;
      const all = [...(this.besides.get(key) ?? []), sent.at];
      this.besides.set(key, all);
      if (aside.want === "defect") this.judgeGaps(sent, key, all);
      else if (all.length > (STAGES[aside.want] ?? 1)) this.breach(`told ${all.length} times: ${aside.want}`, sent);
    }
  }

  private judgeItem(sent: Sent, member: WorldMember, bike: WorldBike, item: string, status: string): void {
    if (member.off.includes("services") && item in STANDARD_ITEMS) this.breach("switched off: services", sent);
    if (!["soon", "due", "overdue"].includes(status)) this.breach(`${item} is ${status}`, sent);
    const row = (STANDARD_ITEMS as Readonly<Record<string, { readonly parked: string }>>)[item];
    if (bike.state === "laid up" && (row?.parked !== "counts" || status === "overdue")) this.breach(`of a bike laid up: ${item} ${status}`, sent);
    const turn = lastTurn(this.riders.turns, bike.id, item);
    const key = `${bike.id} ${item} ${status}`;
    const all = [...(this.told.get(key) ?? []), sent.at];
    this.told.set(key, all);
    // A job that was taken back leaves everything as it was told before.
    if (turn?.is === "undone") return;
    const since = all.filter((at) => turn === null || at > turn.at);
    // A look again after work is told again whether it is due or overdue.
    if (status === "overdue" || row === undefined) this.judgeGaps(sent, key, since);
    else if (since.length > 1) this.breach(`${item} ${status} told ${since.length} times`, sent);
  }

  /** After one week, two, four, and then every four; the week's window or the day's hour may add to it. */
  private judgeGaps(sent: Sent, what: string, all: readonly Instant[]): void {
    const at = all.length - 1;
    if (at < 1) return;
    const weeks = [1, 2, 4][at - 1] ?? 4;
    const gap = days(all[at - 1] as string, sent.at);
    if (gap < 7 * weeks - 1) this.breach(`${what}: again after ${gap.toFixed(1)} days, not ${7 * weeks}`, sent);
  }

  /** The bot itself must give a reason for each thing it told, and say of each item what it said. */
  private async judgeWhy(sent: Sent, member: WorldMember, told: readonly ToldBike[]): Promise<void> {
    const { group } = sent.to.where;
    const why = await this.house.hear(member.name, group, { press: `1.remind-why.${sent.delivery}.0` });
    const reasons = (why?.data as { why?: unknown[] } | null)?.why?.length ?? 0;
    const things = told.reduce((n, { items, asides }) => n + items.length + asides.length, 0);
    this.counts.why++;
    if (reasons < things) this.breach(`${things} things told, ${reasons} reasons`, sent);
    const due = await this.house.hear(member.name, group, { run: "/due" });
    const bikes = (due?.data as { bikes?: { bike: string; dues: { item: string; status: string; habit: boolean }[] }[] } | null)?.bikes ?? [];
    for (const { bike, items } of told)
      for (const { item, status } of items) {
        this.counts.shown++;
        const stands = bikes.find((each) => each.bike === bike)?.dues.find((each) => each.item === item);
        if (stands === undefined || stands.status !== status || stands.habit) this.breach(`${item} was said to be ${status} and is ${stands?.status}`, sent);
      }
  }

  private judgeDigest(sent: Sent): void {
    this.counts.digests++;
    const group = this.world.find(({ id }) => id === sent.to.where.group);
    if (group === undefined || !group.channel || group.digest === "off") {
      this.breach("a digest that nobody wants", sent);
      return;
    }
    const { day, time } = wall(sent.at, group.zone);
    const { weekday, time: hour } = group.digest ?? { weekday: 7, time: "18:00" };
    if (within(time, "21:00", "08:00")) this.breach(`a digest at ${time}`, sent);
    if (sent.reply.lines.length > 4 || sent.reply.title === null) this.breach("more than five lines", sent);
    const before = this.lastDigest.get(group.id);
    if (before !== undefined && days(before, sent.at) < 6) this.breach(`a digest ${days(before, sent.at).toFixed(1)} days after the last`, sent);
    this.lastDigest.set(group.id, sent.at);
    const late = (Date.parse(`2027-01-01T${time}Z`) - Date.parse(`2027-01-01T${hour}Z`)) / 3_600_000 + 24 * ((day - weekday + 7) % 7);
    if (late < 0 || late > 24) this.breach(`a digest on day ${day} at ${time}, not ${weekday} at ${hour}`, sent);
    const text = sent.reply.lines.join(" ");
    for (const other of this.world.flatMap(({ members }) => members))
      for (const bike of other.bikes)
        if (text.includes(`(${other.name})`) && !(other.group === group && other.bikes.some(({ pictured }) => pictured)))
          this.breach(`names ${other.name}'s ${bike.name}`, sent);
    if (/brake|oil|spongy|do not ride|no record/iu.test(text)) this.breach("says what is wrong", sent);
  }

  /** Was an item that has stood so for long told of since it was last worked at? */
  wasTold(bike: string, item: string, status: string, since: Instant): boolean {
    return (this.told.get(`${bike} ${item} ${status}`) ?? []).some((at) => at >= since);
  }
}

/** What was last changed about an item. */
export const lastTurn = (turns: readonly Turn[], bike: string, item: string): Turn | null =>
  turns.findLast((turn) => turn.bike === bike && turn.item === item) ?? null;
