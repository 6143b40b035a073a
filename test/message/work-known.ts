// The bikes and the day that the corpus of work and defects speaks of, and its shorthand.

import { localDate } from "../../src/core/calendar/arithmetic.ts";
import { isFitted } from "../../src/core/equipment.ts";
import type { BikeId } from "../../src/core/ids.ts";
import type { Intent } from "../../src/core/reading/intent.ts";
import type { Known, KnownBike, Vocabulary } from "../../src/core/reading/vocabulary.ts";
import { KINDS, type KindId } from "../../src/trade/kinds.ts";
import { STARTER_PLANS } from "../../src/trade/starter-plans.ts";
import { ENGLISH_VOCABULARY } from "../../src/words/en/vocabulary.ts";

const TODAY = localDate("2026-11-25");

function bike(nickname: string, kind: KindId, unit: "mi" | "km", lastFigure: number): KnownBike {
  const items = STARTER_PLANS[kind].items
    .filter((item) => isFitted(item.fits, KINDS[kind].equipment))
    .map(({ key, called, action, system }) => ({ key, called, action, system }));
  return { id: nickname as BikeId, nickname, unit, lastFigure, items };
}

export const HERON = bike("Heron", "chain-drive twin", "mi", 14_210);
export const THREE = [HERON, bike("Bramble", "dual-purpose single", "km", 8640), bike("Otter", "belt-drive cruiser", "mi", 20_450)];

export const knownWith = (bikes: readonly KnownBike[], vocabulary: Vocabulary = ENGLISH_VOCABULARY): Known => ({
  ...{ today: TODAY, south: false, bikes, numbers: { decimal: ".", group: "," }, pressureUnit: null, depthUnit: null, vocabulary },
});

/** An intent in the shorthand of the corpus. */
export function short(intent: Intent): string {
  const end = `@${intent.bike ?? "?"}${intent.gaps.map((gap) => ` ?${gap.need}`).join("")}`;
  if (intent.do === "log reading")
    return `${intent.kind === "odometer" ? "" : `${intent.kind} ${intent.place ?? ""} `}${Number(intent.value.toFixed(6))}${intent.unit ?? "?"}${intent.detail?.state === undefined ? "" : ` ${intent.detail.state}`}${end}`;
  const at = intent.odometer === null ? "" : ` at ${intent.odometer.value}`;
  if (intent.do === "note defect")
    return `D ${intent.kind ?? "?"} “${intent.words}”${at}@${intent.bike ?? "?"}${intent.on === TODAY ? "" : ` on ${intent.on}`}${intent.gaps.map((gap) => ` ?${gap.need}`).join("")}`;
  const { detail } = intent;
  const more = [
    ...(detail?.quantities.map(({ value, unit, of }) => `${value} ${unit}${of === null ? "" : ` ${of}`}`) ?? []),
    ...(detail?.parts.map(({ words, made }) => `part ${words}${made === null ? "" : ` ${made}`}`) ?? []),
    ...(detail?.cost === null || detail === undefined ? [] : [`cost ${detail.cost.minor}${detail.cost.currency ?? ""}`]),
    ...(detail?.by == null ? [] : [`by ${detail.by}`]),
  ];
  const on = intent.on.from === TODAY ? "" : ` on ${intent.on.from}`;
  return `W ${intent.items.join(",") || "?"}=${intent.outcome}${at}${on}${more.length === 0 ? "" : ` (${more.join("; ")})`}${end}`;
}
