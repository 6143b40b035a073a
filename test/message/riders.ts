// The bikes that the corpora speak of, and what the reader knows of them.

import { localDate } from "../../src/core/calendar/arithmetic.ts";
import { isFitted } from "../../src/core/equipment.ts";
import type { BikeId } from "../../src/core/ids.ts";
import type { Known, KnownBike } from "../../src/core/reading/vocabulary.ts";
import { KINDS, type KindId } from "../../src/trade/kinds.ts";
import { STARTER_PLANS } from "../../src/trade/starter-plans.ts";
import { GERMAN_VOCABULARY } from "../../src/words/de/vocabulary.ts";
import { ENGLISH_VOCABULARY } from "../../src/words/en/vocabulary.ts";

export const TODAY = localDate("2026-11-25");

export function bike(nickname: string, kind: KindId, unit: "mi" | "km", lastFigure: number): KnownBike {
  const items = STARTER_PLANS[kind].items
    .filter((item) => isFitted(item.fits, KINDS[kind].equipment))
    .map(({ key, called, action, system }) => ({ key, called, action, system }));
  return { id: nickname as BikeId, nickname, unit, lastFigure, items };
}

export const HERON = bike("Heron", "chain-drive twin", "mi", 14_210);
export const BRAMBLE = bike("Bramble", "dual-purpose single", "km", 8640);
export const OTTER = bike("Otter", "belt-drive cruiser", "mi", 20_450);

export const knownWith = (bikes: readonly KnownBike[]): Known => ({
  today: TODAY,
  south: false,
  bikes,
  numbers: { decimal: ".", group: "," },
  pressureUnit: null,
  depthUnit: null,
  vocabulary: ENGLISH_VOCABULARY,
  also: [{ vocabulary: GERMAN_VOCABULARY, numbers: { decimal: ",", group: "." } }],
});
