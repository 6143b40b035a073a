// Open tables that need no bike: oil grades, brake fluid classes, load and speed marks, threads and their hex, tread law, resting volts.

import type { SpecNames } from "../core/spec/find.ts";
import { readMarking } from "../core/tyre/marking.ts";
import { REST_TABLES } from "../trade/battery.ts";
import { HEX_WIDTHS, THREADS } from "../trade/fasteners.ts";
import { FLUID_CLASSES, type FluidClassName } from "../trade/fluids.ts";
import type { LookedUp } from "../trade/looked-up.ts";
import { HOT_GRADES, OIL_SOURCE, WINTER_GRADES } from "../trade/oil-grades.ts";
import { TREAD_LAW } from "../trade/tread-law.ts";
import { LOAD_KILOGRAMS, SPEED_KMH } from "../trade/tyres.ts";
import type { Ctx } from "./context.ts";
import { neverWith } from "./fluids.ts";

type Words = Ctx["vocabulary"]["specs"]["tables"];

/** What a mark or the name of a table says; null when it is neither. */
export function lookUp({ vocabulary }: Pick<Ctx, "vocabulary">, typed: string): LookedUp | null {
  const words = vocabulary.specs.tables;
  const said = typed.normalize("NFKC").trim().replace(/\s+/gu, " ").replace(/[?.]$/u, "").trim();
  const bare = bareOf(said, words);
  const { names } = vocabulary.specs;
  return ofTables(said, words, names) ?? (bare === said ? null : ofTables(bare, words, names));
}

const ofTables = (said: string, words: Words, names: SpecNames): LookedUp | null =>
  oilGrade(said) ??
  fluidClass(said) ??
  tyreMark(said, words) ??
  thread(said, words) ??
  spanner(said, words) ??
  battery(said, words) ??
  treadLaw(said, words, names) ??
  whole(said, words);

/** "What does (58W) mean": the mark alone. */
function bareOf(said: string, { before, behind }: Words): string {
  const longest = (list: readonly string[]): string => list.toSorted((a, b) => b.length - a.length).join("|");
  return said
    .replace(new RegExp(`^(?:${longest(before)})\\s+`, "iu"), "")
    .replace(new RegExp(`\\s+(?:${longest(behind)})$`, "iu"), "")
    .replace(/^\((.*)\)$/u, "$1")
    .trim();
}

function oilGrade(said: string): LookedUp | null {
  const oil = /^(?:sae\s*)?(?:(\d{1,2}w)(?:[\s-]*(\d{1,2}))?|(\d{1,2}))$/iu.exec(said);
  if (oil === null || (oil[1] === undefined && !/sae/iu.test(said))) return null;
  const [cold, warm] = [(oil[1] ?? "").toUpperCase(), oil[2] ?? oil[3] ?? ""];
  const [winter, hot] = [WINTER_GRADES[cold as "0W"] ?? null, HOT_GRADES[warm as "20"] ?? null];
  if (winter === null && hot === null) return null;
  const unknown = [...(cold === "" || winter !== null ? [] : [cold]), ...(warm === "" || hot !== null ? [] : [warm])];
  return { table: "oil grade", grade: said.toUpperCase().replace(/^SAE\s*/u, ""), unknown, winter, hot, source: OIL_SOURCE };
}

function fluidClass(said: string): LookedUp | null {
  const bare = said.toLowerCase().replace(/\s/gu, "");
  const fluid = (Object.keys(FLUID_CLASSES) as FluidClassName[]).find((name) => name.toLowerCase().replace(" ", "") === bare);
  return fluid === undefined ? null : { table: "brake fluid", name: fluid, never: neverWith(fluid), ...FLUID_CLASSES[fluid] };
}

/** "58V", "load index 73", or a whole sidewall: "120/70ZR17 (58W)". A bare figure is no mark. */
function tyreMark(said: string, { loads, speeds }: Words): LookedUp | null {
  const mark = new RegExp(`^(?:(?:${[...loads, ...speeds].join("|")})[\\s:]+)?(\\d{2})?\\s*([a-z])?$`, "iu").exec(said);
  if (mark !== null && (mark[1] ?? mark[2]) !== undefined && (said.length > 2 || mark[2] !== undefined)) {
    const kilograms = LOAD_KILOGRAMS[Number(mark[1] ?? Number.NaN)];
    const symbol = (mark[2] ?? "").toUpperCase();
    // "12 V" is a battery: there is no such load index.
    if (mark[1] !== undefined && kilograms === undefined) return null;
    const kmh = (SPEED_KMH as Readonly<Record<string, number>>)[symbol];
    if (kilograms === undefined && kmh === undefined) return null;
    return {
      table: "tyre mark",
      mark: `${mark[1] ?? ""}${symbol}`,
      load: kilograms === undefined ? null : { index: Number(mark[1]), kilograms },
      speed: kmh === undefined ? null : { symbol, kmh },
    };
  }
  const moulded = readMarking(said, { loads: LOAD_KILOGRAMS, speeds: SPEED_KMH });
  if (moulded === null || moulded.size === "" || moulded.load === null) return null;
  return {
    table: "tyre mark",
    mark: said,
    load: moulded.load,
    speed: moulded.speed === null ? null : { symbol: moulded.speed.symbol, kmh: moulded.speed.kmh },
  };
}

const METRIC: Readonly<Record<string, readonly number[]>> = THREADS.metric;

/** "M8", "M10x1.25", "M6 bolt", "1/4-20", "5/16 UNF". */
function thread(said: string, { threads }: Words): LookedUp | null {
  const bare = said.replace(new RegExp(`\\s+(?:${threads.join("|")})$`, "iu"), "");
  const [, metric, typedPitch] = /^m\s*(\d{1,2})(?:\s*[x×*-]\s*(\d(?:[.,]\d{1,2})?)(?:\s*mm)?)?$/iu.exec(bare) ?? [];
  const pitches = metric === undefined ? undefined : METRIC[metric];
  if (metric !== undefined && pitches !== undefined) {
    const pitch = typedPitch === undefined ? null : Number(typedPitch.replace(",", "."));
    return { table: "thread", size: `M${metric}`, pitches, pitch, hex: HEX_WIDTHS[metric as "5"] ?? null };
  }
  const inch = /^(\d{1,2}\/\d{1,2})(?:\s*[-x]\s*\d{2}|\s*(?:in|inch|")?\s*un[cf])$/iu.exec(bare)?.[1];
  const turns = inch === undefined ? undefined : THREADS.unified[inch];
  return inch === undefined || turns === undefined ? null : { table: "inch thread", size: inch, coarse: turns.UNC, fine: turns.UNF };
}

/** "13 mm spanner", "hex 13": which threads have such a head. */
function spanner(said: string, { spanners }: Words): LookedUp | null {
  const names = `(?:${spanners.join("|")})`;
  const [, before, behind] = new RegExp(`^(?:(\\d{1,2})\\s*(?:mm)?\\s+${names}|${names}\\s*(\\d{1,2})(?:\\s*mm)?)$`, "iu").exec(said) ?? [];
  const width = Number(before ?? behind ?? Number.NaN);
  const threads = Object.entries(HEX_WIDTHS).flatMap(([size, { now, before }]) =>
    now === width || before === width ? [{ size: `M${size}`, before: now !== width }] : [],
  );
  return threads.length === 0 ? null : { table: "hex", width, threads };
}

/** "AGM", "lithium battery": the resting volts of that kind. */
function battery(said: string, { battery: names, batteries }: Words): LookedUp | null {
  const lower = said
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, " ")
    .trim();
  const called = lower.replace(new RegExp(`(?:\\s(?:${names.join("|")}))+$`, "u"), "");
  const kind = Object.keys(batteries).find((each) => batteries[each]?.includes(called) === true);
  const row = kind === undefined ? undefined : (REST_TABLES as Readonly<Record<string, (typeof REST_TABLES)["AGM"]>>)[kind];
  return kind === undefined || row === undefined ? null : { table: "resting volts", kinds: [{ kind, points: row.points, source: row.source }] };
}

/** The whole table, or one place of it: "legal tread in Germany", "UK tread law"; of a place that it lacks, which it has. */
function treadLaw(said: string, { tread, treadOf, places }: Words, names: SpecNames): LookedUp | null {
  const lower = said.toLowerCase();
  const longest = (names: readonly string[]): string | undefined => names.toSorted((a, b) => b.length - a.length).find((each) => lower.includes(each));
  const law = longest(tread);
  const name = law ?? longest(treadOf);
  if (name === undefined) return null;
  const at = lower.indexOf(name);
  const bare = (text: string): string =>
    text
      .replace(/[^\p{L} ]/gu, " ")
      .trim()
      .replace(/^(?:(?:in|for|of|the)\s+)+/iu, "");
  const typed = bare(`${said.slice(0, at)} ${said.slice(at + name.length)}`);
  const rest = typed.toLowerCase();
  const place = Object.keys(places).find((each) => places[each]?.includes(rest) === true);
  // What means the law only beside a place asks for a spec without one.
  if (place === undefined && law === undefined) return null;
  const rows = Object.entries(TREAD_LAW).map(([each, row]) => ({ place: each, ...row }));
  if (rest === "" || place !== undefined) return { table: "tread law", lacks: null, rows: rows.filter((row) => place === undefined || row.place === place) };
  // "Tread limits, front" asks for a spec; a place is one to three words that name none.
  const words = rest.split(/\s+/u);
  const ofSpecs = new Set(Object.values(names).flatMap((all) => all.flatMap((each) => each.toLowerCase().split(" "))));
  const isPlace = words.length <= MOST_OF_A_PLACE && /^\p{L}/u.test(typed) && words.every((word) => !ofSpecs.has(word)) && isNamed(said, typed);
  return isPlace ? { table: "tread law", lacks: typed, rows } : null;
}

/** "Bosnia and Herzegovina". */
const MOST_OF_A_PLACE = 3;
/** Words that begin like a name, that stand behind "in", or beside a law. */
const isNamed = (said: string, typed: string): boolean =>
  /^\p{Lu}/u.test(typed) || /\blaw\b/iu.test(said) || new RegExp(`\\bin (?:the )?${typed}`, "iu").test(said);

/** "Speed symbols", "speed rating". */
const isWhole = (lower: string, names: readonly string[]): boolean =>
  names.some((name) => lower === name || lower === `${name}s` || lower === `${name}es` || lower === `${name} table`);

/** The tables that are shown whole. */
function whole(said: string, words: Words): LookedUp | null {
  const lower = said.toLowerCase();
  if (
    isWhole(
      lower,
      words.loads.filter((name) => name.includes(" ")),
    )
  )
    return { table: "load indexes", rows: Object.entries(LOAD_KILOGRAMS).map(([index, kilograms]) => ({ index: Number(index), kilograms })) };
  if (isWhole(lower, words.speeds)) return { table: "speed symbols", rows: Object.entries(SPEED_KMH).map(([symbol, kmh]) => ({ symbol, kmh })) };
  if (isWhole(lower, words.threadSizes))
    return {
      table: "threads",
      rows: Object.entries(METRIC).map(([size, pitches]) => ({ size: `M${size}`, pitches, hex: HEX_WIDTHS[size as "5"] ?? null })),
    };
  // A voltage that a resting battery of 12 V can show.
  const volts = Number(/^(\d{1,2}(?:[.,]\d{1,2})?)\s*(?:v|volts?)$/u.exec(lower)?.[1]?.replace(",", ".") ?? Number.NaN);
  if (words.volts.includes(lower) || (volts >= 9 && volts <= 15))
    return { table: "resting volts", kinds: Object.entries(REST_TABLES).map(([kind, { points, source }]) => ({ kind, points, source })) };
  if (words.fluids.includes(lower))
    return { table: "brake fluids", rows: Object.entries(FLUID_CLASSES).map(([name, { base, dry, wet }]) => ({ name, base, dry, wet })) };
  if (!words.oils.includes(lower)) return null;
  const rows = <Row extends object>(grades: Readonly<Record<string, Row>>) => Object.entries(grades).map(([grade, row]) => ({ grade, ...row }));
  return { table: "oil grades", winter: rows(WINTER_GRADES), hot: rows(HOT_GRADES), source: OIL_SOURCE };
}
