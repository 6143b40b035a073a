// How much memory a process holds, as the system counts it.

import { readFile } from "node:fs/promises";

/** Resident megabytes of a process; not a number where the system does not say. */
export async function residentMegabytes(pid: number): Promise<number> {
  const status = await readFile(`/proc/${pid}/status`, "utf8").catch(() => "");
  return Number(/VmRSS:\s+(\d+)/.exec(status)?.[1] ?? Number.NaN) / 1024;
}
