// Pictures as files that go with an answer, each with what it shows in words.

import type { Attached, Said } from "../../src/chat/reply.ts";
import { drawGroup } from "../../src/picture/group-drawing.ts";
import { drawNext } from "../../src/picture/next-drawing.ts";
import { drawOdometer } from "../../src/picture/odometer-drawing.ts";
import { drawPressure } from "../../src/picture/pressure-drawing.ts";
import { drawWear } from "../../src/picture/wear-drawing.ts";
import type { GroupPictured } from "../../src/usecases/picture-group.ts";
import type { NextShown } from "../../src/usecases/picture-next.ts";
import type { ReadingPicture, ReadingPictured } from "../../src/usecases/picture-reading.ts";
import type { Words } from "../../src/words/en/english.ts";
import { drawn } from "./drawn.ts";
import { said } from "./said.ts";

/** Several of one answer have names of their own. */
const numbered = (name: string, at: number, all: number): string => (all === 1 ? name : `${name}-${at + 1}`);

/** What comes next, a picture a bike. */
export const drawNexts = (shown: readonly NextShown[], words: Words): Promise<readonly Attached[]> =>
  Promise.all(
    shown.map((each, at) => {
      const { drawing, alt } = words.pictures.next(each);
      return drawn(numbered("what-comes-next", at, shown.length), drawNext(drawing), alt, words);
    }),
  );

/** The same in words: whoever sees no picture misses nothing. */
export const sayPictured = (out: ReadingPictured, words: Words): Said => said([...told(out, words).lines], { caution: words.caution(cautionOf(out)) });

const CAUTIONS = { odometer: null, tread: "tyres", pressure: "tyres", pads: "brakes", chain: "moving chain" } as const satisfies Record<
  ReadingPicture,
  string | null
>;

/** A bike without a chain has none to be caught in; a drum's lining is dust, too. */
function cautionOf(out: ReadingPictured) {
  if (out.pictured === "chain" && out.shown.fitted.finalDrive !== "chain" && out.shown.panels.length === 0) return null;
  if (out.pictured === "pads" && out.shown.panels.some(({ part }) => part.endsWith("shoes"))) return "drum dust" as const;
  return CAUTIONS[out.pictured];
}

/** One picture; none of nothing. */
export async function drawPictured(out: ReadingPictured, words: Words): Promise<readonly Attached[]> {
  const { svg, alt } = told(out, words);
  return svg === null ? [] : [await drawn(out.pictured, svg(), alt, words)];
}

function told(out: ReadingPictured, { pictures }: Words): { readonly lines: readonly string[]; readonly alt: string; readonly svg: (() => string) | null } {
  switch (out.pictured) {
    case "odometer": {
      const { drawing, ...rest } = pictures.odometer(out.shown);
      return { ...rest, svg: drawing.points.length === 0 ? null : () => drawOdometer(drawing) };
    }
    case "tread":
    case "pads":
    case "chain": {
      const { drawing, ...rest } = pictures.wear(out.pictured, out.shown);
      return { ...rest, svg: drawing.panels.length === 0 ? null : () => drawWear(drawing) };
    }
    case "pressure": {
      const { drawing, ...rest } = pictures.pressure(out.shown);
      return { ...rest, svg: drawing.panels.length === 0 ? null : () => drawPressure(drawing) };
    }
  }
}

/** The group's bikes; nothing while none is in it. */
export async function drawGroupPicture(shown: GroupPictured, words: Words): Promise<readonly Attached[]> {
  const { drawing, alt } = words.pictures.group(shown);
  return drawing.rows.length === 0 ? [] : [await drawn("group", drawGroup(drawing), alt, words)];
}
