// How the tyres on a bike are built, where one end is new: what is mixed is said, as far as it is known.

import type { DetailWords } from "../core/reading/detail-words.ts";
import { type Construction, readMarking } from "../core/tyre/marking.ts";
import { constructionsIn } from "../message/construction-said.ts";
import type { Repos } from "../store/store.ts";
import type { WorkRecord } from "../store/work.ts";
import { LOAD_KILOGRAMS, SPEED_KMH } from "../trade/tyres.ts";
import { type Ctx, languagesOf } from "./context.ts";
import { fittedAt } from "./fitted.ts";
import type { Garaged } from "./garage.ts";
import { endsNew } from "./judge.ts";
import { specFor, specsOf } from "./specs.ts";

/** One end as it is known: by what was typed when its tyre was fitted, else by the size that is entered for the bike. Null: neither tells. */
export type Built = { readonly construction: Construction; readonly typed: string; readonly by: "fitted" | "size entered" };
/** A bike that has a new tyre. */
export type TyresBuilt = { readonly nickname: string; readonly front: Built | null; readonly rear: Built | null };

/** How a tyre is built by what was typed of it, its word before its marking; null where neither tells, or several words say several things. */
export function constructionOf(typed: string, languages: readonly Pick<DetailWords, "constructions">[]): Construction | null {
  for (const { constructions } of languages) {
    const named = new Set(constructionsIn(typed, constructions).map(({ is }) => is));
    if (named.size > 0) return named.size === 1 ? ([...named][0] ?? null) : null;
  }
  return readMarking(typed, { loads: LOAD_KILOGRAMS, speeds: SPEED_KMH })?.construction ?? null;
}

/** How both ends are built, of each bike on which work just saved put one new tyre, or two that do not match. @param afters the bikes with that work */
export async function tyresBuilt(q: Repos, ctx: Ctx, afters: readonly Garaged[], saved: readonly WorkRecord[]): Promise<readonly TyresBuilt[]> {
  const built: TyresBuilt[] = [];
  for (const g of afters) {
    const news = endsNew(saved.filter(({ bike }) => bike === g.bike.id).flatMap(({ items }) => items));
    if (news === 0) continue;
    const specs = await specsOf(q, g.bike, null);
    const end = (place: "front" | "rear"): Built | null => {
      const item = `${place}-tyre.replace`;
      const fit = fittedAt({ work: g.work, refitted: g.facts.refitted, fittings: g.facts.fittings }, item);
      const words = fit?.detail?.parts.find((part) => part.item === item)?.words ?? null;
      const construction = words === null ? null : constructionOf(words, languagesOf(ctx));
      if (words !== null && construction !== null) return { construction, typed: words, by: "fitted" };
      // A tyre that went on since may be of another size than the papers name.
      const spec = specFor(specs, g.bike, `${place} tyre size`);
      const typed = fit === null && spec.is === "one" ? spec.spec.typed : null;
      const entered = typed === null ? null : constructionOf(typed, languagesOf(ctx));
      return typed === null || entered === null ? null : { construction: entered, typed, by: "size entered" };
    };
    const [front, rear] = [end("front"), end("rear")];
    // Two new ones are told only where they do not match.
    const match = front === null || rear === null || front.construction === rear.construction;
    if (news === 1 || !match) built.push({ nickname: g.bike.nickname, front, rear });
  }
  return built;
}
