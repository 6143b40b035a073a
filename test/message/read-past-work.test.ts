// Answers to "what was done last, and how do you know": as vague as they are known.

import { expect, test } from "vitest";
import { type PastWork, readPastWork } from "../../src/message/read-past-work.ts";
import { HERON, knownWith } from "./riders.ts";

const KNOWN = knownWith([HERON]);

/** `2026-03-01..2026-05-31 at 12200 (receipt; by dealer; 8900 EUR)`, the day is Wednesday 25 November 2026. */
function shortOf(past: PastWork | "unknown" | null): string | null {
  if (past === null || past === "unknown") return past;
  const { on, odometer, back, how, by, cost } = past;
  const more = [how, by === null ? null : `by ${by}`, cost === null ? null : `${cost.minor} ${cost.currency}`].filter((each) => each !== null);
  const parts = [
    on === null ? null : `${on.from}..${on.to}`,
    odometer === null ? null : `at ${odometer.value} ${odometer.unit}`,
    back === null ? null : `${back.value} ${back.unit} back`,
    more.length === 0 ? null : `(${more.join("; ")})`,
  ];
  return parts.filter((each) => each !== null).join(" ");
}

test.each([
  ["spring 2023 at 9,800, receipt", "2023-03-01..2023-05-31 at 9800 mi (receipt)"],
  ["at 12,000", "at 12000 mi"],
  ["new at 9,000", "at 9000 mi"],
  ["12,100 mi", "at 12100 mi"],
  ["12,100 km", "at 12100 km"],
  ["it was done at 12k", "at 12000 mi"],
  ["3k ago", "3000 mi back"],
  ["at 12,500 in May", "2026-05-01..2026-05-31 at 12500 mi"],
  ["before I bought it", "0001-01-01..2026-11-25"],
  ["before I bought it at 12,000", "0001-01-01..2026-11-25 at 12000 mi"],
  ["two winters ago", "2024-12-01..2025-02-28"],
  ["last spring, at 12,200 receipt", "2026-03-01..2026-05-31 at 12200 mi (receipt)"],
  ["2024 by the dealer", "2024-01-01..2024-12-31 (by dealer)"],
  ["dealer, May 2025", "2025-05-01..2025-05-31 (by dealer)"],
  ["changed by Miller last May", "2026-05-01..2026-05-31 (by Miller)"],
  ["done by me last summer", "2026-06-01..2026-08-31 (did it)"],
  ["May 2025 by Miller's garage at 12,000, 89 EUR", "2025-05-01..2025-05-31 at 12000 mi (by Miller's garage; 8900 EUR)"],
  ["2025, service book", "2025-01-01..2025-12-31 (service book)"],
  ["just done", "2026-11-25..2026-11-25"],
  ["2 years ago or so", "2024-01-01..2024-12-31"],
  ["end of 2024", "2024-01-01..2024-12-31"],
  ["5/2025", "2025-05-01..2025-05-31"],
  ["2022/23", "2022-01-01..2023-12-31"],
  ["Jan '25", "2025-01-01..2025-01-31"],
  ["at 2019", "2019-01-01..2019-12-31"],
  ["vor zwei Jahren bei 12.000, Rechnung", "2024-01-01..2024-12-31 at 12000 mi (receipt)"],
  ["letzten Frühling, vom Händler", "2026-03-01..2026-05-31 (by Händler)"],
])("%s", (typed, means) => {
  expect(shortOf(readPastWork(typed, KNOWN, "mi"))).toBe(means);
});

test.each(["don't know", "original", "ages ago", "never", "noch original"])("%s is unknown", (typed) => {
  expect(readPastWork(typed, KNOWN, "mi")).toBe("unknown");
});

// A day or a year; two jobs; nothing that says when.
test.each(["Jan 25", "front 2021, rear last autumn", "recently", "every year", "3 services ago", "receipt", "by the dealer", "not done since 2020"])(
  "%s is not guessed at",
  (typed) => {
    expect(readPastWork(typed, KNOWN, "mi")).toBeNull();
  },
);
