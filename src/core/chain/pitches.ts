// Over how many pitches a manual's longest length is printed: "321 mm over 20 pitches", "259 mm / 21 pins".

const PRINTED = /(?:over|across|for|per|in|at|auf|über|bei|\/|,|\()\s*(\d{1,3})\s*(pitches|links|rollers|pins|teilungen|glieder|bolzen)\b\s*\)?/iu;

/** The pitches that a typed length names; between so many pins lies one fewer. Null where it names none. */
export function pitchesIn(typed: string): number | null {
  const [, count = "", of = ""] = PRINTED.exec(typed) ?? [];
  const pitches = Number(count) - (/^(?:pins|bolzen)$/iu.test(of) ? 1 : 0);
  return count === "" || pitches < 1 ? null : pitches;
}

/** The length alone, as typed. */
export const withoutPitches = (typed: string): string => typed.replace(PRINTED, "").trim();
