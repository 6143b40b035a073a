// Coolant: what a share of antifreeze is good to. Data, each row with its source.

/** Volume shares of ethylene glycol in water, in per cent, with the °C at which ice begins to form; a straight line between them. */
export const GLYCOL_FREEZES: readonly (readonly [share: number, celsius: number, source: string])[] = [
  [0, 0, "water"],
  [8.9, -3.2, "handbook table of refrigerating engineers, from memory"],
  [18.1, -7.8, "handbook table of refrigerating engineers, from memory"],
  [30, -15, "US Army TM 5-3895-382-24, coolant recommendations: ethylene glycol"],
  [40, -24, "US Army TM 5-3895-382-24, coolant recommendations: ethylene glycol"],
  [50, -37, "US Army TM 5-3895-382-24, coolant recommendations: ethylene glycol"],
];

/** Per cent; up to 60 it protects further, beyond that less again and it cools worse (US Army ordnance lesson on coolant solutions; TM 5-6115-400-12, table 2-1, note 1). */
export const MOST_GLYCOL = 60;

/** Points of share by which a mix may be off the one printed. Common practice: what is measured out beside what stays in the engine, and a tester, are no nearer. */
export const MIXED_TO = 3;

/** Shares of antifreeze that a manual can ask for. Common practice, 30 to 60 %, widened; beyond them a slip is asked about. */
export const COOLANT_SHARES = [0.2, 0.7] as const;
