// How riders tell of a part that came off and went on again, in English, and how a piece is named.

import { refitIn } from "../../core/parts/pieces.ts";
import type { RefitWords } from "../../core/reading/vocabulary.ts";
import { capital } from "./text.ts";

const sorts = (end: string, things: readonly string[]): readonly string[] =>
  [end, ...(end === "rear" ? ["back"] : [])].flatMap((side) => things.map((thing) => `${side} ${thing}`));
const PADS = ["brake pads", "pads"];
const SHOES = ["brake shoes", "shoes"];
/** Of the kit the chain is what is counted: a sprocket alone that went back is asked about. */
const SPROCKETS = ["sprocket", "sprockets", "front sprocket", "rear sprocket", "back sprocket", "front and rear sprockets"];
const TYRES = ["tyre", "tire"];
const DISCS = ["brake discs", "brake disc", "discs", "disc", "rotors", "rotor"];

export const ENGLISH_REFIT: RefitWords = {
  refit: [
    ...["refitted", "refit", "reinstalled", "reinstall", "remounted", "remount", "reused", "reuse"],
    ...["re-fitted", "re-fit", "re-installed", "re-install", "re-mounted", "re-mount", "re-used", "re-use"],
  ],
  put: ["put", "fitted", "went", "bolted", "screwed", "mounted", "swapped", "stuck", "slipped", "popped"],
  back: ["back"],
  taken: ["took", "taken", "pulled", "removed", "whipped"],
  off: ["off", "out"],
  on: ["in", "on"],
  one: ["one", "ones"],
  old: ["old", "previous", "earlier", "spare"],
  original: ["original", "first", "stock"],
  some: SPROCKETS,
  kit: {
    item: "chain.replace",
    pieces: {
      chain: ["chain"],
      "front sprocket": ["sprockets", "front sprocket", "both sprockets"],
      "rear sprocket": ["sprockets", "rear sprocket", "back sprocket", "both sprockets"],
    },
    stayed: ["stayed", "stay", "stays", "kept", "keeping", "left", "reused", "original", "remain", "remained"],
  },
  parts: {
    battery: ["battery"],
    "chain and sprockets": ["chain", "chain kit", "chain and sprockets", "drive chain", ...SPROCKETS],
    "drive belt": ["belt", "drive belt"],
    "front tyre": [...TYRES, ...sorts("front", TYRES)],
    "rear tyre": [...TYRES, ...sorts("rear", TYRES)],
    "front brake pads": [...PADS, ...sorts("front", PADS)],
    "rear brake pads": [...PADS, ...sorts("rear", PADS)],
    "front brake shoes": [...SHOES, ...sorts("front", SHOES)],
    "rear brake shoes": [...SHOES, ...sorts("rear", SHOES)],
    "front brake discs": sorts("front", DISCS),
    "rear brake disc": sorts("rear", DISCS),
    "spark plugs": ["plugs", "spark plugs", "plug", "spark plug"],
    "air filter": ["air filter"],
  },
};

const ISO_DAY = /^\d{4}-\d\d-\d\d$/u;
const DAY = new Intl.DateTimeFormat("en-GB", { day: "numeric", month: "long", year: "numeric", timeZone: "UTC" });

const WEEK_AND_YEAR = /^\d{3,4}$/u;

/** "the one first fitted on 3 May 2024", "the one it came with", or what was noted of it. */
export const pieceNamed = (label: string): string =>
  label === ""
    ? "the one it came with"
    : WEEK_AND_YEAR.test(label)
      ? `the one made ${label}`
      : ISO_DAY.test(label)
        ? `the one first fitted on ${DAY.format(new Date(`${label}T00:00:00Z`))}`
        : label;

/** The name under which a piece that was put back on stands among the work; null for any other item. */
export function refitName(key: string): string | null {
  const back = refitIn(key);
  return back === null ? null : `${capital(back.part)} put back on: ${pieceNamed(back.label)}`;
}
