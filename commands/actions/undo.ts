// Undo, and what a deleted message's author answers.

import { z } from "zod";
import type { Said } from "../../src/chat/reply.ts";
import { type Undone, undoReading, undoSource } from "../../src/usecases/undo.ts";
import type { Words } from "../../src/words/en/english.ts";
import { handler, shapeOf } from "../define.ts";
import { said } from "../replies/said.ts";
import { undone } from "../shapes.ts";

const data = shapeOf<Undone>(undone);

export const undo = handler<Undone>({
  kind: "press",
  settles: true,
  visibility: "private",
  data,
  run: (ctx, { subject }) => undoSource(ctx, { source: subject }),
  say: sayUndone,
});
export const undoOne = handler<Undone>({
  kind: "press",
  visibility: "private",
  data,
  run: (ctx, { subject }) => undoReading(ctx, { reading: subject }),
  say: sayUndone,
});
export const withdraw = handler<Undone>({
  kind: "press",
  settles: true,
  visibility: "private",
  data,
  run: (ctx, { subject }) => undoSource(ctx, { source: subject }),
  say: sayUndone,
});
export const keep = handler<{ readonly kept: true }>({
  kind: "press",
  settles: true,
  visibility: "private",
  data: shapeOf(z.object({ kept: z.literal(true) })),
  run: async () => ({ is: "done", value: { kept: true } }),
  say: (_out, words) => said([words.readings.kept()]),
});

function sayUndone(out: Undone, words: Words): Said {
  return said(
    out.bikes.map((bike) => {
      const readings = out.readings.filter((r) => r.bike === bike.id).map(words.readings.reading);
      const work = out.work.filter((w) => w.bike === bike.id).flatMap((w) => called(w));
      const defects = out.defects.filter((d) => d.bike === bike.id).map((d) => `“${d.words}”`);
      const again = out.reopened.filter((d) => d.bike === bike.id).map((d) => d.words);
      const lapsed = out.lapsed.filter((d) => d.bike === bike.id).map((d) => d.words);
      const noted = out.noted.filter((d) => d.bike === bike.id).map((d) => d.words);
      const restored = out.restored.filter((r) => r.bike === bike.id).map(words.readings.reading);
      return [
        words.readings.undone(bike.nickname, [...readings, ...work, ...defects]),
        ...(restored.length === 0 ? [] : [words.readings.restored(restored)]),
        ...(lapsed.length === 0 ? [] : [words.defects.lapsed(lapsed)]),
        ...(noted.length === 0 ? [] : [words.defects.stillSaid(noted)]),
        ...(again.length === 0 ? [] : [words.defects.reopened(again)]),
      ].join(" ");
    }),
  );
}

/** What a work record is called: its items, else the words that named it. */
const called = (work: Undone["work"][number]): readonly string[] => (work.items.length === 0 ? [work.words] : work.items.map((item) => item.called));
