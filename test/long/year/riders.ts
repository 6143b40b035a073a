// What riders do over a year: they write figures, do what they are told of or not, put it off, take it back, put bikes away, go on trips, move house.
// They go by what the bot sends and answers, as members do, and know nothing of how it works.

import type { Instant } from "../../../src/core/calendar/dates.ts";
import { addDuration, addMinutes } from "../../../src/core/calendar/zones.ts";
import { PUT_OFF_UNTIL } from "../../../src/usecases/put-off.ts";
import type { Chance } from "../../backtest/random.ts";
import type { House, Sent } from "./house.ts";
import { DAYS, oneOf, type WorldBike, type WorldGroup, type WorldMember, ZONES } from "./world.ts";

/** What a rider changed about an item, so that what is told of it later is told of something new. */
export type Turn = { readonly at: Instant; readonly bike: string; readonly item: string; readonly is: "done" | "undone" | "put off" };
export type Planned = { readonly at: Instant; readonly does: () => Promise<void> };

/** Months of riding; the others have next to none. */
const inSeason = (at: Instant, south: boolean): boolean => {
  const month = Number(at.slice(5, 7));
  return south ? month >= 9 || month <= 4 : month >= 3 && month <= 10;
};
const day = (at: Instant, n: number): string => addDuration(at, `P${n}D`).slice(0, 10);

export class Riders {
  readonly turns: Turn[] = [];
  readonly refusedToOthers: boolean[] = [];
  readonly house: House;
  readonly luck: Chance;
  readonly plan: (at: Instant, does: () => Promise<void>) => void;

  constructor(house: House, luck: Chance, plan: (at: Instant, does: () => Promise<void>) => void) {
    this.house = house;
    this.luck = luck;
    this.plan = plan;
  }

  /** A group comes to be, its members join, and each lives on by itself. */
  async begin(group: WorldGroup): Promise<void> {
    const { house, luck } = this;
    const [admin] = group.members as [WorldMember];
    const digest =
      group.digest === null ? "" : group.digest === "off" ? " digest:off" : ` digest:${DAYS[group.digest.weekday - 1]} digest-time:${group.digest.time}`;
    const options = `zone:${group.zone}${group.channel ? " reading:here" : ""}${group.season === null ? "" : ` riding:${group.season}`}${digest}`;
    await house.hear(admin.name, group.id, { run: `/group ${options}` }, true);
    for (const member of group.members) {
      await house.hear(member.name, group.id, {
        run: `/remind by:${member.by} day:${DAYS[member.weekday - 1]} time:${member.time} quiet-from:${member.quiet.from} quiet-to:${member.quiet.to}${member.zone === null ? "" : ` zone:${member.zone}`}`,
      });
      // Some choose another day of the week, more than once.
      for (let n = 0; luck.u() < 0.2 && n < 3; n++)
        this.in(luck.between(15, 300), async () => {
          await house.hear(member.name, null, { run: `/remind day:${oneOf(luck, DAYS)}` });
        });
      for (const off of member.off) await house.hear(member.name, group.id, { run: `/remind off:${off}` });
      for (const bike of member.bikes) await this.bring(member, bike);
    }
    // An admin moves the whole group to another zone, once.
    if (luck.u() < 0.15)
      this.in(luck.between(60, 300), async () => {
        group.zone = oneOf(luck, ZONES);
        await house.hear(admin.name, group.id, { run: `/group zone:${group.zone}` }, true);
      });
  }

  private in(days: number, does: () => Promise<void>): void {
    this.plan(addMinutes(this.house.now(), Math.max(1, Math.round(days * 1440))), does);
  }

  private async bring(member: WorldMember, bike: WorldBike): Promise<void> {
    const { house, luck } = this;
    const { name, group } = member;
    const added = await house.hear(name, group.id, { run: `/bike add name:${bike.name} kind:${bike.kind} odometer:${bike.dial} ${bike.unit}` });
    const form = added?.actions.find(({ label }) => label.startsWith("Fill in"));
    if (added === null || form?.kind !== "form") throw new Error(`${bike.name} was not added: ${added?.lines.join(" ")}`);
    const { id } = await house.db.selectFrom("bikes").select("id").where("owner", "=", name).where("nickname", "=", bike.name).executeTakeFirstOrThrow();
    bike.id = id;
    const fields = Object.fromEntries(
      form.form.fields.flatMap((field) => (luck.u() < 0.7 ? [[field.name, day(house.now(), -Math.round(luck.between(20, 1000)))]] : [])),
    );
    await house.hear(name, group.id, { fill: form.id, fields });
    if (bike.pictured) await house.hear(name, group.id, { run: `/bike change bike:${bike.name} group-picture:yes` });
    if (luck.u() < 0.3)
      await house.hear(name, null, { run: `/bike date what:insurance on:${day(house.now(), Math.round(luck.between(5, 360)))} bike:${bike.name}` });
    this.in(luck.between(1, bike.every), () => this.read(member, bike));
    if (luck.u() < 0.25) this.in(luck.between(60, 250), () => this.trip(member, bike));
    if (luck.u() < 0.15) this.in(luck.between(20, 300), () => this.fault(member, bike));
    if (bike.putAway) this.in(luck.between(1, 20), () => this.turnOfSeason(member, bike));
  }

  /** Rides on, and writes what the dial shows. */
  private async read(member: WorldMember, bike: WorldBike): Promise<void> {
    const { house, luck } = this;
    const gap = luck.around(bike.every, 0.5);
    if (bike.state === "riding") {
      const pace = inSeason(house.now(), member.group.south) ? 1 : 0.15;
      bike.dial += Math.round((bike.week / 7) * gap * pace * luck.around(1, 0.4));
      await house.hear(member.name, luck.u() < 0.5 ? null : member.group.id, { say: `${bike.dial} ${bike.unit} on ${bike.name}` });
    }
    this.in(gap, () => this.read(member, bike));
  }

  private async turnOfSeason(member: WorldMember, bike: WorldBike): Promise<void> {
    const riding = inSeason(this.house.now(), member.group.south);
    if (riding !== (bike.state === "riding")) {
      const state = riding ? "riding" : "laid up";
      await this.house.hear(member.name, null, { run: `/bike change bike:${bike.name} state:${state}` });
      bike.state = state;
    }
    this.in(this.luck.between(7, 20), () => this.turnOfSeason(member, bike));
  }

  private async trip(member: WorldMember, bike: WorldBike): Promise<void> {
    const { house, luck } = this;
    const from = Math.round(luck.between(2, 40));
    const length = Math.round(luck.between(2, 14));
    await house.hear(member.name, null, {
      run: `/trip plan:${Math.round(length * 150)} ${bike.unit} from ${day(house.now(), from)} to ${day(house.now(), from + length)} bike:${bike.name} load:${oneOf(luck, ["solo", "loaded", "two-up"])}`,
    });
  }

  private async fault(member: WorldMember, bike: WorldBike): Promise<void> {
    const { house, luck } = this;
    const found = await house.hear(member.name, null, { say: `front brake spongy on ${bike.name}` });
    const grade = found?.actions.find(({ label }) => label.toLowerCase().includes("do not ride"));
    if (grade === undefined) throw new Error(`no grade to press: ${found?.lines.join(" ")}`);
    const graded = await house.hear(member.name, null, { press: grade.id });
    const nothing = graded?.actions.find(({ id }) => id.startsWith("1.defect-nothing."));
    if (nothing === undefined) throw new Error(`no way to close it: ${graded?.lines.join(" ")}`);
    this.in(luck.between(3, 90), async () => {
      await house.hear(member.name, null, { fill: nothing.id, fields: { why: "it was the cold" } });
    });
  }

  /** A message has come: done some days later, put off, left lying; and somebody else may try its buttons. */
  async answer(sent: Sent, member: WorldMember, others: readonly WorldMember[]): Promise<void> {
    const { house, luck } = this;
    const told = (sent.reply.data as { told?: { bike: string; items: { item: string }[] }[] }).told ?? [];
    const place = sent.to.where.group;
    for (const { bike, items } of told) {
      if (items.length === 0) continue;
      const subject = `${sent.delivery}.${bike}`;
      const [done, put] = ["done", "put-off"].map((what) => sent.reply.actions.find(({ id }) => id.startsWith(`1.${what}.${subject}.`)));
      if (done === undefined || put === undefined) continue;
      const other = others.find((each) => each !== member);
      if (other !== undefined && luck.u() < 0.05) {
        const tried = await house.hear(other.name, place, { pick: put.id, values: ["a week"] });
        this.refusedToOthers.push(tried?.refused === true);
      }
      const choice = luck.u();
      if (choice < 0.5) this.in(luck.between(0.2, 9), () => this.workOn(member, bike, done.id, place));
      else if (choice < 0.62) {
        const until = oneOf(luck, PUT_OFF_UNTIL);
        this.in(luck.between(0.1, 3), async () => {
          const answer = await house.hear(member.name, place, { pick: put.id, values: [until] });
          if (answer?.refused === true) return;
          const rows = await house.db.selectFrom("put_offs").select("item").where("bike", "=", bike).where("at", "=", house.now()).execute();
          for (const { item } of rows) this.turns.push({ at: house.now(), bike, item, is: "put off" });
        });
      }
    }
  }

  private async workOn(member: WorldMember, bike: string, done: string, place: string | null): Promise<void> {
    const { house, luck } = this;
    const answer = await house.hear(member.name, place, { fill: done, fields: { what: "all", by: luck.u() < 0.2 ? "Marsh Lane Garage" : "" } });
    if (answer === null || answer.refused === true) return;
    const items = await this.workedAt(bike);
    for (const item of items) this.turns.push({ at: house.now(), bike, item, is: "done" });
    const undo = answer.actions.find(({ label }) => label.startsWith("Undo"));
    if (undo === undefined || luck.u() > 0.08) return;
    this.in(luck.between(0.01, 2), async () => {
      const undone = await house.hear(member.name, place, { press: undo.id });
      if (undone?.refused !== true) for (const item of items) this.turns.push({ at: house.now(), bike, item, is: "undone" });
    });
  }

  /** What the bike's last record of work holds. */
  private async workedAt(bike: string): Promise<string[]> {
    const row = await this.house.db.selectFrom("work").select("items").where("bike", "=", bike).orderBy("logged_at", "desc").limit(1).executeTakeFirstOrThrow();
    return (JSON.parse(row.items) as { item: string }[]).map(({ item }) => item);
  }
}
