// A conversion as a member's own tools show it: what was asked, every digit on request, and the step of the wrench or gauge that does it.

import type { Bound, Converted } from "../core/quantity/conversion.ts";
import { askConvert } from "../core/quantity/convert-question.ts";
import { type Exact, exactly } from "../core/quantity/exact.ts";
import { roundTo, windowInward } from "../core/quantity/print.ts";
import { decimalsOf, dimensionOf, fromCanonical, toCanonical, type UnitId } from "../core/quantity/units.ts";
import { type Fit, fits, type Wrench } from "../core/torque/wrench.ts";
import type { Ctx } from "./context.ts";
import { done, type Result, refused } from "./refusals.ts";

/** Where one of the member's own tools is set; the window in its unit, rounded inward. `keepsInside` as for any wrench. */
export type OnTool = {
  readonly tool: Wrench;
  readonly setting: number;
  readonly window: { readonly from: number; readonly to: number; readonly decimals: number };
  readonly keepsInside: boolean;
  readonly lowOnScale: boolean;
};
export type ExactAnswer = { readonly unit: UnitId; readonly from: Exact; readonly to: Exact };
export type ConvertAnswer = Converted & { readonly onTool: OnTool | null; readonly digits: readonly ExactAnswer[] };

/** What a member has listed: asked for only where a tool could serve. */
type ToolsOf = () => Promise<readonly Wrench[]>;

/** Answers /convert. @param exact every digit, whatever the question says */
export async function convertTyped(ctx: Ctx, what: string, to: string | null, exact: boolean): Promise<Result<ConvertAnswer>> {
  const asked = askConvert(what, to, ctx.vocabulary, ctx.who.numbers);
  if (asked.is === "refused")
    return refused({ why: "cannot convert", typed: asked.said ?? what, because: asked.why, to, candidates: asked.candidates, word: asked.word });
  return done(await withTools({ ...asked, exactly: exact || asked.exactly }, () => ctx.store.one((q) => q.wrenches.ofOwner(ctx.who.member))));
}

/** A conversion with what the member's tools and the wish for every digit add to it. */
export async function withTools(asked: Converted, toolsOf: ToolsOf): Promise<ConvertAnswer> {
  const measured = dimensionOf(asked.unit);
  const tools = measured === "torque" || measured === "pressure" ? await toolsOf() : [];
  return { ...asked, onTool: onTool(asked, tools), digits: asked.exactly ? digitsOf(asked) : [] };
}

function onTool(asked: Converted, tools: readonly Wrench[]): OnTool | null {
  if (asked.from <= 0) return null;
  const own = tools.filter((tool) => dimensionOf(tool.unit) === dimensionOf(asked.unit));
  const window = { low: toCanonical(asked.from, asked.unit), high: toCanonical(asked.to, asked.unit) };
  const best = asked.bound === null ? fits(window, own)[0] : withinBound(window.low, asked.bound, own);
  if (best === undefined || best.setting === null) return null;
  // The figure asked about is the step itself: nothing is said by saying it.
  if (best.wrench.unit === asked.unit && asked.from === asked.to && best.setting === asked.from) return null;
  const [from, to] = [fromCanonical(window.low, best.wrench.unit), fromCanonical(window.high, best.wrench.unit)];
  const decimals = stepDecimals(best.wrench) + 1;
  const bound = roundTo(from, decimals, asked.bound === "at most" ? "down" : asked.bound === "at least" ? "up" : "nearest");
  const inward = from === to ? { from: bound, to: bound, decimals } : windowInward(from, to, decimals);
  return {
    tool: best.wrench,
    setting: best.setting,
    window: inward,
    keepsInside: asked.bound === null ? best.keepsInside : keepsBound(best, window.low, asked.bound),
    lowOnScale: best.lowOnScale,
  };
}

/** Does the whole error of the tool keep it on the right side? */
const keepsBound = ({ reach }: Fit, figure: number, bound: Bound): boolean =>
  reach !== null && (bound === "at most" ? reach.high <= figure : reach.low >= figure);

/** How far below a maximum, or above a minimum, a tool is still set: farther away it is not of use for that figure. */
const NEAR_BOUND = 0.1;

/** The tool whose step comes nearest to a bound without passing it; one high enough on its scale is taken before one that is not. @param figure canonical */
function withinBound(figure: number, bound: Bound, tools: readonly Wrench[]): Fit | undefined {
  const fitting = tools.flatMap((tool) => {
    // The one step of its scale that lies next to the bound, on the right side.
    const reach = Math.min(toCanonical(tool.step, tool.unit) * (1 - 1e-9), figure * NEAR_BOUND);
    const [fit] = fits(bound === "at most" ? { low: figure - reach, high: figure } : { low: figure, high: figure + reach }, [tool]);
    return fit === undefined || fit.setting === null ? [] : [{ fit, away: Math.abs(toCanonical(fit.setting, tool.unit) - figure) }];
  });
  fitting.sort((a, b) => Number(a.fit.lowOnScale) - Number(b.fit.lowOnScale) || a.away - b.away);
  return fitting[0]?.fit;
}

/** Decimals in which a tool's scale is written: those of its step. */
export const stepDecimals = ({ step, unit }: Pick<Wrench, "step" | "unit">): number =>
  Math.min(decimalsOf(unit) + 2, (String(step).split(".")[1] ?? "").length);

function digitsOf(asked: Converted): readonly ExactAnswer[] {
  return asked.answers.map(({ unit }) => {
    const [a, b] = [exactly(asked.from, asked.fraction, asked.unit, unit), exactly(asked.to, asked.fraction, asked.unit, unit)];
    // Of reciprocal units the larger figure is the smaller amount.
    return Number(a.digits) <= Number(b.digits) ? { unit, from: a, to: b } : { unit, from: b, to: a };
  });
}
