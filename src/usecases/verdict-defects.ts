// What must not be ridden on by a measured value is noted as a defect, once, and closed by the work that mends it; what is set by adjusting, by the next reading that is right.

import type { Defect } from "../core/defect.ts";
import { callsForWork } from "../core/judgement/verdict.ts";
import { mends as canMend } from "../core/schedule/mending.ts";
import { foldWord } from "../message/scan.ts";
import type { ReadingRecord } from "../store/readings.ts";
import type { Repos } from "../store/store.ts";
import type { WorkRecord } from "../store/work.ts";
import { type DefectKind, defectRow } from "../trade/defects.ts";
import { endOf, judgedRow } from "../trade/judged.ts";
import { type Ctx, todayOf } from "./context.ts";
import type { FluidPut } from "./fluids.ts";
import { type Garaged, itemOf, pick } from "./garage.ts";
import type { JudgedOn } from "./judged.ts";
import { isOfOld } from "./of-old.ts";
import { defectRecord } from "./records.ts";
import { closedByWork, revised } from "./revise-defects.ts";

/**
 * Notes and closes inside the transaction that logged them, which touches the bikes. `staying`: open ones that what was read now says nothing of.
 * @param first where to go on counting the records of the source
 */
export async function noteVerdicts(
  q: Repos,
  ctx: Ctx,
  all: readonly Garaged[],
  logged: { readonly judged: readonly JudgedOn[]; readonly readings: readonly ReadingRecord[]; readonly work: readonly WorkRecord[] },
  source: string,
  first: number,
): Promise<{ readonly noted: readonly Defect[]; readonly closed: readonly Defect[]; readonly staying: readonly Defect[] }> {
  const closed: Defect[] = [];
  const staying: Defect[] = [];
  for (const work of logged.work) {
    const changed = changedIn(all, work);
    // Work of before it was found mends nothing of it.
    const g = pick(all, work.bike);
    const isClosed = (defect: Defect): boolean =>
      defect.from === "verdict"
        ? mends(defect, changed) && !isBledOnly(defect, work)
        : defect.message !== source && g !== null && isOfOld(ctx, g, defect, work);
    const open = g?.defects.filter((defect) => defect.on <= work.on.to && isClosed(defect)) ?? [];
    closed.push(
      ...(await closedByWork(
        q,
        ctx,
        open.filter(({ id }) => !closed.some((each) => each.id === id)),
        work.id,
      )),
    );
  }
  for (const judged of logged.judged) {
    if (!judgedRow(judged.kind).setRight) continue;
    // What is off on one side is right no more, but nobody says of it now that it is off on the other.
    const over = callsForWork(judged.judgement) || judged.doNotRide ? otherSide(judged) : defectsOf(judged);
    const typed = logged.readings.find(({ id }) => id === judged.id)?.typed ?? "";
    // "Rear tyre soft" was said, and a figure that is right closes it as it does a figure that was not.
    const open = pick(all, judged.bike)?.defects.filter(({ kind, on }) => over.some((each) => each === kind) && on <= judged.on) ?? [];
    // What cannot be told takes back nothing of what was found before it.
    for (const defect of open.filter(({ id }) => !closed.some((each) => each.id === id)))
      if (isUntold(judged)) staying.push(defect);
      else closed.push(await revised(q, ctx, defect, { state: "closed", closedBecause: wordsOf(judged, typed), why: "read anew" }));
  }
  const noted: Defect[] = [];
  for (const judged of logged.judged.filter(({ doNotRide }) => doNotRide)) {
    const { bike, on } = judged;
    const kind = defectOf(judged);
    const g = pick(all, bike);
    // What its owner chose to watch was not as bad as this.
    const isWatched = ({ grade }: Defect): boolean => grade === "watch" && g !== null && isWorse(judged, g);
    const isSame = (defect: Defect): boolean => defect.kind === kind || isSaidFlat(ctx, judged, defect);
    const standing = g?.defects.some((defect) => isSame(defect) && !closed.some(({ id }) => id === defect.id) && !isWatched(defect)) === true;
    // What was left after work is how it is now.
    const left = logged.readings.find(({ id }) => id === judged.id)?.detail?.state === "left";
    const mended = !left && logged.work.some((work) => work.bike === bike && work.on.from === on && mends({ kind }, changedIn(all, work)));
    if (kind === null || standing || mended || noted.some((each) => each.bike === bike && each.kind === kind)) continue;
    const typed = logged.readings.find(({ id }) => id === judged.id)?.typed ?? "";
    const words = wordsOf(judged, typed);
    noted.push(defectRecord(ctx, { bike, kind, words, grade: "do not ride", on, dial: null, from: "verdict" }, source, first + noted.length));
  }
  if (noted.length > 0) await q.defects.note(noted);
  return { noted, closed, staying };
}

const isUntold = ({ judgement }: JudgedOn): boolean => judgement.is === "cannot tell";

/** "Front tyre is flat, 0 psi" is one thing: a puncture that names no other end stands for its pressure too. */
function isSaidFlat(ctx: Ctx, { alarm, place }: JudgedOn, { kind, words }: Defect): boolean {
  if (alarm !== "flat" || kind !== "puncture") return false;
  const { places } = ctx.vocabulary;
  const said = words.split(/[^\p{L}]+/u).map(foldWord);
  const names = (end: "front" | "rear"): boolean => said.some((word) => places[end].includes(word));
  return place === null || names(endOf(place) === "rear" ? "rear" : "front") || !(names("front") || names("rear"));
}

/** Is a value further beyond its limit than the last that stood there before it? */
function isWorse({ kind, place, value, id, judgement }: JudgedOn, { judged }: Garaged): boolean {
  const before = judged.find((each) => each.kind === kind && each.place === place && each.id !== id);
  if (before === undefined || judgement.is === "cannot tell") return false;
  return judgement.side === "high" ? value > before.value : value < before.value;
}

const wordsOf = ({ place, kind }: Pick<JudgedOn, "kind" | "place">, typed: string): string =>
  [place, kind, typed].filter((part) => part !== null && part !== "").join(" ");

/** The kind of defect that a reading beyond its limit notes; null for what cannot hurt. */
export function defectOf({ kind, place, judgement }: Pick<JudgedOn, "kind" | "place" | "judgement">): DefectKind | null {
  const { defects } = judgedRow(kind);
  const side = judgement.is === "cannot tell" ? null : judgement.side;
  return defects[endOf(place)] ?? (side === null ? undefined : defects[side]) ?? defects.any ?? null;
}

/** Every kind of defect that readings of its kind and place note, on either side. */
function defectsOf({ kind, place }: Pick<JudgedOn, "kind" | "place">): readonly DefectKind[] {
  const { defects } = judgedRow(kind);
  const own = defects[endOf(place)] ?? defects.any;
  return own !== undefined ? [own] : [defects.low, defects.high].flatMap((each) => each ?? []);
}

/** What a reading that is off on one side speaks against: being off on the other, where that is a defect of its own. */
function otherSide(judged: JudgedOn): readonly DefectKind[] {
  const { defects } = judgedRow(judged.kind);
  return defects.low === undefined && defects.high === undefined ? [] : defectsOf(judged).filter((each) => each !== defectOf(judged));
}

/** What was put into the brakes or the clutch that must not meet what is in there, noted once each. @param first where to go on counting the records of the source */
export async function noteMixed(
  q: Repos,
  ctx: Ctx,
  all: readonly Garaged[],
  put: readonly FluidPut[],
  work: readonly WorkRecord[],
  source: string,
  first: number,
): Promise<readonly Defect[]> {
  const mixed = put.filter(({ worth }) => worth === null).map((each) => ({ ...each, kind: (each.seals === true ? ATTACKED : MIXED)[each.of] }));
  const fresh = mixed.filter(
    ({ bike, kind }, n) =>
      pick(all, bike)?.defects.some((defect) => defect.kind === kind) === false && mixed.findIndex((other) => other.bike === bike && other.kind === kind) === n,
  );
  const noted = fresh.map(({ bike, kind, inside, added, work: id }, n) => {
    const on = work.find((record) => record.id === id)?.on.from ?? todayOf(ctx);
    return defectRecord(ctx, { bike, kind, words: `${added} with ${inside}`, grade: "do not ride", on, dial: null, from: "verdict" }, source, first + n);
  });
  if (noted.length > 0) await q.defects.note(noted);
  return noted;
}

const ATTACKED = { brakes: "attacked brake seals", clutch: "attacked clutch seals" } as const satisfies Record<FluidPut["of"], DefectKind>;
const MIXED = { brakes: "mixed brake fluid", clutch: "mixed clutch fluid" } as const satisfies Record<FluidPut["of"], DefectKind>;

/** A mix goes with all of the fluid: bleeding alone leaves some of it in. */
const isBledOnly = ({ kind }: Defect, { detail }: WorkRecord): boolean => detail.bled === true && Object.values(MIXED).some((each) => each === kind);

/** The items of a job that may be right again by it. */
const changedIn = (all: readonly Garaged[], { bike, items }: WorkRecord): readonly string[] => {
  const g = pick(all, bike);
  return items.filter(({ item, outcome }) => canMend(outcome, (g === null ? null : itemOf(g, item))?.action ?? null)).map(({ item }) => item);
};

const mends = ({ kind }: Pick<Defect, "kind">, items: readonly string[]): boolean => defectRow(kind)?.mends.some((item) => items.includes(item)) === true;
