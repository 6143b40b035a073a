// "My battery is lithium", "it has a gel battery": what kind is in a bike, told without any work.

import type { BikeId } from "../core/ids.ts";
import type { Known } from "../core/reading/vocabulary.ts";

/** The kind by its name in the trade's table, and the bike named; null where a text says anything else. */
export function batteryTold(text: string, known: Known): { readonly kind: string; readonly bike: BikeId | null } | null {
  if (text.length > LONGEST || text.includes("?")) return null;
  const vocabularies = [known.vocabulary, ...(known.also ?? []).map(({ vocabulary }) => vocabulary)];
  for (const { details, measuring, articles, onBike, refitted } of vocabularies) {
    let rest = ` ${text
      .toLowerCase()
      .replace(/'s\b/gu, " is")
      .replace(/[^\p{L}\p{N}-]+/gu, " ")
      .trim()} `;
    const take = (names: readonly string[]): string | null => {
      const found = [...names].sort((a, b) => b.length - a.length).find((name) => rest.includes(` ${name} `)) ?? null;
      if (found !== null) rest = rest.replace(` ${found} `, " ");
      return found;
    };
    const kinds = Object.entries(details.batteries).filter(([, names]) => take(names) !== null);
    const [kind] = kinds;
    if (kind === undefined || kinds.length > 1 || (take(measuring.charge.battery) === null && !kind[1].some((name) => isOwnWord(name, text)))) continue;
    const bikes = known.bikes.filter(({ nickname }) => take([nickname.toLowerCase()]) !== null);
    if (take(measuring.charge.has) === null || bikes.length > 1) continue;
    const idle = [...articles, ...onBike, ...refitted.one, ...measuring.charge.idle, ...measuring.charge.has];
    if (rest.split(" ").every((word) => word === "" || idle.includes(word))) return { kind: kind[0], bike: bikes[0]?.id ?? null };
  }
  return null;
}

/** "Lithiumbatterie" names the battery too. */
const isOwnWord = (name: string, text: string): boolean => /batter/u.test(name) && text.toLowerCase().includes(name);

const LONGEST = 80;
