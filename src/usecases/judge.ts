// A bike's readings judged: the bike's own spec, else the law of its place, else the trade, joined with what was read. Nothing of it is stored.

import { forceIn, sameForce } from "../core/belt/force.ts";
import type { LocalDate } from "../core/calendar/dates.ts";
import { STANDS, type Stand, standIn, standsOtherwise } from "../core/chain/stand.ts";
import { isFitted } from "../core/equipment.ts";
import type { ItemKey } from "../core/ids.ts";
import { callsForWork, cannotTell, graver, type Judgement, type Missing } from "../core/judgement/verdict.ts";
import type { ConditionRead } from "../core/reading/detail.ts";
import type { ReadingKind } from "../core/reading/kinds.ts";
import type { Outcome, Verdict } from "../core/schedule/facts.ts";
import { inOneDay, type Taken } from "../core/schedule/measured.ts";
import { isLeft } from "../core/schedule/mending.ts";
import { underIn } from "../core/spec/under.ts";
import { endOf, isJudged, type JudgedRow, judgedRow, LOW_MARK, SAME_AS, SPOILED_BY, UNEVEN_PADS, UNEVEN_SLACK } from "../trade/judged.ts";
import { soonAgain } from "../trade/near-limit.ts";
import { SPEC_KEYS } from "../trade/spec-keys.ts";
import { figureOf } from "./figures.ts";
import { byKind, chemistryOf, isWithPlate } from "./judge-kinds.ts";
import type { Found, Judged, Rig } from "./judged.ts";
import { treadBy } from "./tread-limit.ts";

/** Judges one reading; null for a kind that nobody judges. */
export function judgeTaken(said: Taken, rig: Rig): Judged | null {
  const { kind } = said;
  if (!isJudged(kind)) return null;
  const known = judgedRow(kind);
  const end = endOf(said.place);
  const key = known.specs[end] ?? known.specs.any;
  const use = said.detail?.load ?? rig.trips.find(({ from, to }) => from <= said.on && said.on <= to)?.use ?? rig.use;
  const own = key === undefined ? null : figureOf(rig, key, use);
  const force = key !== undefined && SPEC_KEYS[key].atForce === true && own !== null ? forceIn(own.typed) : null;
  const stand = key !== undefined && SPEC_KEYS[key].stands === true && own !== null ? standIn(own.typed) : null;
  // A figure that names its stand holds on that alone.
  const under = own === null ? null : underIn(own.typed);
  const row: JudgedRow = stand !== null ? { ...known, needs: [[stand]] } : under?.engine === "warm" ? { ...known, needs: known.needs.map(warmForCold) } : known;
  const { taken, otherForce } = pressedAs(asAlways(said, row, rig), force);
  const fits = isFitted(row.fits, rig.bike.equipment) && (key === undefined || isFitted(SPEC_KEYS[key].fits ?? {}, rig.bike.equipment));
  const found: Found = !fits ? { judgement: cannotTell("fitted") } : otherForce ? { judgement: cannotTell("other force") } : byKind(taken, kind, row, own, rig);
  const unsaid = missingCondition(taken, row, found.judgement, stand);
  const judgement = unsaid ?? found.judgement;
  const item = row.items[end] ?? row.items.any ?? null;
  const { id, place, on, value, unit, typed } = taken;
  return {
    ...{ id, kind, place, on, value, unit, typed, judgement },
    ...{ spec: key ?? null, use: key !== undefined && SPEC_KEYS[key].byUse === true && use !== "solo" ? use : null, lesser: own?.lesser ?? null },
    item: item as ItemKey | null,
    doNotRide: isGrave(value, row, judgement),
    caution: row.caution === "battery" && (rig.otherBattery ?? chemistryOf(rig)) === "lithium" ? "lithium battery" : row.caution,
    by: own !== null ? "spec" : kind === "tread" ? treadBy(rig) : row.usual?.min === LOW_MARK ? "mark" : "practice",
    add: null,
    share: null,
    miscounted: false,
    freezes: null,
    air: null,
    airKept: null,
    rpmKept: kind === "charging voltage" && said.detail?.rpm === undefined ? (taken.detail?.rpm ?? null) : null,
    alarm: null,
    indoors: null,
    ifSo: unsaid !== null && callsForWork(found.judgement) ? { judgement: found.judgement, doNotRide: isGrave(value, row, found.judgement) } : null,
    points: taken.detail?.points ?? [],
    force: force?.typed ?? null,
    stand,
    ...found.more,
  };
}

/** A clearance that its manual gives for a warm engine is measured warm. */
const warmForCold = (group: JudgedRow["needs"][number]): JudgedRow["needs"][number] => (group.includes("cold") ? ["warm"] : group);

/** Pressed with the force that the manual's figure names, whatever unit it was said in, it was pressed as named. */
function pressedAs(taken: Taken, named: ReturnType<typeof forceIn>): { readonly taken: Taken; readonly otherForce: boolean } {
  const { detail } = taken;
  const pressed = detail?.force === undefined || named === null ? null : forceIn(detail.force);
  if (detail === null || pressed === null || named === null) return { taken, otherForce: false };
  if (!sameForce(pressed.newtons, named.newtons)) return { taken, otherForce: true };
  return { taken: { ...taken, detail: { ...detail, conditions: [...(detail.conditions ?? []), "at force"] } }, otherForce: false };
}

/** Is the bike not to be ridden on it? */
function isGrave(value: number, row: JudgedRow, judgement: Judgement): boolean {
  if (!row.doNotRide || judgement.is === "cannot tell") return false;
  if (row.wears && callsForWork(judgement)) return true;
  if (judgement.is !== "beyond limit" || judgement.side === null) return false;
  if (row.grave === null) return true;
  const from = row.grave[judgement.side];
  if (from === undefined) return false;
  const { past, share, at } = from;
  if (past === undefined && share === undefined && at === undefined) return true;
  const end = judgement.side === "low" ? judgement.limit.min : judgement.limit.max;
  const reaches = (figure: number): boolean => (judgement.side === "low" ? value <= figure : value >= figure);
  return (
    (past !== undefined && -(judgement.room ?? 0) >= past) || (share !== undefined && end !== null && reaches(end * share)) || (at !== undefined && reaches(at))
  );
}

/** Is it so whichever way it was taken: nothing left at all, hanging down, or as good as tight with nobody on it? */
function isAnyway({ value, detail }: Pick<Taken, "value" | "detail">, row: JudgedRow, judgement: Judgement): boolean {
  if (!isGrave(value, row, judgement) || judgement.is === "cannot tell" || judgement.side === null) return false;
  const from = row.grave?.[judgement.side];
  const isTight = from?.at !== undefined && judgement.side === "low" && value <= from.at && detail?.conditions?.includes("under load") !== true;
  const hangs = from?.past !== undefined && -(judgement.room ?? 0) >= from.past;
  return value === 0 || isTight || hangs;
}

/** How it was taken, said once, holds for later readings of its kind on the bike. That a battery had rested is said of each. */
function asAlways(taken: Taken, row: JudgedRow, { ways }: Rig): Taken {
  const { detail } = taken;
  const known = ways.get(taken.kind);
  const kept = detail?.kept === undefined ? known : { ...known, conditions: detail.kept };
  if (kept === undefined) return taken;
  // Said to stand otherwise this time, it did.
  const stood = STANDS.some((each) => detail?.conditions?.includes(each) === true);
  // Of several that would do, the one said last.
  const unsaid: readonly ConditionRead[] = row.needs
    .filter((group) => !group.some((each) => detail?.conditions?.includes(each) === true))
    .flatMap((group) => kept.conditions?.find((each) => (group as readonly ConditionRead[]).includes(each)) ?? []);
  const always =
    kept.conditions?.filter(
      (each) =>
        each !== "rested" &&
        !(stood && STANDS.some((stand) => stand === each)) &&
        !(each === "at force" && detail?.force !== undefined) &&
        unsaid.includes(each),
    ) ?? [];
  const rpm = detail?.rpm ?? kept.rpm;
  return { ...taken, detail: { ...detail, conditions: [...(detail?.conditions ?? []), ...always], ...(rpm === undefined ? {} : { rpm }) } };
}

/** A value within proves nothing until it is known how it was taken; one beyond its limit is told either way, but for what reads wrong whichever way it is taken. Said to be taken the wrong way it proves nothing at all. */
function missingCondition(taken: Taken, row: JudgedRow, judgement: Judgement, stand: Stand | null): Judgement | null {
  if (judgement.is === "cannot tell") return null;
  const { detail } = taken;
  const said = detail?.conditions ?? [];
  const spoiled = row.needs.flatMap((group) => {
    const first = group.at(-1);
    const rule = first === undefined ? undefined : SPOILED_BY[first];
    return rule !== undefined && said.some((each) => rule.by.includes(each)) ? [rule.instead] : [];
  });
  const instead = stand !== null ? (standsOtherwise(stand, said) ? "other stand" : undefined) : spoiled[0];
  const either = isAnyway(taken, row, judgement);
  if (instead !== undefined && !either) return cannotTell(instead);
  if (callsForWork(judgement) && (!row.strict || either)) return null;
  const missing = row.needs.filter((group) => !group.some((each) => detail?.conditions?.includes(each) === true));
  return missing.length === 0 ? null : cannotTell(...missing.flat().map((need): Missing => (need === "warm" ? "temperature" : need)));
}

/** °C of the air by the day on which it was noted. @param before what was noted until then */
export function airOf(
  measured: readonly { readonly kind: ReadingKind; readonly on: LocalDate; readonly value: number | null; readonly message?: string | null }[],
  before: Rig["air"] = new Map(),
): Rig["air"] {
  const air = new Map(before);
  for (const { kind, on, value, message = null } of measured)
    if (kind === "ambient temperature" && value !== null) air.set(on, [...(air.get(on) ?? []), { celsius: value, message }]);
  return air;
}

/** What stands of each kind at each place: of a day's readings the one left after adjusting, else the gravest of a pair, else the last. */
export function judgeAll(measured: readonly Taken[], rig: Rig): readonly Judged[] {
  const places = new Map<string, Taken[]>();
  for (const taken of measured) {
    if (!isJudged(taken.kind)) continue;
    const key = `${SAME_AS[taken.kind] ?? taken.kind}|${taken.place ?? ""}`;
    places.set(key, [...(places.get(key) ?? []), taken]);
  }
  return [...places.values()].flatMap((all) => {
    const day = all.reduce((latest, { on }) => (on > latest ? on : latest), all[0]?.on ?? ("" as Taken["on"]));
    const those = all.filter(({ on }) => on === day).sort(inOneDay);
    const left = those.filter(({ detail }) => detail?.state !== "found");
    const standing = left.length > 0 ? left : those;
    const last = standing.at(-1);
    if (last === undefined) return [];
    const judged = besideLast(standing, last).flatMap((taken) => judgeTaken(taken, rig) ?? []);
    return judged.length === 0 ? [] : [judged.reduce(moreWorn)];
  });
}

/** Of two readings of one part the graver, and of two as grave the one with less left. */
const moreWorn = (a: Judged, b: Judged): Judged =>
  a.judgement.is === b.judgement.is ? (b.value < a.value ? b : a) : graver(a.judgement, b.judgement) === a.judgement ? a : b;

/** Of what now cannot be told, the last judgement before it that could: it stands until another one can. @param taken every reading of those kinds */
export function lastTold(judged: readonly Judged[], taken: readonly Taken[], rig: Rig): readonly Judged[] {
  return judged.flatMap((now): readonly Judged[] => {
    if (now.judgement.is !== "cannot tell") return [];
    const same = taken.filter(({ id, kind, place, on }) => kind === now.kind && place === now.place && on <= now.on && id !== now.id);
    // The latest first: mostly it tells, and years of readings before it need no judging.
    for (const each of same.sort((a, b) => (a.on < b.on ? 1 : a.on > b.on ? -1 : inOneDay(b, a)))) {
      const told = each.detail?.state === "found" ? null : judgeTaken(each, rig);
      if (told !== null && told.judgement.is !== "cannot tell") return [told];
    }
    return [];
  });
}

/** Of what wears, all that was measured of one part on its day stands, and the least of it tells; anything else read twice is read better the second time, but for what was said in one breath. @param standing in order */
export function besideLast(standing: readonly Taken[], last: Taken): readonly Taken[] {
  const grows = isJudged(last.kind) ? judgedRow(last.kind).grows : null;
  // "Left intake 0.05, right intake 0.13": of what was said in one breath of one place each stands, and the graver tells.
  if (grows === null)
    return standing.filter(
      (taken) =>
        taken === last ||
        (taken.loggedAt === last.loggedAt && taken.ordinal < last.ordinal && taken.on === last.on && taken.detail?.state === last.detail?.state),
    );
  let beside: Taken[] = [];
  for (const taken of standing) {
    const before = beside.at(-1);
    // Said in one breath, or no more than was there: of the same part. More than that is of a new one, or the figure before was misread.
    const isOne = before !== undefined && before.loggedAt === taken.loggedAt && before.ordinal < taken.ordinal && before.detail?.state === taken.detail?.state;
    const least = Math.min(...beside.map(({ value }) => value));
    const isLeftAnew = taken.detail?.state === "left" && before?.detail?.state !== "left";
    beside = isOne || (!isLeftAnew && taken.value - least <= grows && !isWithPlate(taken)) ? [...beside, taken] : [taken];
  }
  return beside.filter((each) => !isWithPlate(each) || each === last);
}

/** The judgements as the schedule takes them. */
export const verdictsOf = (judged: readonly Judged[]): readonly Verdict[] =>
  judged.flatMap(({ item, on, judgement, id, kind, place, value: read, unit, typed, indoors: garage, by }) => {
    const value = garage?.onRoad ?? read;
    if (item === null) return [];
    const told = judgement.is === "cannot tell" ? null : judgement;
    const limit = told === null || told.side === null ? null : told.side === "low" ? told.limit.min : told.limit.max;
    return [
      {
        item,
        on,
        is: judgement.is,
        reading: id,
        measured: { kind, place, value, unit, typed, limit, side: told?.side ?? null, bySpec: by === "spec" },
        ...(judgement.is === "near limit" ? { again: soonAgain(kind) } : {}),
      },
    ];
  });

/** Pads of one axle read together that differ by too much, and by how much. */
export function unevenPads(judged: readonly Judged[]): readonly {
  readonly end: "front" | "rear";
  readonly by: number;
  readonly unit: Judged["unit"];
  readonly typed: string;
}[] {
  return (["front", "rear"] as const).flatMap((end) => {
    const pads = judged.filter(({ kind, place }) => kind === "pad thickness" && endOf(place) === end);
    const values = pads.flatMap(({ value, points }) => [value, ...points]);
    const by = Math.max(...values) - Math.min(...values);
    return pads[0] !== undefined && by >= UNEVEN_PADS - 1e-9 ? [{ end, by, unit: pads[0].unit, typed: pads.map(({ typed }) => typed).join(" ") }] : [];
  });
}

/** A chain read at its tightest and at its slackest spot that differs by too much between them, and by how much. */
export const unevenChains = (judged: readonly Judged[]): readonly (Pick<Judged, "unit" | "typed"> & { readonly by: number })[] =>
  judged.flatMap(({ kind, points, unit, typed }) => {
    const by = kind === "chain slack" && points.length > 1 ? Math.max(...points) - Math.min(...points) : 0;
    return by >= UNEVEN_SLACK - 1e-9 ? [{ by, unit, typed }] : [];
  });

const ENDS_NEW = ["front-tyre.replace", "rear-tyre.replace"];

/** On how many ends of a bike a new tyre was put. */
export const endsNew = (items: readonly { readonly item: string; readonly outcome: Outcome }[]): number =>
  new Set(items.filter(({ item, outcome }) => !isLeft(outcome) && ENDS_NEW.includes(item)).map(({ item }) => item)).size;
