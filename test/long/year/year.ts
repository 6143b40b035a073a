// A year of many groups at full speed. The clock goes from one moment to the next at which something happens, as the minute tick would find it.

import type { Instant } from "../../../src/core/calendar/dates.ts";
import { addDuration, addMinutes } from "../../../src/core/calendar/zones.ts";
import { chance } from "../../backtest/random.ts";
import { aHouse, type House } from "./house.ts";
import { Judge, lastTurn } from "./judge.ts";
import { type Planned, Riders } from "./riders.ts";
import { type WorldMember, worldOf } from "./world.ts";

export type Year = {
  readonly breaches: readonly string[];
  readonly counts: Judge["counts"];
  readonly ticks: number;
  /** What became of each thing that was noted: told, or dropped with its reason. */
  readonly fates: Readonly<Record<string, number>>;
  readonly members: number;
  readonly bikes: number;
};
export type YearOf = {
  readonly begin: Instant;
  readonly groups: number;
  readonly days: number;
  readonly seed: number /** Every so manieth message is held against /due and asked why. */;
  readonly thorough: number;
};

/** The process is away from a day to another, counted from the beginning: an evening, three days, ten. */
const AWAY = [
  [40.3, 40.8],
  [100, 103],
  [220, 230],
] as const;
const EVER = "" as Instant;
/** What has stood so for so long was to be told by now. */
const STOOD_DAYS = 18;

export async function aYear({ begin, groups, days, seed, thorough }: YearOf): Promise<Year> {
  const luck = chance(seed);
  const house = await aHouse(begin, chance(seed + 1));
  const world = worldOf(groups, luck);
  const plans: Planned[] = [];
  const riders = new Riders(house, luck, (at, does) => insert(plans, { at: awake(begin, at), does }));
  const judge = new Judge(house, riders, world);
  const end = addDuration(begin, `P${days}D`);
  for (const [n, group] of world.entries()) riders.plan(addMinutes(begin, 1 + ((n * 37) % 14_400)), () => riders.begin(group));
  const members = world.flatMap((group) => group.members);
  const standing = new Standing(house, judge, riders);
  // One member in four looks by themselves, once in a week and a half.
  for (const [n, member] of members.entries()) if (n % 4 === 0) riders.plan(addDuration(begin, `P${11 + (n % 7)}D`), () => standing.look(member, riders));
  let [ticks, seen] = [0, 0];
  for (;;) {
    const planned = plans.at(-1)?.at ?? end;
    const due = await house.next();
    const at = [planned, due === null ? planned : awake(begin, minuteOf(due < house.now() ? house.now() : due))].sort()[0] as Instant;
    if (at >= end) break;
    if (at === planned) {
      house.moveTo(at);
      await plans.pop()?.does();
    } else {
      await house.tick(at);
      ticks++;
    }
    for (; seen < house.sent.length; seen++) {
      const sent = house.sent[seen];
      if (sent === undefined) break;
      await judge.judge(sent, seen % thorough === 0);
      const member = members.find(({ name }) => name === sent.to.member);
      if (member !== undefined) await riders.answer(sent, member, member.group.members);
    }
  }
  const fates = await fatesOf(house, judge);
  for (const fault of house.faults) judge.breaches.push(fault);
  if (riders.refusedToOthers.some((refused) => !refused)) judge.breaches.push("somebody else's press was taken");
  await house.close();
  const bikes = members.reduce((n, each) => n + each.bikes.length, 0);
  return { breaches: judge.breaches, counts: judge.counts, ticks, fates, members: members.length, bikes };
}

/** The first minute at or after a moment: the tick comes once a minute. */
const minuteOf = (at: Instant): Instant => (at.endsWith(":00.000Z") ? at : addMinutes(`${at.slice(0, 16)}:00.000Z` as Instant, 1));

/** While the process is away nothing is heard and nothing is sent: it comes with the end of it. */
function awake(begin: Instant, at: Instant): Instant {
  for (const [from, to] of AWAY) {
    const [gone, back] = [from, to].map((n) => addMinutes(begin, n * 1440)) as [Instant, Instant];
    if (at > gone && at < back) return back;
  }
  return at;
}

/** Kept with the next at the end. */
function insert(plans: Planned[], plan: Planned): void {
  let [low, high] = [0, plans.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((plans[middle] as Planned).at > plan.at) low = middle + 1;
    else high = middle;
  }
  plans.splice(low, 0, plan);
}

/** Looks now and then, by /due, at what stands so for a while: that was to be told. */
class Standing {
  private readonly since = new Map<string, Instant>();
  private readonly house: House;
  private readonly judge: Judge;
  private readonly riders: Riders;

  constructor(house: House, judge: Judge, riders: Riders) {
    this.house = house;
    this.judge = judge;
    this.riders = riders;
  }

  async look(member: WorldMember, { plan }: Riders): Promise<void> {
    const { house } = this;
    plan(addDuration(house.now(), "P10D"), () => this.look(member, this.riders));
    const due = await house.hear(member.name, null, { run: "/due" });
    const bikes = (due?.data as { bikes?: { bike: string; dues: { item: string; status: string; habit: boolean }[] }[] } | null)?.bikes ?? [];
    for (const { bike, dues } of bikes)
      for (const { item, status, habit } of dues) {
        const told = ["soon", "due", "overdue"].includes(status) && !habit;
        for (const stage of ["soon", "due", "overdue"]) if (stage !== status || !told) this.since.delete(`${bike} ${item} ${stage}`);
        if (!told) continue;
        const key = `${bike} ${item} ${status}`;
        const first = this.since.get(key);
        const turn = lastTurn(this.riders.turns, bike, item);
        const own = member.bikes.find(({ id }) => id === bike);
        if (first === undefined || own?.state !== "riding" || (turn !== null && turn.at > first)) {
          this.since.set(key, house.now());
          continue;
        }
        const stood = (Date.parse(house.now()) - Date.parse(first)) / 86_400_000;
        // Put off, or taken back: what is told then is the bot's to know.
        const own_ = turn === null || turn.is === "done";
        if (stood < STOOD_DAYS || member.by === "off" || member.off.includes("services") || !own_) continue;
        if (!this.judge.wasTold(bike, item, status, turn?.at ?? EVER))
          this.judge.breaches.push(`never told: ${item} ${status} of ${own.name}, ${member.name}, since ${first}`);
        this.since.set(key, house.now());
      }
  }
}

/** Every thing noted has an end with a reason, or waits for a moment to come; every delivery is a message that arrived, or says why there is none. */
async function fatesOf(house: House, judge: Judge): Promise<Record<string, number>> {
  const fates: Record<string, number> = {};
  const count = (fate: string): void => {
    fates[fate] = (fates[fate] ?? 0) + 1;
  };
  const arrived = new Set(house.sent.map(({ delivery }) => delivery));
  if (arrived.size !== house.sent.length) judge.breaches.push("a delivery arrived twice");
  const stale = addDuration(house.now(), "-P9D");
  for (const { state, why, kind, not_before, delivery } of await house.db.selectFrom("notices").selectAll().execute()) {
    count(`${kind}: ${state}${state === "dropped" ? `, ${why}` : ""}`);
    if (state === "dropped" && (why === null || why === "")) judge.breaches.push(`a ${kind} was dropped without a reason`);
    if (state === "told" && (delivery === null || !arrived.has(delivery))) judge.breaches.push(`a ${kind} counts as told and no message of it arrived`);
    if (state === "waiting" && not_before < stale) judge.breaches.push(`a ${kind} has waited since ${not_before}`);
  }
  for (const { id, state, why } of await house.db.selectFrom("deliveries").selectAll().execute()) {
    count(`message: ${state}${state === "empty" ? `, ${why}` : ""}`);
    if ((state === "sent") !== arrived.has(id))
      judge.breaches.push(`a delivery is ${state}, and its message ${arrived.has(id) ? "arrived" : "did not arrive"}`);
    if (state === "failed" || state === "unconfirmed") judge.breaches.push(`a delivery ${state}: ${why}`);
  }
  return fates;
}
