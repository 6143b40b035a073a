// What whoever starts Tappet reads.

type NotRestored =
  | "not there"
  | "in use"
  | "damaged"
  | "none of Tappet's"
  | "of a newer Tappet"
  | "of the other face"
  | "no such folder"
  | "no room"
  | "read only";

export const startWords = {
  badToken: (): string =>
    "The platform does not accept DISCORD_TOKEN. Copy the bot's token again from the platform's developer pages, set it, and start again.",
  unreachable: (why: string): string => `The platform cannot be reached (${why}). Check the connection and DISCORD_API_URL, then start again.`,
  noPrivilege: (): string =>
    "TAPPET_READ_CHANNELS is set, but the platform has not granted the message content privilege, so only what is addressed to the bot is heard. Switch it on in the platform's developer pages, then start again.",
  privilegeGone: (): string =>
    "The platform has taken back the message content privilege. Start again: Tappet then hears only what is addressed to it, until the privilege is switched on again in the platform's developer pages.",
  lineEnded: (code: number): string =>
    `The platform has ended the connection for good (${code}). Start again; if it ends so again, look at the application in the platform's developer pages.`,
  restoreHow: (): string => "Name one backup: npm run restore -- backups/FILE",
  restorePostgres: (): string => "TAPPET_DATABASE names a PostgreSQL database: restore it with the server's own tools (pg_restore, psql).",
  restored: (backup: string, file: string, aside: string | null): string =>
    `${file} is now what it was in ${backup}.${aside === null ? "" : ` What was there before is kept as ${aside}.`} Start Tappet again.`,
  notRestored: (backup: string, file: string, why: NotRestored): string => {
    switch (why) {
      case "not there":
        return `There is no ${backup}. Nothing was changed.`;
      case "in use":
        return `${file} is in use. Stop Tappet first, then restore. Nothing was changed.`;
      case "damaged":
        return `${backup} is damaged. Nothing was changed: choose another backup.`;
      case "none of Tappet's":
        return `${backup} is no database of Tappet's. Nothing was changed.`;
      case "of a newer Tappet":
        return `${backup} is of a newer Tappet. Nothing was changed: start that version, or choose another backup.`;
      case "of the other face":
        return `${backup} is of the practice room, or ${file} is: one does not take the place of the other. Nothing was changed: choose another backup, or name the database in TAPPET_DATABASE.`;
      case "no such folder":
        return `There is no folder for ${file}. Make it, or name another file in TAPPET_DATABASE.`;
      case "no room":
        return `There is no room for ${file} on its disk. Nothing was changed: make room and try again.`;
      case "read only":
        return `The folder of ${file} cannot be written. Nothing was changed: make it writable and try again.`;
    }
  },
  damagedInUse: (file: string, newest: string | null): string =>
    `${file} is damaged: no backup could be made of it. Stop Tappet, then ${newest === null ? "put a backup in its place" : `go back with npm run restore -- ${newest}`}; what was logged since then is lost from there on.`,
  running: (name: string, groups: number): string => `Tappet is running as ${name} in ${groups} ${groups === 1 ? "server" : "servers"}.`,
  stopping: (): string => "Stopping.",
};
