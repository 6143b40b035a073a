// Of a SQLite file: a backup cut off is never taken for one.

import { afterAll, beforeAll, expect, test } from "vitest";
import { crashWhileBackingUp, type Template, template } from "./crash.ts";

let from: Template;
beforeAll(async () => {
  from = await template();
});
afterAll(() => from.drop());

test.each([1, 40])("backing up, at page %i: the next start makes it whole, and nothing else is left", async (nth) => {
  expect(await crashWhileBackingUp(nth, from)).toEqual({ killed: true, left: ["tappet-DATE.sqlite"], whole: true });
});
