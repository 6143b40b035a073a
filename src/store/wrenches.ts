// A member's torque wrenches and pressure gauges.

import { nicknameKey } from "../core/bike.ts";
import type { Instant } from "../core/calendar/dates.ts";
import type { MemberId } from "../core/ids.ts";
import { toCanonical, type UnitId } from "../core/quantity/units.ts";
import type { Drive, Wrench, WrenchKind } from "../core/torque/wrench.ts";
import type { Db } from "./db.ts";

export function wrenchesRepo(db: Db) {
  return {
    /** From the smallest scale to the largest. */
    async ofOwner(owner: MemberId): Promise<Wrench[]> {
      const rows = await db.selectFrom("wrenches").selectAll().where("owner", "=", owner).orderBy("name_key").execute();
      const wrenches = rows.map(({ id, name, low, high, step, unit, accuracy, drive, kind }) => ({
        ...{ id, name, low, high, step, unit: unit as UnitId, accuracy },
        ...{ drive: drive as Drive | null, kind: kind as WrenchKind | null },
      }));
      return wrenches.sort((a, b) => toCanonical(a.high, a.unit) - toCanonical(b.high, b.unit));
    },
    /** Lists a wrench, or lists one of the same name anew. */
    async put(owner: MemberId, wrench: Wrench, at: Instant): Promise<void> {
      const { id, ...row } = { ...wrench, owner, name_key: nicknameKey(wrench.name), at };
      await db
        .insertInto("wrenches")
        .values({ id, ...row })
        .onConflict((c) => c.columns(["owner", "name_key"]).doUpdateSet(row))
        .execute();
    },
    /** False when there was none of that name. */
    async remove(owner: MemberId, name: string): Promise<boolean> {
      const done = await db.deleteFrom("wrenches").where("owner", "=", owner).where("name_key", "=", nicknameKey(name)).executeTakeFirst();
      return done.numDeletedRows > 0n;
    },
  };
}
