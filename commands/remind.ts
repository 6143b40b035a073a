// /remind: when and where a member's reminders come; their zone and units.

import { z } from "zod";
import { TOPICS } from "../src/core/reminding.ts";
import { given } from "../src/usecases/given.ts";
import { type MemberShown, remindMe } from "../src/usecases/settings.ts";
import { WEEKDAYS } from "../src/words/en/weekdays.ts";
import { define, shapeOf } from "./define.ts";
import { said } from "./replies/said.ts";
import { localDate, unit } from "./shapes.ts";

export const remind = define({
  name: "remind",
  sub: null,
  options: {
    by: { takes: "choice", required: false, choices: ["direct message", "channel", "off"] },
    off: { takes: "choice", required: false, choices: TOPICS },
    on: { takes: "choice", required: false, choices: TOPICS },
    day: { takes: "choice", required: false, choices: WEEKDAYS },
    time: { takes: "text", required: false },
    "quiet-from": { takes: "text", required: false },
    "quiet-to": { takes: "text", required: false },
    zone: { takes: "text", required: false, complete: "zone" },
    distance: { takes: "choice", required: false, choices: ["mi", "km"] },
    pressure: { takes: "choice", required: false, choices: ["psi", "bar", "kPa"] },
    tread: { takes: "choice", required: false, choices: ["mm", "1/32 in", "in"] },
  },
  adminOnly: false,
  visibility: () => "private",
  data: shapeOf<MemberShown>(
    z.object({
      zone: z.string(),
      ownZone: z.boolean(),
      reminders: z.object({
        by: z.enum(["direct message", "channel", "off"]),
        weekday: z.number().int(),
        time: z.string(),
        quiet: z.object({ from: z.string(), to: z.string() }),
        topics: z.partialRecord(z.enum(TOPICS), z.boolean()).optional(),
      }),
      off: z.array(z.enum(TOPICS)),
      distance: unit.nullable(),
      pressure: z.string().nullable(),
      depth: z.string().nullable(),
      troubles: z.array(z.object({ on: localDate, state: z.enum(["failed", "unconfirmed"]), why: z.string().nullable() })),
      changed: z.boolean(),
    }),
  ),
  run: (ctx, { by, off, on, day, time, zone, distance, pressure, tread, "quiet-from": quietFrom, "quiet-to": quietTo }) =>
    remindMe(
      ctx,
      given({
        by,
        off,
        on,
        weekday: day === undefined ? undefined : WEEKDAYS.indexOf(day) + 1,
        time,
        quietFrom,
        quietTo,
        zone,
        distance,
        pressure,
        depth: tread,
      }),
    ),
  say: (m, words) =>
    said([
      ...(m.changed ? [words.settings.saved()] : []),
      words.settings.reminders(m.reminders),
      ...words.settings.off(m.off, "/remind"),
      words.settings.zone(m.zone, m.ownZone),
      words.settings.units(m.distance, m.pressure, m.depth),
      ...m.troubles.map((trouble) => words.settings.trouble(trouble.on, trouble.state, trouble.why)),
    ]),
});
