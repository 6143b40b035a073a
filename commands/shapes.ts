// Shapes of the outcomes that several commands share, as scripts find them under `data`.

import { z } from "zod";
import { STANDS } from "../src/core/chain/stand.ts";
import { FOUND_BY, GRADES } from "../src/core/defect.ts";
import { EQUIPMENT, type EquipmentPart } from "../src/core/equipment.ts";
import { VERDICTS } from "../src/core/judgement/verdict.ts";
import { READING_KINDS, type ReadingKind } from "../src/core/reading/kinds.ts";
import { OUTCOMES, STATUSES } from "../src/core/schedule/facts.ts";
import { SPEC_USES } from "../src/core/spec/spec.ts";
import { AGE_WORDS } from "../src/core/tyre/age.ts";
import type { KindId } from "../src/trade/kinds.ts";
import { FLUID_NAMES, STRANGE_NAMES } from "../src/usecases/fluids.ts";
import { LIMITS_BY } from "../src/usecases/judged.ts";
import { KIND_NAMES } from "../src/words/en/bikes.ts";
import { conversion } from "./shapes-tools.ts";

export const localDate = z.string().regex(/^\d{4}-\d{2}-\d{2}$/);
export const unit = z.enum(["mi", "km"]);
/** "front", "front left", "intake 2": one of the kind's places, null where there is one only. */
export const place = z.string().nullable();
export const kind = z.enum(Object.keys(READING_KINDS) as [ReadingKind, ...ReadingKind[]]);
export const vagueDate = z.object({ from: localDate, to: localDate, typed: z.string() });
const odometer = z.object({ figure: z.number(), on: localDate }).nullable();
export const equipment = z.object(Object.fromEntries((Object.keys(EQUIPMENT) as EquipmentPart[]).map((part) => [part, z.enum(EQUIPMENT[part])])));

/** Distances under `data` are whole tenths of a millimetre: a mile is 16,093,440 of them. */
export const distance = z.number().int();

export const reading = z.object({
  id: z.string(),
  rev: z.number().int(),
  bike: z.string(),
  kind,
  place,
  dial: distance.nullable(),
  value: z.number().nullable(),
  typed: z.string(),
  unit: z.string(),
  on: localDate,
  detail: z.looseObject({}).nullable(),
});
const values = z.array(z.object({ value: z.number(), unit: z.string(), place: z.string().nullable() }));
export const work = z.object({
  id: z.string(),
  rev: z.number().int(),
  bike: z.string(),
  items: z.array(z.object({ item: z.string(), called: z.string(), outcome: z.enum(OUTCOMES), found: values, left: values })),
  words: z.string(),
  on: vagueDate,
  dial: distance.nullable(),
  how: z.string(),
  doneBy: z.string(),
  note: z.string().nullable(),
  detail: z.object({
    quantities: z.array(z.object({ value: z.number(), unit: z.string(), of: z.string().nullable(), typed: z.string() })),
    parts: z.array(z.object({ words: z.string(), item: z.string().nullable(), made: z.string().nullable() })),
    cost: z.object({ minor: z.number().int(), currency: z.string().nullable(), typed: z.string() }).nullable(),
    by: z.string().nullable(),
  }),
});
/** Something found wrong with a bike, as it stands. */
export const defect = z.object({
  ...{ id: z.string(), rev: z.number().int(), state: z.enum(["open", "closed", "withdrawn"]), bike: z.string(), nickname: z.string() },
  ...{ kind: z.string().nullable(), words: z.string(), grade: z.enum(GRADES).nullable(), on: localDate, dial: distance.nullable() },
  ...{ from: z.enum(FOUND_BY), closedBy: z.string().nullable(), closedBecause: z.string().nullable(), caution: z.string().nullable() },
  lacks: z.object({ part: z.enum(Object.keys(EQUIPMENT) as [EquipmentPart, ...EquipmentPart[]]), is: z.string(), wants: z.string() }).optional(),
});
const named = z.object({ id: z.string(), nickname: z.string(), unit });
const learnt = z.object({ name: z.string(), nickname: z.string() });
const news = z.object({ bike: z.string(), nickname: z.string(), item: z.string(), called: z.string(), status: z.enum(STATUSES) });
export const judgement = z.object({
  is: z.enum(VERDICTS),
  side: z.enum(["low", "high"]).nullish(),
  room: z.number().nullish(),
  limit: z
    .object({
      ...{ min: z.number().nullable(), max: z.number().nullable(), near: z.number().nullable(), nominal: z.number().optional(), source: z.string() },
      unsettled: z.object({ upTo: z.number(), lacks: z.string() }).optional(),
    })
    .optional(),
  missing: z.array(z.string()).optional(),
});
const warmth = z.object({ value: z.number(), unit: z.string() });
export const judged = z.object({
  ...{
    id: z.string(),
    kind,
    place,
    on: localDate,
    value: z.number(),
    unit: z.string(),
    typed: z.string(),
    judgement,
    by: z.enum(LIMITS_BY),
    spec: z.string().nullable(),
    use: z.enum(SPEC_USES).nullable(),
    lesser: z.enum(SPEC_USES).nullable(),
    item: z.string().nullable(),
    doNotRide: z.boolean(),
  },
  ...{ caution: z.string().nullable(), add: z.number().nullable(), share: z.number().nullable(), miscounted: z.boolean(), freezes: z.number().nullable() },
  ...{ air: z.number().nullable(), airKept: z.number().nullable(), rpmKept: z.number().nullable() },
  indoors: z
    .object({ garage: warmth, road: warmth.nullable(), onRoad: z.number().nullable(), wanted: z.number().nullable(), set: z.number().nullable() })
    .nullable(),
  points: z.array(z.number()),
  ifSo: z.object({ judgement, doNotRide: z.boolean() }).nullable(),
  force: z.string().nullable(),
  stand: z.enum(STANDS).nullable(),
});
/** What is left of a part that wears. */
export const worn = z.object({
  part: z.string(),
  place: place,
  wear: z.discriminatedUnion("is", [
    z.object({
      ...{ is: z.literal("line"), readings: z.number().int(), per1000km: z.number(), start: z.number(), now: z.number() },
      left: z.object({ likely: distance, low: distance, high: distance.nullable() }),
    }),
    z.object({ is: z.literal("worn"), readings: z.number().int() }),
    z.object({ is: z.literal("too few"), readings: z.number().int(), wide: z.boolean() }),
  ]),
  since: distance,
  likely: z.object({ on: localDate, from: localDate, to: localDate.nullable() }).nullable(),
});
const fluidPut = z.object({
  ...{
    bike: z.string(),
    nickname: z.string(),
    of: z.enum(["brakes", "clutch"]),
    inside: z.enum([...FLUID_NAMES, "brake fluid"]),
    added: z.enum([...FLUID_NAMES, "brake fluid", ...STRANGE_NAMES]),
  },
  ...{ worth: z.enum(FLUID_NAMES).nullable(), wet: z.number().nullable(), changed: z.literal(true).optional(), work: z.string() },
  seals: z.literal(true).optional(),
});
const fluidUnknown = fluidPut.pick({ bike: true, nickname: true, of: true, inside: true, work: true }).extend({ words: z.string() });
const judgedOn = judged.extend({ bike: z.string(), first: z.boolean() });
const gap = z.object({ need: z.enum(["bike", "kind", "place", "level", "unit", "number", "item", "service", "date", "found", "defect", "sure"]) });
export const question = z.object({
  draft: z.string(),
  rev: z.number().int(),
  typed: z.string(),
  at: z.number().int(),
  gap,
  options: z.array(z.string()),
  last: z.object({ figure: z.number(), unit, on: localDate }).nullable(),
  nickname: z.string().nullable(),
  both: z.literal(true).optional(),
  tooLow: z.array(z.object({ place, typed: z.string(), unit: z.string(), under: z.number(), wanted: z.number(), far: z.boolean() })).optional(),
  services: z.array(z.object({ at: z.number(), unit, items: z.number().int() })).optional(),
});

export const fuel = z.object({
  fill: z.string(),
  bike: z.string(),
  litres: z.number(),
  distance,
  by: z.enum(["odometer", "trip meter"]),
  rates: z.array(z.object({ unit: z.enum(["L/100 km", "mpg US", "mpg imp"]), value: z.number() })),
});

/** The date moulded into a tyre, and the age that it makes, in months. */
export const tyreAge = z.object({
  date: z.discriminatedUnion("is", [
    z.object({ is: z.literal("made"), week: z.number().int(), year: z.number().int(), from: localDate }),
    z.object({ is: z.literal("before 2000"), week: z.number().int(), digit: z.number().int(), latest: localDate }),
  ]),
  ...{ months: z.number().int(), replaceAt: z.number().int(), age: z.enum(AGE_WORDS) },
});

/** A tyre that is on, with the record that says its code. */
export const tyreAged = tyreAge.extend({ place: z.enum(["front", "rear"]), work: z.string().nullable(), reading: z.string().nullable(), on: localDate });

/** What the pressures of one end's tyre tell of a slow leak, in kPa. */
export const leakOn = z.object({
  place: z.enum(["front", "rear"]),
  leak: z.discriminatedUnion("is", [
    z.object({ is: z.enum(["sound", "leaks"]), per30days: z.number(), usual: z.number(), readings: z.number(), days: z.number() }),
    z.object({
      is: z.literal("leak likely"),
      ...{ lost: z.number(), explained: z.number(), fall: z.number() },
      ...{ days: z.number(), fills: z.number().int(), readings: z.number().int() },
    }),
  ]),
});

/** An item that readings count for as looked at. */
export const counted = z.object({
  bike: z.string(),
  nickname: z.string(),
  item: z.string(),
  called: z.string(),
  lacks: z.enum(["every valve", "other valves", "sprockets", "other side", "new ones"]).nullable(),
});

const built = z.object({ construction: z.enum(["radial", "bias belted", "bias ply"]), typed: z.string(), by: z.enum(["fitted", "size entered"]) });

const limitSaid = z.object({ bike: z.string(), key: z.string(), value: z.string() });

/** What a message, a typed log or a filled form came to. */
export const messageOutcome = z.discriminatedUnion("is", [
  z.object({ is: z.literal("silence") }),
  z.object({
    is: z.literal("no bikes"),
    gone: z.array(z.string()),
    seen: z.array(z.object({ name: z.string().nullable(), odometer: z.string().nullable() })),
  }),
  z.object({ is: z.literal("too long") }),
  z.object({ is: z.literal("file sent"), file: z.enum(["plan", "table", "chart", "picture", "other"]) }),
  z.object({
    is: z.literal("not understood"),
    bikes: z.array(z.string()),
    otherwise: z.looseObject({ why: z.literal("item not fitted") }).optional(),
    command: z.enum(["laid up", "riding again", "chain size", "recovery number", "roadside card"]).optional(),
  }),
  z.object({ is: z.literal("seen before") }),
  z.object({ is: z.literal("not yours") }),
  z.object({ is: z.literal("bike gone") }),
  z.object({ is: z.literal("taken back") }),
  z.object({ is: z.literal("stands"), source: z.string(), readings: z.array(reading), work: z.array(work), defects: z.array(defect), bikes: z.array(named) }),
  z.object({
    is: z.literal("logged"),
    source: z.string(),
    readings: z.array(reading),
    work: z.array(work),
    defects: z.array(defect),
    closed: z.array(defect),
    mayClose: z.array(z.object({ defect, work: z.string() })),
    staying: z.array(defect).optional(),
    bikes: z.array(named),
    news: z.array(news),
    judged: z.array(judgedOn).optional(),
    aged: z.array(tyreAged).optional(),
    counted: z.array(counted).optional(),
    ofPartsOff: z.array(judged.pick({ id: true, kind: true, place: true, value: true, unit: true, typed: true })).optional(),
    fluids: z.array(fluidPut).optional(),
    unknownFluids: z.array(fluidUnknown).optional(),
    built: z.array(z.object({ nickname: z.string(), front: built.nullable(), rear: built.nullable() })).optional(),
    batteries: z.array(z.object({ bike: z.string(), nickname: z.string(), kind: z.enum(EQUIPMENT.battery) })).optional(),
    fuel: z.array(fuel).optional(),
    leaks: z.array(leakOn.extend({ bike: z.string(), unit: z.string().nullable() })).optional(),
    withdrawn: z.array(reading),
    learnt: learnt.optional(),
    unread: z.array(z.string()).optional(),
    limits: z.array(limitSaid).optional(),
  }),
  z.object({
    ...{ is: z.literal("asked"), question, learnt: learnt.optional(), several: z.number().int().optional() },
    unread: z.array(z.string()).optional(),
  }),
  z.object({ is: z.literal("specs"), answers: z.array(z.looseObject({ bike: z.string(), nickname: z.string() })) }),
  z.object({ is: z.literal("indoors"), answer: z.looseObject({ garageIs: z.string(), set: z.number() }) }),
  z.object({
    is: z.literal("battery told"),
    bikes: z.array(z.object({ bike: z.string(), nickname: z.string(), kind: z.enum(EQUIPMENT.battery), other: z.boolean() })),
  }),
  z.object({ is: z.literal("not indoors"), why: z.looseObject({ why: z.string() }) }),
  z.object({ is: z.literal("how to"), kinds: z.array(kind) }),
  z.object({
    is: z.literal("tyre marks"),
    tyres: z.array(z.object({ place: z.enum(["front", "rear"]).nullable(), marking: z.looseObject({ size: z.string() }), saves: z.array(limitSaid) })),
  }),
  z.object({ is: z.literal("looked up"), table: z.looseObject({ table: z.string() }) }),
  z.object({ is: z.literal("converted"), conversion }),
  z.object({ is: z.literal("cannot convert"), why: z.object({ why: z.literal("cannot convert") }) }),
]);

const notedOnly = defect.omit({ nickname: true, caution: true });
export const undone = z.object({
  ...{ readings: z.array(reading), work: z.array(work), defects: z.array(notedOnly) },
  ...{ restored: z.array(reading), reopened: z.array(notedOnly), lapsed: z.array(notedOnly), noted: z.array(notedOnly), bikes: z.array(named) },
});

const leg = z.object({ by: z.enum(["distance", "date", "hours", "times", "verdict", "wear", "recheck"]), state: z.string().optional() });
export const dueLine = z.object({
  item: z.string(),
  name: z.string(),
  status: z.enum(STATUSES),
  habit: z.boolean(),
  governs: z.number().int().nullable(),
  legs: z.array(leg),
  mark: distance.nullable(),
  because: z.object({ why: z.string() }),
  caution: z.string().nullable(),
  putOff: z.object({ until: localDate, figure: z.object({ at: z.number(), unit }).nullable() }).optional(),
});
export const chargeBy = z.object({
  ...{ on: localDate, by: z.enum(["days", "flat part", "volts"]), since: localDate, readings: z.number().int() },
  ...{ low: z.object({ on: localDate, typed: z.string() }).nullable(), lithium: z.boolean(), riding: z.boolean() },
});
const standing = z.object({
  ...{ until: localDate, items: z.array(z.string()) },
  charge: chargeBy.nullable(),
});
export const dueBike = z.object({
  bike: z.string(),
  nickname: z.string(),
  unit,
  offset: distance,
  today: localDate,
  odometer,
  perWeek: distance.nullable(),
  basis: z.object({ from: z.string() }),
  laidUp: z.boolean(),
  conditions: z.array(z.string()),
  dues: z.array(dueLine),
  first: z.array(z.string()),
  standing: standing.nullish(),
  worn: z.array(worn).optional(),
  measured: z.array(judged).optional(),
  defects: z.array(defect).optional(),
});
export const KINDS = Object.keys(KIND_NAMES) as KindId[];
export const planOffers = z.array(z.object({ plan: z.enum(["starter plan", "group plan"]), by: z.string().nullable(), manual: z.string().nullable() }));
export const addedBike = z.object({
  bike: z.string(),
  nickname: z.string(),
  kind: z.enum(KINDS),
  unit,
  figure: z.number(),
  equipment,
  items: z.number().int(),
  planName: z.string(),
  firstBike: z.boolean(),
  plainly: z.boolean(),
  asks: z.array(z.object({ item: z.string(), called: z.string() })),
  offers: planOffers,
});

const bikeNamed = z.object({ name: z.string(), odometer: z.string().nullable(), kind: z.string() });
/** A name that tells of several bikes: nothing is added yet. */
export const severalNamed = z.object({ is: z.literal("several"), bikes: z.array(bikeNamed), whole: bikeNamed.nullable() });

const falling = z.object({ likely: z.boolean(), on: localDate.nullable(), at: distance.nullable(), by: z.enum(["plan", "wear"]), due: dueLine });
export const outlook = z.object({
  is: z.literal("outlook"),
  bikes: z.array(
    z.object({
      bike: dueBike.omit({ dues: true, first: true }),
      on: localDate.nullable(),
      ridden: z.object({ low: distance, likely: distance, high: distance }).nullable(),
      byDistance: z.boolean(),
      evenings: z.array(z.object({ items: z.array(falling), minutes: z.number().nullable() })),
      perhaps: z.array(falling),
      first: z.array(z.string()),
      unknown: z.number().int(),
    }),
  ),
});

export const dueReport = z.object({ bikes: z.array(dueBike) });

export const bikeShown = z.object({
  bike: z.string(),
  nickname: z.string(),
  kind: z.string(),
  state: z.enum(["riding", "laid up", "sold", "retired"]),
  unit,
  column: unit,
  odometer,
  equipment,
  conditions: z.array(z.string()),
  perYear: distance.nullable(),
  model: z.string().nullable(),
  byNames: z.array(z.string()),
  byTheBook: z.boolean(),
  registered: localDate.nullable(),
  items: z.number().int(),
  laidUpSince: localDate.nullable(),
  standing: standing.nullish(),
  pictured: z.boolean().optional(),
  brought: z.boolean().optional(),
  looked: z.object({ noted: z.array(defect), lapsed: z.array(defect) }).optional(),
  brakesNow: z.enum(EQUIPMENT.brakeFluid).optional(),
  fluid: z
    .discriminatedUnion("of", [
      z.object({ of: z.literal("brakes"), now: z.enum(FLUID_NAMES), before: z.enum(FLUID_NAMES).nullable(), never: z.array(z.enum(FLUID_NAMES)) }),
      z.object({ of: z.literal("clutch"), now: z.enum(["brake fluid", "mineral oil"]), before: z.enum(["brake fluid", "mineral oil"]).nullable() }),
    ])
    .optional(),
});

export const groupShown = z.object({
  zone: z.string(),
  distance: unit.nullable(),
  pressure: z.string().nullable(),
  reads: z.boolean(),
  reading: z.enum(["here", "elsewhere", "nowhere"]),
  hearsChannels: z.boolean(),
  place: z.string().nullable(),
  law: z.object({ millimetres: z.number().nullable(), band: z.string(), source: z.string() }).nullable(),
  south: z.boolean(),
  riding: z.object({ from: z.string(), to: z.string() }).nullable(),
  off: z.array(z.string()),
  digest: z.union([z.literal("off"), z.object({ weekday: z.number().int(), time: z.string() })]),
  hasChannel: z.boolean(),
  changed: z.boolean(),
  looked: z.object({ noted: z.array(defect), lapsed: z.array(defect), others: z.number().int() }).optional(),
});
