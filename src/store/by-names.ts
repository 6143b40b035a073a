// What members call their bikes beside the nicknames. A name means one bike of its owner's; said of another, it moves there.

import { nicknameKey } from "../core/bike.ts";
import type { Instant } from "../core/calendar/dates.ts";
import type { BikeId, MemberId } from "../core/ids.ts";
import type { Db } from "./db.ts";

/** `name` as typed. */
export type ByName = { readonly bike: BikeId; readonly name: string };

export function byNamesRepo(db: Db) {
  return {
    /** A member's by-names, in the order in which they were learned. */
    async ofOwner(owner: MemberId): Promise<ByName[]> {
      const rows = await db.selectFrom("by_names").select(["bike", "name"]).where("owner", "=", owner).orderBy("at").orderBy("name_key").execute();
      return rows.map(({ bike, name }) => ({ bike: bike as BikeId, name }));
    },
    /** Keeps a by-name, or moves the one of that name to the bike that it now means. */
    async put(owner: MemberId, { bike, name }: ByName, at: Instant): Promise<void> {
      const row = { owner, name_key: nicknameKey(name), name, bike, at };
      await db
        .insertInto("by_names")
        .values(row)
        .onConflict((c) => c.columns(["owner", "name_key"]).doUpdateSet(row))
        .execute();
    },
    /** False when the bike had none of that name. */
    async remove(owner: MemberId, { bike, name }: ByName): Promise<boolean> {
      const done = await db
        .deleteFrom("by_names")
        .where("owner", "=", owner)
        .where("bike", "=", bike)
        .where("name_key", "=", nicknameKey(name))
        .executeTakeFirst();
      return done.numDeletedRows > 0n;
    },
  };
}
