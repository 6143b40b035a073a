// Benchmarks with real statistics: rows that say what was measured, its median and 99th percentile, and how that compares with a peer measured in the same run.

import { measure } from "mitata";

export type Row = {
  readonly bench: string;
  readonly subject: string;
  readonly unit: string;
  readonly median: number;
  readonly p99: number;
  /** Median over the peer's median: below 1 is less than the peer. Null for the peer itself and where there is none. */
  readonly ratioToPeer: number | null;
};
/** A file of benchmarks (`NAME.bench.ts`) exports one or more of these; `rows` does the work. */
export type Bench = { readonly name: string; readonly rows: () => Promise<readonly Row[]> };

/** True for what a file of benchmarks exports as one. */
export const isBench = (value: unknown): value is Bench =>
  typeof value === "object" && value !== null && "name" in value && typeof value.name === "string" && "rows" in value && typeof value.rows === "function";

type Work = () => unknown;

/** Measures subjects one after another, each against the one named as peer. Times in microseconds. @throws RangeError when the peer is not among them */
export async function compare(bench: string, peer: string | null, subjects: Readonly<Record<string, Work>>): Promise<readonly Row[]> {
  if (peer !== null && !(peer in subjects)) throw new RangeError(`${bench}: no subject is called ${peer}`);
  const found: { subject: string; median: number; p99: number }[] = [];
  for (const [subject, work] of Object.entries(subjects)) {
    const stats = await measure(work, { min_cpu_time: 500_000_000, min_samples: 200 });
    found.push({ subject, median: stats.p50 / 1000, p99: stats.p99 / 1000 });
  }
  const beside = found.find((each) => each.subject === peer)?.median ?? null;
  return found.map(({ subject, median, p99 }) => ({
    bench,
    subject,
    unit: "us",
    median: round(median),
    p99: round(p99),
    ratioToPeer: beside === null || subject === peer ? null : round(median / beside),
  }));
}

/** A row from figures that were measured otherwise, by nearest rank. @param peer the median to compare with @throws RangeError without samples */
export function rowOf(bench: string, subject: string, unit: string, samples: readonly number[], peer: number | null = null): Row {
  if (samples.length === 0) throw new RangeError(`${bench}, ${subject}: nothing was measured`);
  const sorted = [...samples].sort((a, b) => a - b);
  const at = (share: number): number => sorted[Math.max(0, Math.ceil(sorted.length * share) - 1)] ?? Number.NaN;
  return { bench, subject, unit, median: round(at(0.5)), p99: round(at(0.99)), ratioToPeer: peer === null ? null : round(at(0.5) / peer) };
}

/** A row as one line of JSON, or as one line of a table. */
export const printed = (row: Row, json: boolean): string =>
  json
    ? JSON.stringify(row)
    : [
        row.bench.padEnd(34),
        row.subject.padEnd(44),
        String(row.median).padStart(10),
        row.unit.padEnd(5),
        `p99 ${String(row.p99).padStart(10)}`,
        row.ratioToPeer === null ? "" : `  x ${row.ratioToPeer}`,
      ]
        .join(" ")
        .trimEnd();

const round = (value: number): number => Number(value.toPrecision(4));
