// Invented groups with their riders and bikes: where they are, when they ride, and how they want to be told.

import { KINDS, type KindId } from "../../../src/trade/kinds.ts";
import type { Chance } from "../../backtest/random.ts";

export type WorldBike = {
  readonly name: string;
  readonly kind: KindId;
  readonly unit: "mi" | "km";
  /** Shown on the dial; moves on as it is ridden. */
  dial: number;
  /** A week's riding in season. */
  readonly week: number;
  /** Days between two readings that are written down. */
  readonly every: number;
  readonly pictured: boolean;
  readonly putAway: boolean;
  id: string;
  state: "riding" | "laid up";
};
export type WorldMember = {
  readonly name: string;
  readonly group: WorldGroup;
  zone: string | null;
  by: "direct message" | "channel" | "off";
  readonly weekday: number;
  readonly time: string;
  readonly quiet: { readonly from: string; readonly to: string };
  readonly off: readonly string[];
  readonly bikes: WorldBike[];
};
export type WorldGroup = {
  readonly id: string;
  zone: string;
  readonly south: boolean;
  readonly season: string | null;
  readonly channel: boolean;
  /** Null: as it is while nothing is said, Sunday at 18:00. */
  readonly digest: { readonly weekday: number; readonly time: string } | "off" | null;
  readonly members: WorldMember[];
};

export const ZONES = [
  "Europe/Berlin",
  "America/New_York",
  "Australia/Sydney",
  "Europe/London",
  "Pacific/Auckland",
  "America/Phoenix",
  "Asia/Kolkata",
  "America/Santiago",
  "UTC",
  "Australia/Lord_Howe",
] as const;
const SOUTH: readonly string[] = ["Australia/Sydney", "Pacific/Auckland", "America/Santiago", "Australia/Lord_Howe"];
export const DAYS = ["Monday", "Tuesday", "Wednesday", "Thursday", "Friday", "Saturday", "Sunday"] as const;
const NAMES = ["Heron", "Bramble", "Wren", "Otter", "Quill", "Thistle", "Plover", "Juniper"];

export const oneOf = <T>(luck: Chance, all: readonly T[]): T => all[Math.floor(luck.u() * all.length)] as T;
const clock = (hour: number, half: boolean): string => `${String(hour).padStart(2, "0")}:${half ? "30" : "00"}`;

export function worldOf(groups: number, luck: Chance): WorldGroup[] {
  return Array.from({ length: groups }, (_, n) => {
    const zone = ZONES[n % ZONES.length] as string;
    const south = SOUTH.includes(zone);
    const group: WorldGroup = {
      ...{ id: `g${n}`, zone, south, channel: luck.u() < 0.8, members: [] },
      season: luck.u() < 0.7 ? (south ? "south" : "north") : null,
      digest:
        luck.u() < 0.6 ? null : luck.u() < 0.3 ? "off" : { weekday: Math.floor(1 + 7 * luck.u()), time: clock(8 + Math.floor(12 * luck.u()), luck.u() < 0.5) },
    };
    const many = 1 + Math.floor(4 * luck.u());
    for (let m = 0; m < many; m++) group.members.push(memberOf(`${group.id}-m${m}`, group, luck));
    return group;
  });
}

function memberOf(name: string, group: WorldGroup, luck: Chance): WorldMember {
  const unit = group.zone.startsWith("America") || group.zone === "Europe/London" ? "mi" : "km";
  const bikes = Array.from({ length: luck.u() < 0.3 ? 2 : 1 }, (_, n): WorldBike => {
    const week = luck.around(unit === "mi" ? 60 : 100, 0.8);
    return {
      ...{ name: NAMES[(n * 3 + Math.floor(luck.u() * 3)) % NAMES.length] as string, kind: oneOf(luck, Object.keys(KINDS) as KindId[]), unit, week },
      ...{
        dial: Math.round(luck.between(800, 40_000)),
        every: luck.around(12, 0.6),
        pictured: luck.u() < 0.4,
        putAway: luck.u() < 0.5,
        id: "",
        state: "riding",
      },
    };
  });
  return {
    ...{ name, group, bikes, zone: luck.u() < 0.2 ? oneOf(luck, ZONES) : null },
    by: luck.u() < 0.75 ? "direct message" : luck.u() < 0.7 ? "channel" : "off",
    weekday: luck.u() < 0.5 ? 6 : Math.floor(1 + 7 * luck.u()),
    // At any hour, the quiet ones and those that the clocks leave out included.
    time: luck.u() < 0.5 ? "09:00" : clock(Math.floor(24 * luck.u()), luck.u() < 0.5),
    quiet:
      luck.u() < 0.7
        ? { from: "21:00", to: "08:00" }
        : { from: clock(19 + Math.floor(5 * luck.u()), false), to: clock(5 + Math.floor(5 * luck.u()), luck.u() < 0.5) },
    off: luck.u() < 0.1 ? [oneOf(luck, ["services", "season", "charging", "dates", "readings", "trips"])] : [],
  };
}
