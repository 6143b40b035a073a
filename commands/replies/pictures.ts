// Pictures as files that go with an answer, each with what it shows in words.

import type { Attached } from "../../src/chat/reply.ts";
import { WIDE } from "../../src/picture/look.ts";
import { drawNext } from "../../src/picture/next-drawing.ts";
import { render } from "../../src/picture/render.ts";
import type { NextShown } from "../../src/usecases/picture-next.ts";
import type { Words } from "../../src/words/en/english.ts";

/** A drawing as a file, as wide as its page. */
const attached = async (name: string, svg: string, alt: string): Promise<Attached> => ({
  ...{ name: `${name}.png`, type: "image/png", alt },
  bytes: await render(svg, WIDE),
});

/** Several of one answer have names of their own. */
const numbered = (name: string, at: number, all: number): string => (all === 1 ? name : `${name}-${at + 1}`);

/** What comes next, a picture a bike. */
export const drawNexts = (shown: readonly NextShown[], { pictures }: Words): Promise<readonly Attached[]> =>
  Promise.all(
    shown.map((each, at) => {
      const { drawing, alt } = pictures.next(each);
      return attached(numbered("what-comes-next", at, shown.length), drawNext(drawing), alt);
    }),
  );
