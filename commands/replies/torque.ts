// What to set, as words and as a drawing: the best wrench first, then what the others lack.

import type { Attached, Said } from "../../src/chat/reply.ts";
import { drawAdapter } from "../../src/picture/adapter-drawing.ts";
import { render } from "../../src/picture/render.ts";
import type { SetAnswer } from "../../src/usecases/torque.ts";
import type { Words } from "../../src/words/en/english.ts";
import { said } from "./said.ts";

/** Pixels across: sharp on a phone, small to send. */
const WIDTH = 900;

const bestOf = ({ fits }: SetAnswer) => fits.find((fit) => fit.setting !== null) ?? null;

export function sayTorque(answer: SetAnswer, { torque }: Words): Said {
  const { target, atWrench, geometry, fits, borrow } = answer;
  const best = bestOf(answer);
  const others = fits.filter((fit) => fit.setting !== null && fit !== best);
  const single = target.from === target.to;
  const lines = [
    ...(best === null ? [] : [torque.set(best), single ? torque.reach(best) : torque.keeps(best), ...(best.lowOnScale ? [torque.lowOnScale(best)] : [])]),
    ...(geometry === null ? [torque.same(target, best?.wrench.unit ?? "N·m")] : [torque.adapted(target, atWrench, geometry), torque.grip()]),
    ...others.map((fit) => `- ${torque.set(fit)}`),
    ...(best === null ? fits.map((fit) => `- ${torque.cannot(fit)}`) : []),
    ...(fits.length === 0 ? [torque.noneListed()] : best === null ? [torque.borrow(atWrench, borrow)] : []),
  ];
  const clicks = best === null || best.wrench.kind === null || best.wrench.kind === "click";
  return said(lines, { caution: clicks ? `${torque.caution} ${torque.slack}` : torque.caution });
}

/** The wrench and its adapter; nothing without one. */
export async function drawTorque(answer: SetAnswer, { torque }: Words): Promise<readonly Attached[]> {
  const { target, atWrench, geometry } = answer;
  if (geometry === null) return [];
  const { texts, alt } = torque.drawing(target, atWrench, geometry, bestOf(answer));
  const svg = drawAdapter({ lever: geometry.lever.millimetres, adapter: geometry.adapter.millimetres, angle: geometry.angle, texts });
  return [{ name: "adapter.png", type: "image/png", bytes: await render(svg, WIDTH), alt }];
}
