// A conversion as words.

import type { Said } from "../../src/chat/reply.ts";
import type { Conversion } from "../../src/core/quantity/convert-question.ts";
import type { Words } from "../../src/words/en/english.ts";
import { said } from "./said.ts";

export const sayConversion = (converted: Extract<Conversion, { is: "converted" }>, words: Words): Said =>
  said([words.convert.answer(converted), ...words.convert.notes(converted)], { caution: words.convert.caution(converted) });
