// A conversion as words.

import type { Said } from "../../src/chat/reply.ts";
import type { ConvertAnswer } from "../../src/usecases/convert.ts";
import type { Words } from "../../src/words/en/english.ts";
import { said } from "./said.ts";

/** Where the member's own tool is set comes first: it is what the hand needs. */
export const sayConversion = (converted: ConvertAnswer, { convert }: Words): Said =>
  said([...convert.onTool(converted), convert.answer(converted), ...convert.digits(converted), ...convert.notes(converted)], {
    caution: convert.caution(converted),
  });
