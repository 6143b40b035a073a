// What a judgement lacked, given by a press or a small form.

import { refused } from "../../src/usecases/refusals.ts";
import { HOW, type How, sayHow, type ToldHow } from "../../src/usecases/say-how.ts";
import { handler, shapeOf } from "../define.ts";
import { howForm, sayToldHow, toldHow } from "../replies/say-how.ts";

const data = shapeOf<ToldHow>(toldHow);
const partsOf = (subject: string): { readonly reading: string; readonly how: How | null } => {
  const [reading = "", said = ""] = subject.split(".");
  return { reading, how: HOW.find((each) => each === said) ?? null };
};

export const sayHowPress = handler<ToldHow>({
  kind: "press",
  visibility: "private",
  data,
  run: async (ctx, { subject }) => {
    const { reading, how } = partsOf(subject);
    return how === null ? refused({ why: "gone" }) : sayHow(ctx, { reading, how });
  },
  say: sayToldHow,
});
export const sayHowForm = handler<ToldHow>({
  kind: "form",
  visibility: "private",
  data,
  open: async (_ctx, { subject }, words) => {
    const { how } = partsOf(subject);
    return how === "rpm" || how === "pitches" ? { is: "done", value: howForm(how, words) } : refused({ why: "gone" });
  },
  run: async (ctx, { subject, fields }) => {
    const { reading, how } = partsOf(subject);
    return how === null ? refused({ why: "gone" }) : sayHow(ctx, { reading, how, figure: fields.figure ?? "" });
  },
  say: sayToldHow,
});
