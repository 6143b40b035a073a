// Which specs a member's words mean: by name and synonym, with slips of the pen; and which load they name.

import { SPEC_USES, type SpecUse } from "./spec.ts";

/** Names people type, by key: the name on screen first. */
export type SpecNames = Readonly<Record<string, readonly string[]>>;
/** What the open tables are asked for by. `before` and `behind`: what may stand around a mark; `treadOf`: what means the law only beside a place; `battery`: the word for one. */
type TableWords =
  | "loads"
  | "speeds"
  | "tread"
  | "treadOf"
  | "volts"
  | "battery"
  | "fluids"
  | "oils"
  | "threads"
  | "spanners"
  | "threadSizes"
  | "before"
  | "behind";
/** Words of a language around a spec. */
export type SpecWords = {
  readonly names: SpecNames;
  readonly uses: Readonly<Record<SpecUse, readonly string[]>>;
  readonly idle: readonly string[];
  /** "How much oil does it take": words that go with such a verb, and that mean something without it. */
  readonly asking: { readonly does: readonly string[]; readonly beside: readonly string[] };
  readonly tables: Readonly<Record<TableWords, readonly string[]>> & {
    /** Kinds of battery by what riders call them, without the word for a battery. */
    readonly batteries: Readonly<Record<string, readonly string[]>>;
    /** Places of the tread law by what riders call them. */
    readonly places: Readonly<Record<string, readonly string[]>>;
  };
};

/** `keys`: all that the words mean; empty when nothing is near enough, and then `nearest` says what is. `own`: the one whose name was typed in full, though others share the phrase. `exact`: the words are a name, and no more. */
export type FoundSpecs = {
  readonly keys: readonly string[];
  readonly own: string | null;
  readonly exact: boolean;
  readonly use: SpecUse | null;
  readonly nearest: readonly string[];
};

const ENOUGH = 0.6;
const NEAR = 0.25;
const MOST_NEAREST = 4;

/** "Front tyre pressure two-up", "oil", "rear axel". */
export function findSpecs(typed: string, { names, uses, idle, asking }: SpecWords): FoundSpecs {
  const said = folded(typed);
  const use = SPEC_USES.find((each) => uses[each].some((word) => hasPhrase(said, word))) ?? null;
  const without = use === null ? said : uses[use].reduce((text, word) => ` ${text} `.replace(` ${word} `, " ").trim(), said);
  const isAsking = without.split(" ").some((token) => asking.does.includes(token));
  const empty = isAsking ? [...idle, ...asking.does, ...asking.beside] : idle;
  const told = (text: string): string =>
    text
      .split(" ")
      .filter((token) => token !== "" && !empty.includes(token))
      .join(" ");
  const phrase = told(without);
  const tokens = phrase.split(" ");
  if (phrase === "") return { keys: [], own: null, exact: false, use, nearest: [] };
  const own = Object.keys(names).find((key) => folded(names[key]?.[0] ?? "") === phrase) ?? null;
  const exact = Object.keys(names).filter(
    (key) => folded(key) === phrase || (names[key] ?? []).some((name) => folded(name) === phrase || told(folded(name)) === phrase),
  );
  if (exact.length > 0) return { keys: exact, own, exact: true, use, nearest: [] };
  const scored = Object.entries(names)
    .map(([key, all]) => ({ key, score: Math.max(...[key, ...all].map((name) => alike(tokens, folded(name).split(" ")))) }))
    .filter(({ score }) => score >= NEAR)
    .sort((a, b) => b.score - a.score);
  const best = scored[0]?.score ?? 0;
  if (best >= ENOUGH) return { keys: scored.filter(({ score }) => score === best).map(({ key }) => key), own: null, exact: false, use, nearest: [] };
  return { keys: [], own: null, exact: false, use, nearest: scored.slice(0, MOST_NEAREST).map(({ key }) => key) };
}

const folded = (text: string): string =>
  text
    .normalize("NFKC")
    .toLowerCase()
    .replace(/\btire/gu, "tyre")
    .replace(/\bspindle/gu, "axle")
    .replace(/\bback (?=(?:axle|tyre|wheel|brake|disc|rotor|pad|shoe|sprocket|caliper|shock|spring|sag|light)s?\b)/gu, "rear ")
    // A front brake's disc is the front disc, and nothing else of that brake.
    .replace(/\bbrake rotors?\b/gu, "disc")
    .replace(/\bbrake (?=(?:discs?|pads?|shoes?)\b)/gu, "")
    .replace(/[^\p{L}\p{N}]+/gu, " ")
    .trim();
const hasPhrase = (text: string, phrase: string): boolean => ` ${text} `.includes(` ${phrase} `);

/** The share of words that two phrases have in common, a slip counting a little less. */
function alike(a: readonly string[], b: readonly string[]): number {
  let common = 0;
  const left = [...b];
  for (const word of a) {
    const best = left.map((other, n) => ({ n, is: sameWord(word, other) })).sort((x, y) => y.is - x.is)[0];
    if (best === undefined || best.is === 0) continue;
    common += best.is;
    left.splice(best.n, 1);
  }
  return common / (a.length + b.length - common);
}

function sameWord(a: string, b: string): number {
  if (a === b) return 1;
  const [short, long] = a.length < b.length ? [a, b] : [b, a];
  if (short.length >= 3 && long.startsWith(short) && long.length - short.length <= 2) return 0.95;
  const allowed = long.length >= 8 ? 2 : long.length >= 4 ? 1 : 0;
  return allowed > 0 && slips(a, b) <= allowed ? 0.9 : 0;
}

/** Letters added, left out, changed, or two beside one another turned round. Method: optimal string alignment distance. */
function slips(a: string, b: string): number {
  const rows: number[][] = [Array.from({ length: b.length + 1 }, (_, n) => n)];
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    for (let j = 1; j <= b.length; j++) {
      const change = (rows[i - 1]?.[j - 1] ?? 0) + (a[i - 1] === b[j - 1] ? 0 : 1);
      const turned = i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1] ? (rows[i - 2]?.[j - 2] ?? 0) + 1 : Number.POSITIVE_INFINITY;
      row.push(Math.min(change, turned, (rows[i - 1]?.[j] ?? 0) + 1, (row[j - 1] ?? 0) + 1));
    }
    rows.push(row);
  }
  return rows[a.length]?.[b.length] ?? 0;
}
