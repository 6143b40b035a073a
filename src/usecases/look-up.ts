// Open tables that need no bike: oil grades, brake fluid classes, load and speed marks, threads and their hex, tread law, resting volts.

import { REST_TABLES } from "../trade/battery.ts";
import { THREADS } from "../trade/fasteners.ts";
import { FLUID_CLASSES, type FluidClassName } from "../trade/fluids.ts";
import type { LookedUp } from "../trade/looked-up.ts";
import { HEX_WIDTHS, HOT_GRADES, OIL_SOURCE, WINTER_GRADES } from "../trade/oil-grades.ts";
import { TREAD_LAW } from "../trade/tread-law.ts";
import { LOAD_KILOGRAMS, SPEED_KMH } from "../trade/tyres.ts";
import type { Ctx } from "./context.ts";

/** What a mark or the name of a table says; null when it is neither. */
export function lookUp({ vocabulary }: Pick<Ctx, "vocabulary">, typed: string): LookedUp | null {
  const said = typed.normalize("NFKC").trim().replace(/[?.]$/u, "");
  const oil = /^(?:sae\s*)?(?:(\d{1,2}w)(?:[\s-]*(\d{2}))?|(\d{2}))$/iu.exec(said);
  if (oil !== null && (oil[1] !== undefined || /sae/iu.test(said))) {
    const [winter, hot] = [WINTER_GRADES[(oil[1] ?? "").toUpperCase() as "0W"] ?? null, HOT_GRADES[(oil[2] ?? oil[3] ?? "") as "20"] ?? null];
    return winter === null && hot === null ? null : { table: "oil grade", grade: said.toUpperCase().replace(/^SAE\s*/u, ""), winter, hot, source: OIL_SOURCE };
  }
  const fluid = (Object.keys(FLUID_CLASSES) as FluidClassName[]).find((name) => name.toLowerCase().replace(" ", "") === said.toLowerCase().replace(/\s/gu, ""));
  if (fluid !== undefined) return { table: "brake fluid", name: fluid, ...FLUID_CLASSES[fluid] };
  const words = vocabulary.specs.tables;
  const mark = new RegExp(`^(?:(?:${[...words.loads, ...words.speeds].join("|")})\\s*)?(\\d{2})?\\s*([a-z])?$`, "iu").exec(said);
  if (mark !== null && (mark[1] ?? mark[2]) !== undefined && (said.length > 2 || mark[2] !== undefined)) {
    const kilograms = LOAD_KILOGRAMS[Number(mark[1] ?? Number.NaN)];
    const symbol = (mark[2] ?? "").toUpperCase();
    const kmh = (SPEED_KMH as Readonly<Record<string, number>>)[symbol];
    if (kilograms !== undefined || kmh !== undefined)
      return {
        table: "tyre mark",
        load: kilograms === undefined ? null : { index: Number(mark[1]), kilograms },
        speed: kmh === undefined ? null : { symbol, kmh },
      };
  }
  const thread = /^m\s*(\d{1,2})$/iu.exec(said)?.[1];
  const pitches = thread === undefined ? undefined : (THREADS.metric as Readonly<Record<string, readonly number[]>>)[thread];
  if (thread !== undefined && pitches !== undefined) return { table: "thread", size: `M${thread}`, pitches, hex: HEX_WIDTHS[thread as "5"] ?? null };
  if (words.tread.includes(said.toLowerCase())) return { table: "tread law", rows: Object.entries(TREAD_LAW).map(([place, row]) => ({ place, ...row })) };
  if (words.volts.includes(said.toLowerCase()))
    return { table: "resting volts", kinds: Object.entries(REST_TABLES).map(([kind, { points, source }]) => ({ kind, points, source })) };
  return null;
}
