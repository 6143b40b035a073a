// A drawing as a file that goes with an answer, with what it shows in words.

import type { Attached } from "../../src/chat/reply.ts";
import { WIDE } from "../../src/picture/look.ts";
import { render } from "../../src/picture/render.ts";
import type { Words } from "../../src/words/en/english.ts";

/** @param name of the file, without its ending @param width in pixels; as wide as a page where none is given */
export const drawn = async (name: string, svg: string, alt: string, { pictures }: Words, width: number = WIDE): Promise<Attached> => ({
  ...{ name: `${name}.png`, type: "image/png", alt },
  bytes: await render(svg, width, pictures.lacking()),
});
