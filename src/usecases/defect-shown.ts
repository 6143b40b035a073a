// A defect with what an answer needs of its bike and of the trade.

import type { Defect } from "../core/defect.ts";
import type { DistanceUnit } from "../core/quantity/distance.ts";
import { defectRow } from "../trade/defects.ts";
import type { Garaged } from "./garage.ts";

/** A defect as an answer shows it. */
export type DefectShown = Defect & { readonly nickname: string; readonly unit: DistanceUnit; readonly caution: string | null };

export const defectShown = (g: Pick<Garaged, "bike" | "unit">, defect: Defect): DefectShown => ({
  ...defect,
  nickname: g.bike.nickname,
  unit: g.unit,
  caution: defectRow(defect.kind)?.caution ?? null,
});
