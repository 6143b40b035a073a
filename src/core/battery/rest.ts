// A battery at rest: what its volts say of its charge, how fast it loses it, and whether it can freeze. Volts of a 12 V battery, temperatures in °C.

import { cannotTell, type Judgement, judge, type Limit } from "../judgement/verdict.ts";
import { toCanonical } from "../quantity/units.ts";
import type { ConditionRead, ReadingDetail } from "../reading/detail.ts";
import { lineThrough } from "../wear/line.ts";

/** A table of a chemistry, falling: resting volts, with the charge as a share and the acid's specific gravity where it can be told. */
export type RestTable = {
  readonly points: readonly { readonly volts: number; readonly charge: number }[];
  /** Volts between which published charts disagree too much for a share to be said; null when there are none. */
  readonly unsure: readonly [number, number] | null;
  /** Charge it when at rest at or below `min`. */
  readonly limit: Limit;
  /** No such battery that has rested shows more: a charger is on or only just off, or it is of another kind. */
  readonly most: number;
  /** Are its figures no more than typical, and those of a maker off by a tenth of a volt? */
  readonly typical?: true;
  readonly source: string;
};

const FINE = 0.01;

const AT_WORK: readonly ConditionRead[] = ["under draw", "on the charger", "running", "idling"];

/** Was it read cranking, with its lights on or on its charger? So it shows neither its charge nor that a cell is dead. */
export const isAtWork = (detail: ReadingDetail | null): boolean => detail?.conditions?.some((each) => AT_WORK.includes(each)) === true;

/** For how many hours it is known to have rested; null where nobody said. @param enough hours that "rested" stands for */
export const restedFor = (detail: ReadingDetail | null, enough: number): number | null =>
  detail?.stood ?? (detail?.conditions?.includes("rested") === true ? enough : null);

/** °C of the tables: they are printed for 80 °F. */
const TABLE_CELSIUS = toCanonical(80, "°F");
/** Volts by which six lead-acid cells at rest rise with each kelvin at one charge: 0.2 to 0.3 mV a cell (Bode, Lead-Acid Batteries; Linden, Handbook of Batteries; from memory). The trade's 0.024 V in 10 °F is a hydrometer's correction and three times that. */
const VOLTS_A_KELVIN = 6 * 0.00025;

/** What a lead-acid battery of 12 V would show at the temperature of its table. @param celsius at which it was read */
export const asInTable = (volts: number, celsius: number): number => volts + (TABLE_CELSIUS - celsius) * VOLTS_A_KELVIN;

export type RestJudgement = {
  readonly judgement: Judgement;
  /** Share of its charge, by the table; null where nothing honest can be said. */
  readonly charge: number | null;
};

/**
 * Judges volts read with nothing switched on.
 * @param rested hours since it was charged or ridden, null when not known. Surface charge only ever lifts the reading: low volts are low whether rested or not
 */
export function judgeResting(volts: number, table: RestTable, rested: number | null, enough: number): RestJudgement {
  const judgement = judge(volts, table.limit, FINE);
  if (volts > table.most + FINE / 2) return { judgement: cannotTell("more than full"), charge: null };
  const settled = rested !== null && rested >= enough;
  if (!settled && (judgement.is === "within" || judgement.is === "near limit")) return { judgement: cannotTell("rested"), charge: null };
  const unsure = table.unsure !== null && volts >= table.unsure[0] && volts <= table.unsure[1];
  return { judgement, charge: unsure || !settled ? null : chargeAt(volts, table) };
}

/** The share of charge at resting volts, between the table's points in a straight line; full and empty beyond its ends. */
export function chargeAt(volts: number, { points }: RestTable): number {
  return between(
    points.map(({ volts: x, charge: y }) => ({ x, y })),
    volts,
  );
}

/** The freezing point of a lead-acid battery's acid at a share of its charge, in °C. @param gravity specific gravity by charge @param freezing °C by specific gravity */
export function freezesAt(
  charge: number,
  gravity: readonly { readonly x: number; readonly y: number }[],
  freezing: readonly { readonly x: number; readonly y: number }[],
): number {
  return between(freezing, between(gravity, charge));
}

/** Readings at rest while it stood: the day as a number, and volts. */
export type Stood = { readonly day: number; readonly volts: number };

/**
 * The day on which a battery that stands will be down to the volts at which it is charged; null when it is not falling, or cannot be told.
 * @param readings since it was last charged, oldest first
 * @param usual volts lost a day by such a battery, with its spread: what is known before two readings tell
 */
export function chargeBy(readings: readonly Stood[], least: number, usual: { readonly mean: number; readonly sd: number }): number | null {
  const last = readings.at(-1);
  if (last === undefined) return null;
  if (last.volts <= least) return last.day;
  const line = lineThrough(
    readings.map(({ day, volts }) => ({ x: day - last.day, y: volts })),
    0.02,
    { start: null, slope: { mean: -usual.mean, sd: usual.sd } },
  );
  if (line === null || line.slope >= -1e-6) return null;
  const day = (least - line.start) / line.slope;
  return last.day + Math.max(0, Math.floor(day + 1e-6));
}

/** So many readings, over so many days, tell a fall from what a meter is off; volts. Common practice. */
const FALL = { readings: 3, days: 7, volts: 0.05, noise: 0.02 } as const;

/** Do volts at rest fall from reading to reading, by more than a meter is off? Oldest first. */
export function falls(readings: readonly Stood[]): boolean {
  const [first, last] = [readings[0], readings.at(-1)];
  if (first === undefined || last === undefined || readings.length < FALL.readings || last.day - first.day < FALL.days) return false;
  const steady = readings.every(({ volts }, n) => n === 0 || volts - (readings[n - 1]?.volts ?? volts) <= FALL.noise);
  return steady && first.volts - last.volts >= FALL.volts - 1e-9;
}

/** Straight lines between points in order of x, rising or falling; the end values beyond them. */
function between(points: readonly { readonly x: number; readonly y: number }[], x: number): number {
  const sorted = [...points].sort((a, b) => a.x - b.x);
  const [first, last] = [sorted[0], sorted.at(-1)];
  if (first === undefined || last === undefined) throw new RangeError("an empty table");
  if (x <= first.x) return first.y;
  const above = sorted.findIndex((point) => point.x >= x);
  const [from, to] = [sorted[above - 1], sorted[above]];
  if (from === undefined || to === undefined) return last.y;
  return from.y + ((to.y - from.y) * (x - from.x)) / (to.x - from.x);
}
