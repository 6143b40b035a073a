// The trade's tables as a library: what a bike of each kind is fitted with, its starter plan, the catalogue of jobs, the cautions.

export { CAUTIONS, type CautionKey } from "./cautions.ts";
export { KINDS, type KindId } from "./kinds.ts";
export { planItem, STANDARD_ITEMS, type StandardItemKey } from "./standard-items.ts";
export { STARTER_PLANS } from "./starter-plans.ts";
