// What can hurt, by name. The sentences are in words/; each defers to the maker's manual.

export const CAUTIONS = {
  brakes: { source: "common practice" },
  "drum brakes": { source: "common practice" },
  "brake fluid": { source: "common practice; DOT 3, 4 and 5.1 are glycol based (49 CFR 571.116), and attack paint" },
  tyres: { source: "common practice" },
  lifting: { source: "common practice" },
  fuel: { source: "common practice" },
  battery: { source: "common practice" },
  "lithium battery": { source: "common practice" },
  hot: { source: "common practice" },
  fasteners: { source: "common practice" },
  "check tightness": { source: "common practice" },
  "moving chain": { source: "common practice" },
  "moving belt": { source: "common practice" },
  steering: { source: "common practice" },
  throttle: { source: "common practice" },
  "drum dust": { source: "common practice; old linings may hold asbestos" },
  start: { source: "common practice" },
  "first ride": { source: "common practice" },
  "high voltage": { source: "common practice" },
} as const satisfies Record<string, { readonly source: string }>;

export type CautionKey = keyof typeof CAUTIONS;
