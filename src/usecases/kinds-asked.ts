// Which kinds of reading a few words name, for help.

import type { ReadingKind } from "../core/reading/kinds.ts";
import { kindsNamed } from "../message/how-asked.ts";
import type { Ctx } from "./context.ts";
import { knownOf } from "./own-garage.ts";

/** Empty where they name none, or hold a figure. */
export const kindsAsked = (ctx: Ctx, typed: string): readonly ReadingKind[] => kindsNamed(typed, knownOf(ctx, []));
