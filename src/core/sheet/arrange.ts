// The order of a service sheet, an evening at a time, as a technician would take it: by temperature, by what is already apart, by what depends on what.
// Oil is drained warm, straight after a ride; the engine then stands overnight and what wants it cold comes first the evening after;
// what wants it warm again, such as balancing the throttles, comes last, and nothing that wants it cold follows in the same evening.

import type { ItemKey } from "../ids.ts";
import { SYSTEMS } from "../plan/plan.ts";
import type { Apart, Work } from "./how.ts";

/**
 * One thing to do. "tension": chain slack or belt tension after the rear wheel went back in. "brakes": made ready to brake before the bike moves.
 * "stays apart": without these it is not moved, and they go back in another evening.
 */
export type Step =
  | { readonly step: "item"; readonly item: ItemKey }
  | { readonly step: "open" | "close"; readonly part: Apart }
  | { readonly step: "warm up" }
  | { readonly step: "tension" }
  | { readonly step: "stays apart"; readonly parts: readonly Apart[] }
  | { readonly step: "brakes" }
  | { readonly step: "last look" }
  | { readonly step: "test ride" };

/** `starts` warm: straight after a ride; cold: after a night's standing. `minutes`: of the items alone; `unsaid`: how many do not say how long they take. */
export type Evening = {
  readonly starts: "warm" | "cold";
  readonly steps: readonly Step[];
  readonly items: readonly ItemKey[];
  readonly minutes: number;
  readonly unsaid: number;
};

/** Without one of these a bike stands on nothing but its stand. */
const STANDS_ON: readonly Apart[] = ["front wheel", "rear wheel", "front fork"];

/** What is reckoned for an item that does not say, so that an evening ends. */
const UNSAID = 15;
/** An evening of three hours, as many as most people stand in a garage after work. */
export const USUAL_EVENING = 180;

/** @param tension the final drive has a chain or a belt, which is looked at after the rear wheel was out @param longest minutes in an evening; one item that takes longer has an evening to itself */
export function arrange(
  works: readonly Work[],
  { tension, longest = USUAL_EVENING }: { readonly tension: boolean; readonly longest?: number },
): readonly Evening[] {
  const bench = new Bench(works, tension, longest);
  const evenings: Evening[] = [];
  while (bench.left.length > 0) evenings.push(bench.evening());
  const last = evenings.at(-1);
  if (last === undefined) return [];
  return [...evenings.slice(0, -1), { ...last, steps: [...last.steps, { step: "last look" }, { step: "test ride" }] }];
}

/** The bike on its stand: what is still to do, what is apart, whether the engine is hot. */
class Bench {
  left: Work[];
  private readonly keys: ReadonlySet<ItemKey>;
  private readonly apart = new Set<Apart>();
  private hot = false;
  /** Brakes were worked at, or a wheel was out, and nobody has tried them since. */
  private brakes = false;

  private readonly tension: boolean;
  private readonly longest: number;

  constructor(works: readonly Work[], tension: boolean, longest: number) {
    this.tension = tension;
    this.longest = longest;
    this.left = [...works];
    this.keys = new Set(works.map((work) => work.key));
  }

  evening(): Evening {
    const steps: Step[] = [];
    const items: ItemKey[] = [];
    let [minutes, unsaid] = [0, 0];
    const starts = this.startsWarm() ? "warm" : "cold";
    this.hot = starts === "warm";
    const fits = (work: Work): boolean => items.length === 0 || minutes + (work.minutes ?? UNSAID) <= this.longest;
    for (;;) {
      let next = this.next(fits);
      if (next === null && !this.hot && this.mayWarm(fits)) {
        for (const part of [...this.apart].reverse()) this.close(part, steps);
        steps.push({ step: "warm up" });
        this.hot = true;
        next = this.next(fits);
      }
      if (next === null && items.length > 0) break;
      // Rows that wait for each other are a slip in the data, which must not keep anybody from the rest.
      next ??= this.left[0] ?? null;
      if (next === null) break;
      for (const part of next.how.opens) {
        if (this.apart.has(part)) continue;
        this.apart.add(part);
        steps.push({ step: "open", part });
      }
      steps.push({ step: "item", item: next.key });
      items.push(next.key);
      minutes += next.minutes ?? 0;
      if (next.minutes === null) unsaid++;
      this.brakes ||= next.system === "brakes" || next.how.opens.some((part) => part === "front wheel" || part === "rear wheel");
      const taken = next;
      this.left = this.left.filter((work) => work !== taken);
      // What nothing more needs before the engine runs again goes back at once.
      for (const part of [...this.apart].reverse()) if (!this.isNeeded(part)) this.close(part, steps);
    }
    const parts = [...this.apart].filter((part) => STANDS_ON.includes(part));
    if (parts.length > 0) steps.push({ step: "stays apart", parts });
    else if (this.brakes) {
      steps.push({ step: "brakes" });
      this.brakes = false;
    }
    return { starts, steps, items, minutes, unsaid };
  }

  /** Straight from a ride: when something wants the engine warm and waits for nothing that wants it cold. */
  private startsWarm(): boolean {
    return this.apart.size === 0 && this.left.some((work) => work.engine === "warm" && this.isReady(work));
  }

  /** The engine is warmed when all that wants it cold is done, or what is left of it waits for something warm. */
  private mayWarm(fits: (work: Work) => boolean): boolean {
    const cold = this.left.some((work) => work.engine === "cold" && this.isReady(work));
    return !cold && this.left.some((work) => work.engine === "warm" && this.isReady(work, true) && fits(work));
  }

  private next(fits: (work: Work) => boolean): Work | null {
    const can = this.left.filter((work) => this.isReady(work) && fits(work) && (work.engine === "any" || work.engine === (this.hot ? "warm" : "cold")));
    // While it is hot, what has to be apart for cold work too is left together with it.
    const now = this.hot ? can.filter((work) => work.engine === "warm" || !work.how.opens.some((part) => this.isOpenedCold(part))) : can;
    return now.length === 0 ? null : now.reduce((best, work) => (compare(this.rank(work), this.rank(best)) < 0 ? work : best));
  }

  /** What is apart is finished first, then what the engine's heat is for, then what needs nothing more apart, then the order of systems. */
  private rank({ engine, how, system }: Work): readonly number[] {
    const uses = how.opens.filter((part) => this.apart.has(part)).length;
    return [
      this.apart.size > 0 && uses === 0 ? 1 : 0,
      engine === "any" ? 1 : 0,
      how.opens.length - uses,
      how.closed.length > 0 ? 1 : 0,
      SYSTEMS.indexOf(system),
    ];
  }

  private isReady(work: Work, closing = false): boolean {
    if (work.how.after.some((key) => this.keys.has(key) && key !== work.key && this.left.some((each) => each.key === key))) return false;
    return work.how.closed.every((part) => (closing || !this.apart.has(part)) && !this.left.some((each) => each !== work && each.how.opens.includes(part)));
  }

  /** Is a part needed apart before the engine next runs? */
  private isNeeded(part: Apart): boolean {
    return this.left.some((work) => work.how.opens.includes(part) && (this.hot || work.engine !== "warm"));
  }

  private isOpenedCold(part: Apart): boolean {
    return this.left.some((work) => work.engine === "cold" && work.how.opens.includes(part));
  }

  private close(part: Apart, steps: Step[]): void {
    this.apart.delete(part);
    steps.push({ step: "close", part });
    const adjusted = this.left.some((work) => work.key === "chain.adjust" || work.key === "drive-belt.inspect");
    if (part === "rear wheel" && this.tension && !adjusted) steps.push({ step: "tension" });
  }
}

function compare(a: readonly number[], b: readonly number[]): number {
  for (const [n, value] of a.entries()) if (value !== b[n]) return value - (b[n] ?? 0);
  return 0;
}
