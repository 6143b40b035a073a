// Plans as files of our own format, version 1: JSON, checked against one schema that is also published beside this file. A standard item says only what differs from the catalogue.

import { z } from "zod";
import { EQUIPMENT, type EquipmentPart } from "../core/equipment.ts";
import type { ItemKey } from "../core/ids.ts";
import { ACTIONS, CONDITIONS, type Columns, type PlanBase, type PlanItem, SYSTEMS } from "../core/plan/plan.ts";
import { isTornApart } from "../core/plan/two-units.ts";
import type { Refusal } from "../core/refusal.ts";
import { planItem, STANDARD_ITEMS, type StandardItemKey } from "../trade/standard-items.ts";
import { done, type Result, refused } from "./refusals.ts";

export const PLAN_FORMAT = "tappet-plan";
export const PLAN_VERSION = 1;

const NO_LEG = "no leg";
const whole = z.number().int().positive().max(1_000_000).nullable();
/** The refusal's reason and both figures, for the one place that tells of them. */
const TORN = "two distances";
const oneDistance = {
  error: ({ input }: { readonly input?: unknown }): string => {
    const { miles, km } = input as Columns;
    return `${TORN}:${miles}/${km}`;
  },
};
const columns = z.strictObject({ miles: whole, km: whole }).refine((each) => !isTornApart(each), oneDistance);
const interval = z
  .strictObject({ miles: whole, km: whole, months: whole, hours: whole })
  .refine((legs) => Object.values(legs).some((leg) => leg !== null), { message: NO_LEG })
  .refine((legs) => !isTornApart(legs), oneDistance);
const key = z.string().regex(/^[a-z][\w.-]{1,80}$/u);
const repeat = z.discriminatedUnion("by", [
  z.strictObject({ by: z.literal("interval"), every: interval }),
  z.strictObject({ by: z.literal("nth mark"), nth: z.number().int().min(2).max(20), base: columns, months: whole }),
  z.strictObject({ by: z.literal("nth time"), nth: z.number().int().min(2).max(20), of: key, months: whole }),
  z.strictObject({
    ...{ by: z.literal("mark list"), at: z.array(columns).min(1).max(60), thenEvery: interval.nullable() },
    thenFrom: z.enum(["zero", "last mark"]),
  }),
]);
const fits = z.strictObject(
  Object.fromEntries(
    (Object.keys(EQUIPMENT) as EquipmentPart[]).map((part) => [part, z.array(z.enum(EQUIPMENT[part] as readonly [string, ...string[]])).optional()]),
  ),
);
const trigger = {
  anchor: z.enum(["marks", "last done"]).optional(),
  first: interval.nullable().optional(),
  repeat: repeat.optional(),
  shortened: z.partialRecord(z.enum(CONDITIONS), interval).optional(),
};
const standard = z.strictObject({ item: z.enum(Object.keys(STANDARD_ITEMS) as [StandardItemKey, ...StandardItemKey[]]), ...trigger });
const own = z.strictObject({
  ...{ item: z.string().regex(/^own\.[\w-]{1,60}$/u), called: z.string().trim().min(1).max(60), system: z.enum(SYSTEMS), action: z.enum(ACTIONS) },
  ...{ ...trigger, anchor: z.enum(["marks", "last done"]), repeat, parked: z.enum(["counts", "pauses"]).optional(), fits: fits.optional() },
  minutes: z.number().int().positive().max(6000).nullable().optional(),
});

export const planFile = z
  .strictObject({
    ...{ format: z.literal(PLAN_FORMAT), version: z.literal(PLAN_VERSION), name: z.string().trim().min(1).max(120), source: z.string().trim().min(1).max(200) },
    items: z
      .array(z.union([own, standard]))
      .min(1)
      .max(200),
  })
  .meta({ title: PLAN_FORMAT });

/** The schema that is published beside this file. */
export const planSchema = (): unknown => z.toJSONSchema(planFile, { io: "input" });

/** A plan as a file's text: one item a line, so that a fault can be found by its line. */
export function planText(base: PlanBase): string {
  const items = base.items.map((item) => `    ${JSON.stringify(itemFor(item))}`).join(",\n");
  const head = `  "format": "${PLAN_FORMAT}",\n  "version": ${PLAN_VERSION},\n  "name": ${JSON.stringify(base.name)},\n  "source": ${JSON.stringify(base.source)},`;
  return `{\n${head}\n  "items": [\n${items}\n  ]\n}\n`;
}

function itemFor(item: PlanItem): unknown {
  const { key: name, anchor, first, repeat: comes, shortened } = item;
  if (item.called !== null)
    return {
      item: name,
      called: item.called,
      system: item.system,
      action: item.action,
      anchor,
      repeat: comes,
      first,
      shortened,
      parked: item.parked,
      fits: item.fits,
      minutes: item.minutes,
    };
  const usual = planItem(name as string as StandardItemKey, null);
  const differs = Object.entries({ anchor, first, repeat: comes, shortened }).filter(
    ([field, value]) => JSON.stringify(value) !== JSON.stringify(usual[field as "anchor" | "first" | "repeat" | "shortened"]),
  );
  return { item: name, ...Object.fromEntries(differs) };
}

const MOST = 100_000;

/** Reads a file. A bad one is refused with the line and the reason. */
export function readPlanFile(text: string): Result<PlanBase> {
  if (text.length > MOST) return refused({ why: "too long", limit: MOST });
  let json: unknown;
  try {
    json = JSON.parse(text);
  } catch (error) {
    return refused({ why: "bad plan file", line: lineOfFault(text, String(error)), at: "", because: "not JSON", detail: "" });
  }
  const read = planFile.safeParse(json);
  if (!read.success) {
    const [issue] = read.error.issues;
    const { path, ...fault } = faultInItem(json, issue) ?? deepest(issue);
    return refused({ why: "bad plan file", line: lineOfPath(text, path), at: path.join("."), ...fault });
  }
  const keys = read.data.items.map(({ item }) => item);
  const twice = keys.findIndex((each, n) => keys.indexOf(each) !== n);
  if (twice >= 0)
    return refused({ why: "bad plan file", line: lineOfPath(text, ["items", twice]), at: `items.${twice}`, because: "twice", detail: keys[twice] ?? "" });
  return done({ name: read.data.name, source: read.data.source, items: read.data.items.map(itemOfFile) });
}

type FileItem = z.infer<typeof planFile>["items"][number];

function itemOfFile(from: FileItem): PlanItem {
  const { anchor, first, repeat: comes, shortened } = from as Partial<Pick<PlanItem, "anchor" | "first" | "repeat" | "shortened">>;
  const given = Object.fromEntries(Object.entries({ anchor, first, repeat: comes, shortened }).filter(([, value]) => value !== undefined));
  if (!("called" in from)) return { ...planItem(from.item, null), ...given };
  return {
    ...{ key: from.item as ItemKey, called: from.called, system: from.system, action: from.action, anchor: from.anchor, first: null },
    ...{ repeat: from.repeat as PlanItem["repeat"], parked: from.parked ?? "counts", noLateWindow: false, shortened: {}, measuredBy: null, covers: [] },
    ...{ fits: (from.fits ?? {}) as PlanItem["fits"], engine: "any", position: "any", minutes: from.minutes ?? null, caution: null, firstOnUsedBike: null },
    ...{ source: "a plan file", ...given },
  };
}

type Issue = z.core.$ZodIssue | undefined;

/** What an item calls itself says which of the two shapes it was to have. */
function faultInItem(json: unknown, issue: Issue): (Fault & { readonly path: readonly PropertyKey[] }) | null {
  const [field, n] = issue?.path ?? [];
  const items = (json as { readonly items?: unknown } | null)?.items;
  if (field !== "items" || typeof n !== "number" || !Array.isArray(items)) return null;
  const item: unknown = items[n];
  const name = (item as { readonly item?: unknown } | null)?.item;
  if (typeof name !== "string") return null;
  const read = (/^own\./u.test(name) ? own : standard).safeParse(item);
  if (read.success) return null;
  const { path, ...fault } = deepest(read.error.issues[0]);
  return { ...fault, path: ["items", n, ...path] };
}

/** In a choice of shapes the fault that got furthest is the one meant. */
function deepest(issue: Issue): Fault & { readonly path: readonly PropertyKey[] } {
  if (issue === undefined) return { path: [], because: "format", detail: "" };
  if (issue.code !== "invalid_union" || issue.errors.length === 0) return { path: issue.path, ...faultOf(issue) };
  // The shape with the fewest faults is the one that was meant.
  const [meant = []] = [...issue.errors].sort((a, b) => a.length - b.length);
  const inner = meant.map((each) => deepest(each)).sort((a, b) => b.path.length - a.path.length)[0];
  return { ...(inner ?? faultOf(issue)), path: [...issue.path, ...(inner?.path ?? [])] };
}

/** What is the matter, and what it is about: a type, the choices, a field, a bound. */
function faultOf(issue: z.core.$ZodIssue): Fault {
  switch (issue.code) {
    case "invalid_type":
      return { because: "type", detail: issue.expected };
    case "invalid_value":
      return { because: "choice", detail: issue.values.length > MOST_NAMED ? "" : issue.values.map((each) => JSON.stringify(each)).join(", ") };
    case "unrecognized_keys":
      return { because: "field", detail: issue.keys.map((each) => JSON.stringify(each)).join(", ") };
    case "too_big":
      return { because: "too much", detail: String(issue.maximum) };
    case "too_small":
      if (issue.origin === "string" || issue.origin === "array") return { because: "empty", detail: "" };
      return { because: "too little", detail: `${issue.inclusive === false ? "> " : ""}${issue.minimum}` };
    case "custom":
      if (issue.message.startsWith(TORN)) return { because: TORN, detail: issue.message.slice(TORN.length + 1) };
      return { because: issue.message === NO_LEG ? NO_LEG : "format", detail: "" };
    default:
      return { because: "format", detail: "" };
  }
}
type Fault = Pick<Extract<Refusal, { why: "bad plan file" }>, "because" | "detail">;
/** More than a line holds are not listed. */
const MOST_NAMED = 12;

/** The line where JSON stops making sense: the runtime names the place, one way or another. */
function lineOfFault(text: string, message: string): number {
  const named = /line (\d+)/u.exec(message)?.[1];
  const at = /position (\d+)/u.exec(message)?.[1];
  return named !== undefined ? Number(named) : at !== undefined ? text.slice(0, Number(at)).split("\n").length : text.trimEnd().split("\n").length;
}

/** The line on which the nth item, or a field of the head, stands. */
function lineOfPath(text: string, path: readonly PropertyKey[]): number {
  const [field, n] = path;
  const start = text.indexOf(`"${String(field ?? "format")}"`);
  if (start < 0) return 1;
  let at = start;
  if (field === "items" && typeof n === "number")
    for (let seen = -1; seen < n; seen++) {
      const next = text.indexOf('"item"', at + 1);
      if (next < 0) break;
      at = next;
    }
  return text.slice(0, at).split("\n").length;
}
