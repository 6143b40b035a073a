// What was not on a bill: the items of a record as lists to take some out of.

import type { ActionName } from "../../src/chat/action-names.ts";
import type { Action, Said } from "../../src/chat/reply.ts";
import type { BillAmended } from "../../src/usecases/bill.ts";
import type { Words } from "../../src/words/en/english.ts";
import { pickOne, press, said } from "./said.ts";

/** As many as the platform takes in one list. */
const MOST = 25;
/** From so many on a record is likely to say more than was done. */
const MANY = 6;

type Record = { readonly id: string; readonly rev: number; readonly items: readonly { readonly item: string; readonly called: string }[] };

/** As many lists as it takes, told apart by their number. */
export function billLists(name: Extract<ActionName, "work-bill" | "sheet-bill">, subject: string, { rev, items }: Record, label: string): readonly Action[] {
  const lists = Math.ceil(items.length / MOST);
  return Array.from({ length: lists }, (_, n) => {
    const options = items.slice(n * MOST, (n + 1) * MOST).map(({ item, called }) => ({ value: item, label: called }));
    return { ...pickOne(name, `${subject}/${n + 1}`, lists === 1 ? label : `${label} (${n + 1}/${lists})`, options, rev), max: options.length };
  });
}

/** With a record of many items: what of it was not done. */
export function notDoneLists(work: readonly (Record & { readonly detail: { readonly by: string | null } })[], { readings }: Words): readonly Action[] {
  const many = work.filter(({ items }) => items.length >= MANY);
  return many
    .slice(0, 1)
    .flatMap((record) => billLists("work-bill", record.id, record, record.detail.by === null ? readings.labels.notDone : readings.labels.notOnBill));
}

export function sayAmended({ record, rev, nickname, items, changed, back }: BillAmended, { readings }: Words): Said {
  if (back) return said([readings.onBill(nickname, changed)], { actions: billLists("work-bill", record, { id: record, rev, items }, readings.labels.notDone) });
  return said([readings.offBill(nickname, changed, items.length)], { actions: [press("work-bill-back", record, readings.labels.back, rev)] });
}
