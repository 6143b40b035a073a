// German words as they are typed where the keyboard has no umlauts: "oel", "bremsbelaege", "ausserdem".

/** Every list and table of words with the other spelling of each word beside it. */
export function withoutUmlauts<T>(words: T): T {
  if (Array.isArray(words)) return [...new Set(words.flatMap((word) => (typeof word === "string" ? [word, plain(word)] : [withoutUmlauts(word)])))] as T;
  if (words === null || typeof words !== "object") return words;
  const entries = Object.entries(words).map(([key, value]): [string, unknown] => [key, withoutUmlauts(value)]);
  return Object.fromEntries([...entries.filter(([key]) => plain(key) !== key).map(([key, value]): [string, unknown] => [plain(key), value]), ...entries]) as T;
}

const plain = (word: string): string => word.replace(/ä/gu, "ae").replace(/ö/gu, "oe").replace(/ü/gu, "ue").replace(/ß/gu, "ss");
