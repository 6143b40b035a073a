// A figure for less load than the bike was read with: which it is, and how the missing one is entered.

import type { SpecUse } from "../../core/spec/spec.ts";
import type { SpecKey } from "../../trade/spec-keys.ts";
import { englishSpecName } from "./spec-names.ts";
import { lowered } from "./text.ts";

/** `use`: the load that it was read with; null for riding solo. `lesser`: that of the figure known. */
export type LoadSaid = { readonly spec: SpecKey | null; readonly use: SpecUse | null; readonly lesser: SpecUse | null };

/** What to type for the figure of a load. */
export const enterFor = (spec: SpecKey, use: SpecUse | null): string =>
  `/spec what:${lowered(englishSpecName(spec))} value:…${use === null ? "" : ` for:${use}`}`;

/** Behind a verdict by it; empty where the figure is the load's own. */
export const byLesser = ({ spec, use, lesser }: LoadSaid): string =>
  spec === null || use === null || lesser === null ? "" : ` That is the figure for ${lesser}; the one for ${use} is not entered: ${enterFor(spec, use)}`;

/** What is missing where it tells nothing. */
export const needsOwn = ({ spec, use, lesser }: LoadSaid): string =>
  spec === null || use === null || lesser === null
    ? "the figure I know is for less load; enter the one for yours once with /spec"
    : `the figure I know is for less load, ${lesser}; enter the one for ${use} once: ${enterFor(spec, use)}`;

/** " for two-up": where all that is missing is for that load. */
export const forLoad = (each: readonly Pick<LoadSaid, "use">[]): string => {
  const [use, ...others] = new Set(each.map((one) => one.use));
  return use == null || others.length > 0 ? "" : ` for ${use}`;
};
