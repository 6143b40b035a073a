// A defect with what an answer needs of its bike and of the trade.

import type { Defect } from "../core/defect.ts";
import { type Equipment, type EquipmentPart, type EquipmentRule, isFitted } from "../core/equipment.ts";
import type { DistanceUnit } from "../core/quantity/distance.ts";
import { defectRow } from "../trade/defects.ts";
import type { Garaged } from "./garage.ts";

/** A defect as an answer shows it. */
export type DefectShown = Defect & {
  readonly nickname: string;
  readonly unit: DistanceUnit;
  readonly caution: string | null;
  /** What the bike would have to be fitted with to have it; left out where it is. */
  readonly lacks?: Lacks;
};
type Lacks = { readonly part: EquipmentPart; readonly is: string; readonly wants: string };

function lacksOf(kind: string | null, equipment: Equipment): Lacks | null {
  const fits: EquipmentRule = defectRow(kind)?.fits ?? {};
  const part = (Object.keys(fits) as EquipmentPart[]).find((each) => !isFitted({ [each]: fits[each] }, equipment));
  return part === undefined ? null : { part, is: equipment[part], wants: fits[part]?.[0] ?? "" };
}

export function defectShown(g: Pick<Garaged, "bike" | "unit">, defect: Defect): DefectShown {
  const lacks = lacksOf(defect.kind, g.bike.equipment);
  const caution = defectRow(defect.kind)?.caution ?? null;
  return { ...defect, nickname: g.bike.nickname, unit: g.unit, caution, ...(lacks === null ? {} : { lacks }) };
}
