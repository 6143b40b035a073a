// What to set, as words and as a drawing: the best wrench first, then what the others lack.

import type { Attached, Said } from "../../src/chat/reply.ts";
import type { Wrench } from "../../src/core/torque/wrench.ts";
import { drawAdapter } from "../../src/picture/adapter-drawing.ts";
import type { SetAnswer } from "../../src/usecases/torque.ts";
import type { Words } from "../../src/words/en/english.ts";
import { drawn } from "./drawn.ts";
import { said } from "./said.ts";

/** Pixels across: sharp on a phone, small to send. */
const WIDTH = 900;

const bestOf = ({ fits }: SetAnswer) => fits.find((fit) => fit.setting !== null) ?? null;

/** Whether it is, or may be, a wrench that is set beforehand and so put away slack. */
export const beforehand = (wrench: Wrench | null): boolean => wrench === null || wrench.kind === null || wrench.kind === "click";

export function sayTorque(answer: SetAnswer, { torque }: Words): Said {
  const { target, atWrench, geometry, fits, borrow } = answer;
  const best = bestOf(answer);
  const others = fits.filter((fit) => fit.setting !== null && fit !== best);
  const single = target.from === target.to;
  const lines = [
    ...(best === null ? [] : [torque.set(best), single ? torque.reach(best) : torque.keeps(best)]),
    ...(geometry === null ? [torque.same(target, best?.wrench.unit ?? "N·m")] : [torque.adapted(target, atWrench, geometry), torque.grip()]),
    ...others.map((fit) => `- ${torque.set(fit)}`),
    ...(best === null ? fits.map((fit) => `- ${torque.cannot(fit)}`) : []),
    ...(fits.length === 0 ? [torque.noneListed()] : []),
    ...(best === null ? [torque.borrow(atWrench, borrow, fits.length > 0)] : []),
  ];
  return said(lines, { caution: beforehand(best?.wrench ?? null) ? `${torque.caution} ${torque.slack}` : torque.caution });
}

/** The wrench and its adapter; nothing without one. */
export async function drawTorque(answer: SetAnswer, words: Words): Promise<readonly Attached[]> {
  const { target, atWrench, geometry } = answer;
  if (geometry === null) return [];
  const { texts, alt } = words.torque.drawing(target, atWrench, geometry, bestOf(answer));
  const svg = drawAdapter({ lever: geometry.lever.millimetres, adapter: geometry.adapter.millimetres, angle: geometry.angle, texts });
  return [await drawn("adapter", svg, alt, words, WIDTH)];
}
