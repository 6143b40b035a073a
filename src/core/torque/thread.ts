// Threads as they are written on a box: "M8", "M10x1.25", "5/16-18", "3/8 UNF". Millimetres throughout.

/** One turn of a nut moves it by `pitch`. */
export type Thread = { readonly name: string; readonly diameter: number; readonly pitch: number };

/** Coarse and fine pitches by nominal size, from trade/. Inch threads by threads per inch. */
export type ThreadTable = {
  readonly metricCoarse: Readonly<Record<string, number>>;
  readonly unified: Readonly<Record<string, { readonly UNC: number; readonly UNF: number }>>;
};

const INCH = 25.4;

/** Reads a thread; a metric size alone is coarse, an inch size needs its threads or its series. Null when it is none. */
export function readThread(text: string, table: ThreadTable): Thread | null {
  const typed = text.trim().replace(/×/gu, "x").replace(/,/gu, ".");
  const metric = /^m\s*(\d{1,2}(?:\.\d)?)(?:\s*[x-]\s*(\d(?:\.\d{1,2})?))?$/iu.exec(typed);
  if (metric !== null) {
    const diameter = Number(metric[1]);
    const pitch = metric[2] === undefined ? table.metricCoarse[String(diameter)] : Number(metric[2]);
    return pitch === undefined || pitch >= diameter / 2 || pitch <= 0 ? null : { name: `M${diameter}x${pitch}`, diameter, pitch };
  }
  const inch = /^(\d{1,2})\/(\d{1,2})(?:\s*(?:in|"))?(?:\s*-\s*(\d{1,2})|\s+(unc|unf))$/iu.exec(typed);
  if (inch === null) return null;
  const size = `${inch[1]}/${inch[2]}`;
  const series = inch[4]?.toUpperCase() as "UNC" | "UNF" | undefined;
  const turns = inch[3] === undefined ? (series === undefined ? undefined : table.unified[size]?.[series]) : Number(inch[3]);
  const diameter = (Number(inch[1]) / Number(inch[2])) * INCH;
  if (turns === undefined || turns < 4 || turns > 80 || !Number.isFinite(diameter) || diameter <= 0) return null;
  return { name: `${size}-${turns}`, diameter, pitch: INCH / turns };
}

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
export function stressArea({ name, diameter, pitch }: Thread): number {
  const depth = name.startsWith("M") ? 0.938_194 : 0.9743;
  return (Math.PI / 4) * (diameter - depth * pitch) ** 2;
}
