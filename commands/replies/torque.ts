// What to set, as words: the best wrench first, then what the others lack.

import type { Said } from "../../src/chat/reply.ts";
import type { SetAnswer } from "../../src/usecases/torque.ts";
import type { Words } from "../../src/words/en/english.ts";
import { said } from "./said.ts";

export function sayTorque({ target, atWrench, adapted, fits }: SetAnswer, { torque }: Words): Said {
  const able = fits.filter((fit) => fit.setting !== null);
  const [best, ...others] = able;
  const single = target.from === target.to;
  const lines = [
    ...(best === undefined ? [] : [torque.set(best), single ? torque.reach(best) : torque.keeps(best), ...(best.lowOnScale ? [torque.lowOnScale(best)] : [])]),
    ...(adapted ? [torque.adapted(target, atWrench)] : [torque.same(target)]),
    ...others.map((fit) => `- ${torque.set(fit)}`),
    ...(best === undefined ? fits.map((fit) => `- ${torque.cannot(fit)}`) : []),
    ...(fits.length === 0 ? [torque.noneListed()] : best === undefined ? [torque.borrow(atWrench)] : []),
  ];
  return said(lines, { caution: torque.caution });
}
