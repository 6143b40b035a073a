// Words looked up in the lists of a language: the lists are long, and each word of a message is asked for in many of them.

const sets = new WeakMap<readonly string[], ReadonlySet<string>>();
const maps = new WeakMap<object, ReadonlyMap<string, unknown>>();

/** Is a word one of a list? The list is turned into a set once. */
export function among(list: readonly string[], word: string | null): boolean {
  if (word === null || word === "") return false;
  let set = sets.get(list);
  if (set === undefined) {
    set = new Set(list);
    sets.set(list, set);
  }
  return set.has(word);
}

/** What a table of a language has for a word; undefined for all else, names that every object has included. */
export function under<T>(table: Readonly<Record<string, T>>, word: string | null): T | undefined {
  if (word === null || word === "") return undefined;
  let map = maps.get(table) as ReadonlyMap<string, T> | undefined;
  if (map === undefined) {
    map = new Map(Object.entries(table));
    maps.set(table, map);
  }
  return map.get(word);
}
