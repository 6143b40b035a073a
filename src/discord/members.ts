// Asked of the platform about a member, each time anew.

import { type Client, PermissionFlagsBits, Routes } from "discord.js";
import type { GroupId, MemberId } from "../core/ids.ts";
import { again, CODES, codeOf, isPassing } from "./again.ts";

/** May a member manage a group: asked of the platform each time, since a direct message says nothing of it and a right may have been taken away. */
export async function mayManage(client: Client, member: MemberId, group: GroupId): Promise<boolean> {
  const guild = client.guilds.cache.get(group);
  if (guild === undefined) return false;
  if (guild.ownerId === member) return true;
  const there = await guild.members.fetch({ user: member, force: true }).catch(() => null);
  return there?.permissions.has(PermissionFlagsBits.ManageGuild) ?? false;
}

/** Whether a member is still in a group, whichever process serves it. "not known": the platform was not there. @param waits before each further try */
export async function isStillIn(client: Client, group: GroupId, member: MemberId, waits: readonly number[]): Promise<"there" | "left" | "not known"> {
  try {
    await again(() => client.rest.get(Routes.guildMember(group, member)), waits);
    return "there";
  } catch (error) {
    if (codeOf(error) === CODES.unknownMember) return "left";
    // What the platform will not say, the sending itself finds out.
    return isPassing(error) ? "not known" : "there";
  }
}
