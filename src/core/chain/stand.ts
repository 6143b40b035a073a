// How a bike has to stand for its manual's chain slack to hold: taken up or let out by its own weight and its rider's, the same chain reads otherwise.

/** The ways that manuals name; each is also a condition that a reading is taken under. */
export const STANDS = ["upright", "on the side stand", "under load"] as const;
export type Stand = (typeof STANDS)[number];

/** As manuals print it, in the languages that are read; of a text that names several, a rider on it counts before all. */
const PRINTED: readonly (readonly [RegExp, Stand])[] = [
  [/\b(?:rider on|rider (?:seated|aboard)|with (?:the|a) rider|laden|under load|mit fahrer|belastet)\b/iu, "under load"],
  [/\b(?:side ?-?stand|prop ?stand|seitenst[äa]nder)/iu, "on the side stand"],
  [/\b(?:upright|cent(?:re|er) ?-?stand|main ?stand|paddock ?stand|rear wheel (?:up|raised|off the ground)|hauptst[äa]nder|aufrecht)/iu, "upright"],
];

/** The stand that a typed figure names, "25-35 mm on the side stand"; null where it names none. */
export const standIn = (text: string): Stand | null => PRINTED.find(([printed]) => printed.test(text))?.[1] ?? null;

/**
 * Was it read otherwise than the figure holds? A rider on it counts, whatever else was said.
 * @param said the conditions of the reading; saying nothing of it is not otherwise
 */
export const standsOtherwise = (stand: Stand, said: readonly string[]): boolean =>
  stand === "under load"
    ? !said.includes(stand) && STANDS.some((each) => said.includes(each))
    : said.includes("under load") || (!said.includes(stand) && STANDS.some((each) => said.includes(each)));
