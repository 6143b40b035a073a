// What to set, as words: the best wrench first, then what the others lack.

import type { Said } from "../../src/chat/reply.ts";
import type { SetAnswer } from "../../src/usecases/torque.ts";
import type { Words } from "../../src/words/en/english.ts";
import { said } from "./said.ts";

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
