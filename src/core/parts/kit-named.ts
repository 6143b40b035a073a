// Which of a kit the words of a job name.

/** How a language names what belongs to a kit, by part; one name may be of several. `whole`: words for all of it. */
export type KitWords = { readonly names: Readonly<Record<string, readonly string[]>>; readonly whole: readonly string[] };

/** The parts of a kit that words name, the longer name first ("rear sprocket" is no front one); all of them where they name it whole, or none. */
export function kitNamed(kit: readonly string[], said: string, languages: readonly KitWords[]): readonly string[] {
  const names = languages
    .flatMap((each) => Object.entries(each.names).flatMap(([part, called]) => called.map((name) => ({ part, name }))))
    .toSorted((a, b) => b.name.length - a.name.length);
  let left = ` ${said
    .toLowerCase()
    .replace(/[^\p{L}]+/gu, " ")
    .trim()} `;
  const isWhole = languages.some(({ whole }) => whole.some((word) => left.includes(` ${word} `)));
  const named = new Set<string>();
  for (const { name } of names) {
    if (!left.includes(` ${name} `)) continue;
    for (const each of names) if (each.name === name) named.add(each.part);
    left = left.replaceAll(` ${name} `, "  ");
  }
  const parts = kit.filter((part) => named.has(part));
  return isWhole || parts.length === 0 ? kit : parts;
}
