// A measured value against its limit. Which limit, and what it means on the bike, is for others to know.
// All figures are in the canonical unit of what is measured.

/** What a judgement may come to. "at limit" means: change or set it now. */
export const VERDICTS = ["within", "near limit", "at limit", "beyond limit", "cannot tell"] as const;
export type VerdictWord = (typeof VERDICTS)[number];

/** How far a value may go. At least one end is not null; `near` is how close to an end is worth a word, null for nothing before the limit. */
export type Limit = {
  readonly min: number | null;
  readonly max: number | null;
  readonly near: number | null;
  /** The one figure that the manual gives, where the window was only taken around it. */
  readonly nominal?: number;
  /** The most of what the part's own limit can be, where that is not known: `max` is then the least of it. */
  readonly unsettled?: Unsettled;
  /** The manual, the law or the trade that says so. */
  readonly source: string;
};

/** A limit that lies somewhere up to `upTo`, and what is lacking to know where. */
export type Unsettled = { readonly upTo: number; readonly lacks: Missing };

/** What a judgement still lacks. */
export type Missing =
  | "limit"
  | "place"
  | "load"
  | "cold"
  | "upright"
  | "on the side stand"
  | "under load"
  | "other stand"
  | "at force"
  | "other force"
  | "throttle open"
  | "rested"
  | "rpm"
  | "temperature"
  | "chemistry"
  | "pitch"
  | "no such chain"
  /** Its own limit is a length, which may be that of several chains. */
  | "chain size"
  | "readings"
  | "tyre date"
  /** A coolant of which only the share of antifreeze is known, beyond what that says. */
  | "frost point"
  /** The standard has no such figure for the class of fluid that is in. */
  | "fluid figure"
  | "fitted"
  // It was said to be otherwise than the measure needs: it is measured again.
  | "cooled"
  | "warmed"
  | "stood upright"
  | "unladen"
  | "revs"
  /** Within its window, but at an engine speed that says nothing of more. */
  | "more revs"
  | "at rest"
  /** No battery of its kind shows so much at rest. */
  | "more than full"
  /** It may be a battery of 6 V, which no table is for. */
  | "six volts"
  | "longer rest"
  /** Measured with what the lining sits on. */
  | "lining alone";

export type Judgement =
  | {
      readonly is: Exclude<VerdictWord, "cannot tell">;
      /** The end of the limit that it is near, at or beyond; null well within. */
      readonly side: "low" | "high" | null;
      /** How far inside that end; negative beyond it. Null well within. */
      readonly room: number | null;
      readonly limit: Limit;
    }
  | { readonly is: "cannot tell"; readonly missing: readonly Missing[] };

export const cannotTell = (...missing: readonly Missing[]): Judgement => ({ is: "cannot tell", missing });

/** What a judgement lacks, told as well as it can be without; nothing mostly. */
export const lackingIn = (judgement: Judgement): readonly Missing[] =>
  judgement.is === "cannot tell" ? judgement.missing : judgement.limit.unsettled === undefined ? [] : [judgement.limit.unsettled.lacks];

/**
 * Judges a value by its limit. Of two ends the nearer one tells.
 * @param fine the finest step that the tool shows: within half of it a value counts as at the limit, since 1/32 in and 0.8 mm are the same bar read twice
 */
export function judge(value: number, limit: Limit, fine: number): Judgement {
  const below = limit.min === null ? Number.POSITIVE_INFINITY : value - limit.min;
  const above = limit.max === null ? Number.POSITIVE_INFINITY : limit.max - value;
  const room = Math.min(below, above);
  const side = below <= above ? "low" : "high";
  // A window that was taken around one figure is wide enough for the tool as it is.
  const same = (limit.nominal === undefined ? fine / 2 : 0) + Math.abs(value) * 1e-9;
  // A window: the whole of it is meant to be used, so its very end is still good to ride on; a wear limit reached is not.
  const window = limit.min !== null && limit.max !== null;
  if (room < -same) return { is: "beyond limit", side, room, limit };
  if (room <= same) return { is: window ? "near limit" : "at limit", side, room, limit };
  if (limit.near !== null && room <= limit.near + Math.abs(limit.near) * 1e-9) return { is: "near limit", side, room, limit };
  return { is: "within", side: null, room: null, limit };
}

const ORDER: Readonly<Record<VerdictWord, number>> = { within: 0, "cannot tell": 1, "near limit": 2, "at limit": 3, "beyond limit": 4 };

/** The graver of two judgements; what cannot be told outweighs only what is within. */
export const graver = <J extends { readonly is: VerdictWord }>(a: J, b: J): J => (ORDER[b.is] > ORDER[a.is] ? b : a);

/** Does it call for work now? */
export const callsForWork = ({ is }: { readonly is: VerdictWord }): boolean => is === "at limit" || is === "beyond limit";
