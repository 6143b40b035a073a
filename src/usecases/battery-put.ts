// A new battery whose kind was said: which it is, and whether the bike is entered with another.

import type { Bike } from "../core/bike.ts";
import type { Equipment } from "../core/equipment.ts";
import type { BikeId } from "../core/ids.ts";
import type { Known } from "../core/reading/vocabulary.ts";
import { batteryTold } from "../message/battery-told.ts";
import type { WorkRecord } from "../store/work.ts";
import { type Chemistry, REST_TABLES } from "../trade/battery.ts";

/** A new battery of another kind than the bike is entered with. */
export type BatteryPut = { readonly bike: BikeId; readonly nickname: string; readonly kind: Chemistry };

const CHEMISTRIES = Object.keys(REST_TABLES) as readonly Chemistry[];
const BATTERY = "battery.test";

/** The kind that the last new battery is said to be, where the bike is entered with another; null where none was said, or they agree. */
export function otherBattery(work: readonly WorkRecord[], { battery }: Pick<Equipment, "battery">): Chemistry | null {
  const renewed = work.filter(({ items }) => items.some(({ item, outcome }) => item === BATTERY && outcome === "replaced"));
  const last = renewed.reduce<WorkRecord | null>((late, each) => (late === null || each.on.from >= late.on.from ? each : late), null);
  const said = last?.detail?.parts.find(({ item }) => item === BATTERY)?.words;
  const kind = CHEMISTRIES.find((each) => each === said) ?? null;
  return kind === battery ? null : kind;
}

/** What a message says of a bike's battery and nothing else; null where it says no such thing. With no bike named, of each of the speaker's that is not entered so. */
export function batteriesTold(
  all: readonly { readonly bike: Bike }[],
  text: string,
  known: Known,
): readonly (BatteryPut & { readonly other: boolean })[] | null {
  const told = batteryTold(text, known);
  const kind = CHEMISTRIES.find((each) => each === told?.kind);
  if (told === null || kind === undefined) return null;
  return all
    .filter(({ bike }) => told.bike === null || bike.id === told.bike)
    .map(({ bike }) => ({ bike: bike.id, nickname: bike.nickname, kind, other: bike.equipment.battery !== kind }));
}

/** New batteries among the work just saved that are of another kind than their bike is entered with. */
export const batteriesPut = (work: readonly WorkRecord[], bikes: readonly { readonly bike: Bike }[]): readonly BatteryPut[] =>
  bikes.flatMap(({ bike }) => {
    const kind = otherBattery(
      work.filter((each) => each.bike === bike.id),
      bike.equipment,
    );
    return kind === null ? [] : [{ bike: bike.id, nickname: bike.nickname, kind }];
  });
