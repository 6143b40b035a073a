// Under which conditions a printed value holds: "0.10-0.20 mm cold", "14.0-14.8 V at 5000 rpm", "25 Nm oiled". They stand behind the figure or before it, are kept as typed, and some of them are judged by.

/** What a value may be printed under. "cold" alone where a figure taken warm is another thing; "engine": cold or warm. */
export type UnderKind = "cold" | "engine" | "rpm" | "degrees" | "threads" | "throttle";

/** What of it is judged by; null where nothing is said. */
export type Under = { readonly engine: "cold" | "warm" | null; readonly rpm: number | null };

const COLD =
  /(?:(?:with|when|at|bei) )?(?:the )?(?:engine |motor |tyres? |tires? |reifen )?(?:is )?(?:stone[ -]?)?(?:cold|kalt(?:e[mnr])?)(?: engine| motor| tyres?| tires?| reifen)?/iu;
const WARM =
  /(?:(?:with|when|at|bei) )?(?:the )?(?:engine |motor )?(?:is )?(?:fully )?(?:warmed up|warm(?:e[mnr])?|hot|betriebswarm(?:e[mnr])?|hei(?:ß|ss)(?:e[mnr])?)(?: engine| motor)?/iu;
const RPM = /(?:(?:at|@|bei|from|ab) ?)?(\d{1,2}[.,' ]\d{3}|\d{3,5}) ?(?:rpm|r\/min|1\/min|u\/min|min-1|min⁻¹|revs|upm)/iu;
const DEGREES = /(?:(?:at|@|bei|below|under|unter|above|over|über) ?)?-?\d{1,3} ?(?:°|deg(?:rees)?\.?) ?[cf]|at room temperature|bei raumtemperatur/iu;
const THREADS =
  /(?:threads? )?(?:lightly )?(?:dry|oiled|greased|lubricated|trocken|geölt|gefettet)(?: threads?)?|with (?:oil|grease|thread ?lock(?:er|ing compound)?)|mit (?:öl|fett|schraubensicherung)/iu;
const THROTTLE = /(?:with )?(?:the )?throttle (?:held )?(?:wide |fully )?open|wide open throttle|full throttle|vollgas/iu;

const KINDS: Readonly<Record<UnderKind, readonly RegExp[]>> = {
  cold: [COLD],
  engine: [COLD, WARM],
  rpm: [RPM],
  degrees: [DEGREES],
  threads: [THREADS],
  throttle: [THROTTLE],
};

/** What stands between conditions and figure. */
const BETWEEN = "[\\s,;:()\\[\\]]*(?:(?:and|und|measured|checked|taken|gemessen)\\b[\\s,;:()\\[\\]]*)*";
const ends = (pattern: RegExp): { readonly head: RegExp; readonly tail: RegExp } => ({
  head: new RegExp(`^${BETWEEN}(?:${pattern.source})(?![\\p{L}\\p{N}])${BETWEEN}`, "iu"),
  tail: new RegExp(`(?<![\\p{L}\\p{N}.,-])${BETWEEN}(?:${pattern.source})${BETWEEN}$`, "iu"),
});
const ENDS: Readonly<Record<UnderKind, readonly ReturnType<typeof ends>[]>> = {
  cold: KINDS.cold.map(ends),
  engine: KINDS.engine.map(ends),
  rpm: KINDS.rpm.map(ends),
  degrees: KINDS.degrees.map(ends),
  threads: KINDS.threads.map(ends),
  throttle: KINDS.throttle.map(ends),
};

/**
 * A typed value without the conditions at its ends, and whether it had any. Nothing else is taken off, so what is left is a figure or is not read.
 * @param kinds those that its key may be printed under
 */
export function withoutConditions(typed: string, kinds: readonly UnderKind[]): { readonly figure: string; readonly stated: boolean } {
  const all = kinds.flatMap((kind) => ENDS[kind]);
  let figure = typed.replace(/\s+/gu, " ").trim();
  for (let again = true; again; ) {
    again = false;
    for (const { head, tail } of all)
      for (const end of [tail, head]) {
        const left = figure.replace(end, "");
        if (left !== figure && /\d/u.test(left)) [figure, again] = [left.replace(/[\s,;:([]+$/u, "").trim(), true];
      }
  }
  return { figure, stated: figure !== typed.replace(/\s+/gu, " ").trim() };
}

const within = (pattern: RegExp): RegExp => new RegExp(`(?<!\\p{L})(?:${pattern.source})(?!\\p{L})`, "iu");
const [COLD_IN, WARM_IN] = [within(COLD), within(WARM)];
const ANY_IN = Object.values(KINDS).flatMap((patterns) => patterns.map(within));

/** What a typed value says of how it holds, wherever it stands in it. */
export function underIn(typed: string): Under {
  const rpm = RPM.exec(typed)?.[1]?.replace(/[.,' ]/gu, "");
  return { engine: COLD_IN.test(typed) ? "cold" : WARM_IN.test(typed) ? "warm" : null, rpm: rpm === undefined ? null : Number(rpm) };
}

/** Does a typed value name how it holds? Then it is shown as it was typed. */
export const saysConditions = (typed: string): boolean => ANY_IN.some((pattern) => pattern.test(typed));
