// The least tread that the law asks of a motorcycle's tyre on the road, by place. For the member's own check: local law has the last word.

type Row = {
  /** The least depth; null where each state has its own and the moulded bar is what can be told. */
  readonly millimetres: number | null;
  /** What it asks of the lightest alone: mopeds, in Germany light motorcycles too. Which those are the papers say, so it holds where the owner has entered such a limit. */
  readonly lightest?: number;
  /** Which those are by the law's own words. */
  readonly lightestAre?: "mopeds, small motorcycles and light motorcycles" | "mopeds";
  /** Where on the tread it is asked for, all the way round. */
  readonly band: "three quarters of the breadth" | "main grooves of the middle" | "middle three quarters" | "moulded bar";
  readonly source: string;
};

export const TREAD_LAW = {
  "United Kingdom": {
    millimetres: 1.0,
    band: "three quarters of the breadth",
    source: "Road Vehicles (Construction and Use) Regulations 1986, reg. 27, over 50 cc",
  },
  Germany: {
    millimetres: 1.6,
    lightest: 1.0,
    lightestAre: "mopeds, small motorcycles and light motorcycles",
    band: "main grooves of the middle",
    source: "StVZO section 36",
  },
  Austria: { millimetres: 1.6, lightest: 1.0, lightestAre: "mopeds", band: "middle three quarters", source: "KDV section 4(4)" },
  "United States": { millimetres: null, band: "moulded bar", source: "49 CFR 571.119 S6.4: bars of 1/32 in; in-use law is each state's" },
} as const satisfies Record<string, Row>;

/** Kinds of bike that may be the lightest by their papers. */
export const MAY_BE_LIGHTEST: readonly string[] = ["small commuter", "scooter", "electric"];

export type TreadLawPlace = keyof typeof TREAD_LAW;
export type TreadLaw = Row;
