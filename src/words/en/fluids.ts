// Hydraulic fluids in English: what must not meet in the brakes, and what a mix is worth.

import type { FluidClassName, StrangeFluidName } from "../../trade/fluids.ts";

type Named = FluidClassName | "brake fluid";

type Put = {
  readonly nickname: string;
  readonly of: "brakes" | "clutch";
  readonly inside: Named;
  readonly added: Named | StrangeFluidName;
  readonly worth: FluidClassName | null;
  readonly wet: number | null;
  readonly changed?: true;
  readonly seals?: true;
};

const FAMILY: Readonly<Record<FluidClassName, string>> = {
  "DOT 3": "glycol",
  "DOT 4": "glycol",
  "DOT 5.1": "glycol",
  "DOT 5": "silicone",
  "mineral oil": "mineral oil",
};

/** "DOT 5 is silicone: never mix it with DOT 3 (glycol) …": of one class, what must not meet it. */
export const neverMix = (name: FluidClassName, never: readonly FluidClassName[], list: (names: readonly string[]) => string): string => {
  const others = [...new Set(never.map((other) => FAMILY[other]))].map((family) => {
    const names = never.filter((other) => FAMILY[other] === family);
    return names.length === 1 && names[0] === family ? family : `${list(names)} (${family})`;
  });
  const is = name === FAMILY[name] ? "Mineral oil is a family of its own" : `${name} is ${FAMILY[name]}`;
  return `${is}: never mix it with ${others.join(" or ")}. Seals swell and the brake can go.`;
};

/** Under a spec that names a class: what never mixes with it, and that the bike is entered with such. */
export const fluidOfSpec = (
  { name, never, fitted }: { readonly name: FluidClassName; readonly never: readonly FluidClassName[]; readonly fitted: FluidClassName | null },
  list: (names: readonly string[]) => string,
): readonly string[] => [
  neverMix(name, never, list),
  ...(fitted === null ? [] : [`By /bike fitted it has ${fitted}: look at the cap, and put right whichever of the two is wrong before any fluid is added.`]),
];

type Entered =
  | { readonly of: "brakes"; readonly now: FluidClassName; readonly before: FluidClassName | null; readonly never: readonly FluidClassName[] }
  | { readonly of: "clutch"; readonly now: "brake fluid" | "mineral oil"; readonly before: "brake fluid" | "mineral oil" | null };

/** Under an entry of what is in the brakes or the clutch: what never goes in with it, and that an entry changes nothing in the lines. */
export const fluidEntered = (entered: Entered, list: (names: readonly string[]) => string): readonly string[] => {
  if (entered.of === "clutch") {
    const other = entered.now === "mineral oil" ? "brake fluid" : "mineral oil";
    return [
      `Clutch on ${entered.now}: never put ${other} in. Its seals swell and the clutch goes.`,
      ...(entered.before === other ? [inLines(entered.before)] : []),
    ];
  }
  const { now, before, never } = entered;
  return [neverMix(now, never, list), ...(before !== null && never.includes(before) ? [inLines(before)] : [])];
};
const inLines = (before: string): string =>
  `If ${before} is still in there, do not add to it: the bike's maker must allow the other, and it all has to be flushed and cleaned first.`;

/** A class with its family behind it; what is a family of its own, or in none, alone. */
const withFamily = (name: Named | StrangeFluidName, joined: string): string => {
  const family = (FAMILY as Readonly<Record<string, string>>)[name];
  return family === undefined || family === name ? name : `${name}${joined}${family}`;
};

/** What has to be done before it is ridden. */
const before = (seals: boolean, of: "brakes" | "clutch"): string =>
  seals
    ? `A flush alone is too little: rubber that it has reached swells or goes soft, so ${of === "brakes" ? "do not work the brake and " : ""}have a workshop clean it all and renew the seals and hoses too.`
    : "Have it all flushed first.";

/** Said of what no circuit takes. */
const STRANGE: Partial<Record<StrangeFluidName, string>> = {
  water: "boils at 100 °C, where the brake then goes, and rusts what it stands in",
  coolant: "is mostly water: it boils, where the brake then goes, and rusts what it stands in",
  "washer fluid": "is mostly water: it boils, where the brake then goes, and rusts what it stands in",
};

/** A fluid other than the bike's own was put in. */
export const fluidPut = ({ nickname, of, inside, added, worth, wet, changed, seals }: Put): string => {
  const whose = `${nickname}${of === "clutch" ? "'s clutch" : ""} is entered with ${withFamily(inside, ", ")}`;
  const wrong = "If the entry is wrong, put it right with /bike fitted.";
  if (changed === true)
    return `${added} boils sooner than ${inside}, with which ${nickname} is entered${wet === null ? "" : `: from ${wet} °C once it has drawn water (49 CFR 571.116)`}. The cap names the least class: if it asks for ${inside}, change it again before you ride hard; if ${added} is right, enter it: /bike fitted part:brake fluid choice:${added}.`;
  if (worth !== null)
    return `${added} mixes with ${inside}; count the mix as ${worth}${wet === null ? "" : `, which boils from ${wet} °C once it has drawn water (49 CFR 571.116)`}.`;
  const part = of === "clutch" ? "clutch" : "brake";
  const strange = (STRANGE as Readonly<Record<string, string>>)[added];
  if (strange !== undefined)
    return `Do not ride: ${added} went in. It ${strange.replaceAll("the brake", `the ${part}`)}. ${before(false, of)} ${whose[0]?.toUpperCase()}${whose.slice(1)}.`;
  if (!(added in FAMILY) && added !== "brake fluid" && seals !== true)
    return `Do not ride: ${added} went in, ${whose}, and that is no fluid for it. ${before(false, of)} ${wrong}`;
  return `Do not ride: ${added === withFamily(added, "") ? `${added} went in` : withFamily(added, " is ")}, ${whose}, and the two never mix: seals swell and the ${part} can go. ${before(seals === true, of)} ${wrong}`;
};

/** A fluid that nobody here knows was put in. */
export const fluidUnknown = ({
  nickname,
  of,
  inside,
  words,
}: {
  readonly nickname: string;
  readonly of: "brakes" | "clutch";
  readonly inside: Named;
  readonly words: string;
}): string =>
  `I know no ${of === "brakes" ? "brake" : "clutch"} fluid “${words}”; kept as typed. ${nickname}${of === "clutch" ? "'s clutch" : ""} is entered with ${withFamily(inside, ", ")}: read the bottle, and do not ride until you know that it is that, since another kind swells the seals and the ${of === "brakes" ? "brake" : "clutch"} can go.`;
