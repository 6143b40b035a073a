// Threads as they are written on a box: "M8", "M10x1.25", "5/16-18", "3/8 UNF". Millimetres throughout.

import { toCanonical } from "../quantity/units.ts";

/** One turn of a nut moves it by `pitch`. */
export type Thread = { readonly name: string; readonly diameter: number; readonly pitch: number };

/** Threads there are tables for, from trade/. Metric: pitches in mm by nominal diameter, the coarse one first. Inch: threads per inch by nominal size. */
export type ThreadTable = {
  readonly metric: Readonly<Record<string, readonly number[]>>;
  readonly unified: Readonly<Record<string, { readonly UNC: number; readonly UNF: number }>>;
};

/** What was typed: a thread of the table; one of the system that the table has not, with those it has (of that size, else every size); or none. */
export type ReadThread =
  | { readonly is: "thread"; readonly thread: Thread }
  | { readonly is: "not listed"; readonly ofSize: boolean; readonly listed: readonly string[] }
  | { readonly is: "no thread" };

const INCH = toCanonical(1, "in");

/** Reads a thread; a metric size alone is coarse, an inch size needs its threads or its series. Only pairs of size and pitch in the table are threads. */
export function readThread(text: string, table: ThreadTable): ReadThread {
  const typed = text.trim().replace(/×/gu, "x").replace(/,/gu, ".");
  const metric = /^m\s*(\d{1,2}(?:\.\d)?)(?:\s*[x-]\s*(\d(?:\.\d{1,2})?))?$/iu.exec(typed);
  if (metric !== null) return metricThread(Number(metric[1]), metric[2] === undefined ? null : Number(metric[2]), table);
  const inch = /^(\d{1,2}\/\d{1,2})(?:\s*(?:in|"))?(?:\s*-\s*(\d{1,2}))?(?:\s*(unc|unf))?$/iu.exec(typed);
  return inch === null ? { is: "no thread" } : inchThread(inch[1] ?? "", inch[2] === undefined ? null : Number(inch[2]), inch[3]?.toUpperCase() ?? null, table);
}

function metricThread(diameter: number, typed: number | null, { metric }: ThreadTable): ReadThread {
  const pitches = metric[String(diameter)];
  if (pitches === undefined) return { is: "not listed", ofSize: false, listed: bySize(metric).map((size) => `M${size}`) };
  const pitch = typed ?? pitches[0];
  if (pitch === undefined || !pitches.includes(pitch)) return { is: "not listed", ofSize: true, listed: pitches.map((each) => `M${diameter}x${each}`) };
  return { is: "thread", thread: { name: `M${diameter}x${pitch}`, diameter, pitch } };
}

function inchThread(size: string, typed: number | null, series: string | null, { unified }: ThreadTable): ReadThread {
  const both = unified[size];
  if (both === undefined) return { is: "not listed", ofSize: false, listed: bySize(unified) };
  const all = Object.entries(both);
  // "3/8-24 UNF" says it twice; "3/8" alone does not say which.
  const [turns] = all.filter(([name, each]) => (typed ?? each) === each && (series ?? name) === name && (typed ?? series) !== null).map(([, each]) => each);
  if (turns === undefined) return { is: "not listed", ofSize: true, listed: all.map(([, each]) => `${size}-${each}`) };
  return { is: "thread", thread: { name: `${size}-${turns}`, diameter: inches(size) * INCH, pitch: INCH / turns } };
}

const inches = (size: string): number => {
  const [above = 0, below = 1] = size.split("/").map(Number);
  return above / below;
};
const bySize = (sizes: Readonly<Record<string, unknown>>): readonly string[] => Object.keys(sizes).sort((a, b) => inches(a) - inches(b));

/** Which marks are on its head: property classes or grades. */
export const systemOf = ({ name }: Thread): "metric" | "inch" => (name.startsWith("M") ? "metric" : "inch");

/**
 * The least area in mm² that must shear for the thread of a hole to strip, over `engaged` mm of full thread.
 * Sources: FED-STD-H28/2B (internal thread: n·π·L·d_min·(1/(2n) + 0.57735·(d_min − D2_max))), with the loosest pair that ISO 965-1 allows in 6H/6g;
 * inch threads of classes 2A/2B are taken alike.
 */
export function stripArea({ diameter, pitch }: Thread, engaged: number): number {
  const bolt = diameter - (15 + 11 * pitch + 180 * pitch ** (2 / 3) - 3.15 / Math.sqrt(pitch)) / 1000;
  const hole = diameter - 0.649_519 * pitch + (1.32 * 90 * pitch ** 0.4 * diameter ** 0.1) / 1000;
  return (Math.PI * engaged * bolt * (pitch / 2 + 0.577_35 * (bolt - hole))) / pitch;
}

/** Tensile stress area in mm². Sources: ISO 898-1 (d − 0.9382 P) and ASME B1.1 (D − 0.9743 / n), which agree to the fourth digit. */
export function stressArea(thread: Thread): number {
  const { diameter, pitch } = thread;
  const depth = systemOf(thread) === "metric" ? 0.938_194 : 0.9743;
  return (Math.PI / 4) * (diameter - depth * pitch) ** 2;
}
