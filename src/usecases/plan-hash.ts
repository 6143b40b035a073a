// The content address of a plan base: the same plan is kept once, and known again.

import { createHash } from "node:crypto";
import type { PlanBase } from "../core/plan/plan.ts";

/** SHA-256 of what the plan says, in hex. */
export const hashOf = (base: PlanBase): string => createHash("sha256").update(JSON.stringify(base)).digest("hex");
