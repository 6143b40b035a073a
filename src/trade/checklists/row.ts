// The shape of a point's row, with what most points share left out; and the schema that every list is held against when it is loaded.

import { z } from "zod";
import { CHECKLISTS, type Checklist, FAULT_GRADES, type Measure, type Point, VITAL } from "../../core/check/checklist.ts";
import { EQUIPMENT, type EquipmentPart } from "../../core/equipment.ts";
import type { ItemKey } from "../../core/ids.ts";
import { READING_KINDS } from "../../core/reading/kinds.ts";
import { OUTCOMES } from "../../core/schedule/facts.ts";
import { CAUTIONS, type CautionKey } from "../cautions.ts";
import { STANDARD_ITEMS, type StandardItemKey } from "../standard-items.ts";

export type PointRow = {
  readonly fits?: Point["fits"];
  readonly engine?: "cold" | "warm";
  readonly heat?: "runs" | "cools";
  readonly position?: "upright" | "side stand" | "weight off";
  readonly vital?: Point["vital"];
  readonly measures?: readonly Measure[];
  readonly onFail: Point["onFail"];
  readonly caution?: CautionKey;
  /** Items that are inspected by looking, or done as the outcome says. */
  readonly records?: Readonly<Partial<Record<StandardItemKey, Point["records"][number]["outcome"]>>>;
  readonly stoodDays?: number;
  readonly frost?: true;
  readonly planHas?: StandardItemKey;
  readonly undoes?: string;
  readonly source?: string;
};

/** Where no published source is named. */
export const CHECK_PRACTICE = "common practice; confirm with the maker's manual";

const key = z.string().regex(/^[a-z][a-z-]*$/u);
const keyOf = (rows: object) => z.string().refine((name) => Object.hasOwn(rows, name));
const fits = z
  .partialRecord(z.enum(Object.keys(EQUIPMENT) as [EquipmentPart, ...EquipmentPart[]]), z.array(z.string()).min(1))
  .refine((rule) =>
    Object.entries(rule).every(([part, choices]) => choices?.every((choice) => (EQUIPMENT[part as EquipmentPart] as readonly string[]).includes(choice))),
  );
const measure = z.strictObject({ kind: keyOf(READING_KINDS), place: z.string().nullable(), optional: z.literal(true).optional() }).refine(({ kind, place }) => {
  const places: readonly string[] = READING_KINDS[kind as keyof typeof READING_KINDS].places;
  return place === null ? places.length === 0 : places.includes(place);
});
const pointShape = z
  .strictObject({
    fits,
    engine: z.enum(["cold", "warm", "any"]),
    heat: z.enum(["runs", "cools"]).nullable(),
    position: z.enum(["upright", "side stand", "weight off", "any"]),
    vital: z.enum(VITAL).nullable(),
    measures: z.array(measure).max(5),
    onFail: z.enum(FAULT_GRADES),
    caution: keyOf(CAUTIONS).nullable(),
    records: z.array(z.object({ item: keyOf(STANDARD_ITEMS), outcome: z.enum(OUTCOMES) })),
    stoodDays: z.number().int().positive().nullable(),
    frost: z.boolean(),
    planHas: keyOf(STANDARD_ITEMS).nullable(),
    undoes: key.nullable(),
    source: z.string().min(5),
  })
  .refine(({ vital, onFail }) => vital === null || onFail === "do not ride");

/** Points whole, each held against the schema. @throws ZodError on a slip in the data */
export function pointsOf<K extends string>(rows: Readonly<Record<K, PointRow>>): Readonly<Record<K, Point>> {
  const whole = Object.entries<PointRow>(rows).map(([name, row]): [string, Point] => {
    key.parse(name);
    const { records, planHas, ...rest } = row;
    const point: Point = {
      ...{ fits: {}, engine: "any", heat: null, position: "any", vital: null, measures: [], caution: null, stoodDays: null, frost: false, undoes: null },
      source: CHECK_PRACTICE,
      ...rest,
      records: Object.entries(records ?? {}).map(([item, outcome]) => ({ item: item as ItemKey, outcome })),
      planHas: (planHas ?? null) as ItemKey | null,
    };
    pointShape.parse(point);
    return [name, point];
  });
  return Object.fromEntries(whole) as Readonly<Record<K, Point>>;
}

/** A list, held against the points there are. @throws ZodError on a slip in the data */
export function checklistOf(list: Checklist, points: Readonly<Record<string, Point>>): Checklist {
  const known = keyOf(points);
  const shape = z
    .strictObject({
      name: z.enum(CHECKLISTS),
      sections: z.array(z.strictObject({ key: z.string().min(3), points: z.array(known).min(1).max(12) })).min(1),
      source: z.string().min(5),
    })
    .refine(({ sections }) => {
      const all = sections.flatMap((section) => section.points);
      return new Set(all).size === all.length && new Set(sections.map((section) => section.key)).size === sections.length;
    });
  shape.parse(list);
  return list;
}
