// Readings printed in random styles are read back as they were; ten thousand of them in test/long.

import fc from "fast-check";
import { test } from "vitest";
import { generated } from "./generated.ts";
import { readBack } from "./read-back.ts";

test("readings in random styles come back as they were", () => {
  fc.assert(fc.property(generated, readBack), { numRuns: 400 });
}, 60_000);
