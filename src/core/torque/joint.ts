// What a joint holds, as typed. An estimate needs a joint that is named harmless and nothing else: a list of the dangerous ones could never be complete.

/** Joints by kind, with the words people type. `words` stand by themselves or apart ("side stand", "sidestand"); `within` are known inside longer words too ("frontaxle"). */
export type Joints = {
  readonly harmless: Readonly<Record<string, readonly string[]>>;
  readonly dangerous: Readonly<Record<string, { readonly words: readonly string[]; readonly within: readonly string[] }>>;
  /** Words that change nothing beside the name of a joint: "bolt", "left". */
  readonly beside: readonly string[];
};

/** `kind` of a refused joint: what is known to be dangerous in it; null where it is only not known to be harmless. */
export type Joint = { readonly is: "harmless" } | { readonly is: "refused"; readonly kind: string | null };

/** Most words in one name of a joint. */
const LONGEST = 4;
/** "M8", "4": how many, or how big. */
const SIZE = /^m?\d{1,2}$/u;

/** Reads what a joint holds. Of names that hold one another the longer counts: "crash bar" is no handlebar, a "front mudguard" no mudguard. */
export function readJoint(typed: string, joints: Joints): Joint {
  const { harmless, dangerous, beside } = indexOf(joints);
  const words = (typed.toLowerCase().match(/[\p{L}\p{N}]+/gu) ?? []).map(singular);
  let [named, known] = [false, true];
  const kinds: string[] = [];
  for (let n = 0; n < words.length; ) {
    const taken = Math.min(LONGEST, words.length - n);
    const length = Array.from({ length: taken }, (_, m) => taken - m).find((m) => harmless.has(key(n, m)) || dangerous.has(key(n, m))) ?? 1;
    const name = key(n, length);
    const kind = dangerous.get(name) ?? (harmless.has(name) ? undefined : within(name, joints));
    if (kind !== undefined) kinds.push(kind);
    else if (harmless.has(name)) named = true;
    else if (!beside.has(name) && !SIZE.test(name)) known = false;
    n += length;
  }
  return named && known && kinds.length === 0 ? { is: "harmless" } : { is: "refused", kind: kinds[0] ?? null };

  function key(from: number, length: number): string {
    return words.slice(from, from + length).join("");
  }
}

/** Enough of English plurals for parts of a motorcycle. */
const singular = (word: string): string => (word.length > 3 ? word.replace(/(?<=[^s])s$/u, "") : word);
const folded = (name: string): string => name.split(" ").map(singular).join("");

/** The kind whose word is part of a longer one. */
const within = (word: string, { dangerous }: Joints): string | undefined =>
  Object.entries(dangerous).find(([, each]) => each.within.some((part) => word.includes(part)))?.[0];

type Index = { readonly harmless: ReadonlySet<string>; readonly dangerous: ReadonlyMap<string, string>; readonly beside: ReadonlySet<string> };
const indexes = new WeakMap<Joints, Index>();

function indexOf(joints: Joints): Index {
  const known = indexes.get(joints);
  if (known !== undefined) return known;
  const made = {
    harmless: new Set(Object.values(joints.harmless).flatMap((names) => names.map(folded))),
    dangerous: new Map(
      Object.entries(joints.dangerous).flatMap(([kind, { words, within: parts }]) => [...words, ...parts].map((name) => [folded(name), kind] as const)),
    ),
    beside: new Set(joints.beside.map(folded)),
  };
  indexes.set(joints, made);
  return made;
}
