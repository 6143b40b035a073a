/** Raised by a release that changes a rule of the schedule or the trade's data: bikes looked at by an older one are looked at again. */
export const RULES_VERSION = 26;
