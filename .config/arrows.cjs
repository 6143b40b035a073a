// Which part may know which. Type imports count. Run by arrows.ts, which fails when too few modules were seen.

const only = (name, from, allowed, comment) => ({
  name,
  comment,
  severity: "error",
  from: { path: from },
  to: { path: "^(src|commands|migrations)/", pathNot: [from, ...allowed] },
});
const kept = (name, packages, allowed) => ({
  name,
  comment: `${packages} stays behind ${allowed.join(", ")}`,
  severity: "error",
  from: { path: "^(src|commands|migrations)/", pathNot: allowed },
  to: { path: `node_modules/(${packages})/` },
});

module.exports = {
  forbidden: [
    { name: "no-cycles", severity: "error", from: {}, to: { circular: true } },
    { name: "no-orphans", severity: "error", from: { orphan: true, path: "^(src|commands)/", pathNot: ["^src/main\\.ts$"] }, to: {} },
    only("core-knows-core", "^src/core/", [], "core imports only core"),
    only("trade-knows-core", "^src/trade/", ["^src/core/"]),
    only("message-knows-core", "^src/message/", ["^src/core/"]),
    only("words-know-core-and-trade", "^src/words/", ["^src/core/", "^src/trade/"]),
    {
      name: "words-know-trade-by-type",
      comment: "words take the trade's types, never its tables",
      severity: "error",
      from: { path: "^src/words/" },
      to: { path: "^src/trade/", dependencyTypesNot: ["type-only"] },
    },
    only("store-knows-core", "^src/store/", ["^src/core/", "^migrations/"]),
    only("migrations-know-columns", "^migrations/", ["^src/store/columns\\.ts$"]),
    only("usecases-know-the-house-below", "^src/usecases/", ["^src/(store|core|trade|message)/"]),
    only("chat-knows-core", "^src/chat/", ["^src/core/"]),
    only("reminders", "^src/reminders/", ["^src/(usecases|chat|words|core|store)/"]),
    only("commands", "^commands/", ["^src/(chat|usecases|words|core|trade|picture)/"]),
    only("terminal-knows-chat", "^src/terminal/", ["^src/(chat|core|words)/"]),
    { name: "only-main-knows-the-commands", severity: "error", from: { path: "^src/", pathNot: "^src/main\\.ts$" }, to: { path: "^commands/" } },
    {
      name: "only-main-builds-the-clock",
      severity: "error",
      from: { path: "^(src|commands)/", pathNot: ["^src/(main|ids|bot|open-room)\\.ts$"] },
      to: { path: "^src/clock\\.ts$" },
    },
    kept("luxon-in-calendar", "luxon", ["^src/core/calendar/"]),
    kept("database-in-store", "kysely|better-sqlite3|pg", ["^src/store/", "^migrations/"]),
    kept("chrono-in-message", "chrono-node", ["^src/message/"]),
    kept("pino-in-log", "pino", ["^src/log\\.ts$"]),
    kept("cron-in-main", "node-cron", ["^src/main\\.ts$"]),
    kept("discord-in-its-face", "discord\\.js", ["^src/discord/"]),
    {
      name: "core-is-pure",
      comment: "core reads no files and asks no system",
      severity: "error",
      from: { path: "^src/(core|trade|words|message|chat)/" },
      to: { dependencyTypes: ["core"] },
    },
  ],
  options: {
    tsPreCompilationDeps: true,
    tsConfig: { fileName: "tsconfig.json" },
    doNotFollow: { path: "node_modules" },
    enhancedResolveOptions: { extensions: [".ts", ".js", ".json"], conditionNames: ["import", "types", "default"] },
  },
};
