// A group's settings as words.

import type { Said } from "../../src/chat/reply.ts";
import type { GroupShown } from "../../src/usecases/settings.ts";
import type { Words } from "../../src/words/en/english.ts";
import { said } from "./said.ts";

export const sayGroup = (g: GroupShown, words: Words): Said =>
  said([
    ...(g.changed ? [words.settings.saved()] : []),
    ...words.settings.group(g),
    words.digest.setting(g.digest, g.hasChannel),
    ...words.settings.off(g.off, "/group"),
    words.settings.reads(g),
  ]);
