// An item counted as looked at, once its owner says that the readings were all of it.

import type { BikeId, ItemKey } from "../../src/core/ids.ts";
import type { MessageOutcome } from "../../src/usecases/message-outcome.ts";
import { recordItems } from "../../src/usecases/record-work.ts";
import { handler, shapeOf } from "../define.ts";
import { sayOutcome } from "../replies/message.ts";
import { messageOutcome } from "../shapes.ts";

export const countLooked = handler<MessageOutcome>({
  kind: "press",
  settles: true,
  visibility: "private",
  data: shapeOf<MessageOutcome>(messageOutcome),
  run: (ctx, { subject }) => {
    const [bike = "", item = ""] = subject.split("/").map(decodeURIComponent);
    return recordItems(ctx, { bike: bike as BikeId, items: [item as ItemKey], outcome: "inspected, within limits" });
  },
  say: sayOutcome,
});
