// Twenty thousand messages printed in random styles, each read back as it was.

import fc from "fast-check";
import { test } from "vitest";
import { generated } from "../message/generated.ts";
import { readBack } from "../message/read-back.ts";

test("twenty thousand readings in random styles come back as they were", () => {
  fc.assert(fc.property(generated, readBack), { numRuns: 20_000 });
});
