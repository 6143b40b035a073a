// Which part may know which. Type imports count. Run by arrows.ts, which fails when too few modules were seen.

const OURS = "^(src|commands|migrations)/";
/** From `from`, only itself and `allowed` may be imported. */
const only = (name, from, allowed) => ({
  name,
  severity: "error",
  from: { path: from },
  to: { path: "^(src|commands|migrations|test|\\.config)/", pathNot: [from, ...allowed] },
});
/** Packages that stay behind `allowed`. */
const kept = (name, packages, allowed) => ({
  name,
  comment: `${packages} stays behind ${allowed.join(", ")}`,
  severity: "error",
  from: { path: OURS, pathNot: allowed },
  to: { path: `node_modules/(@types/)?(${packages})/` },
});
/** From `from`, `to` may be imported for its types only. */
const typesOnly = (name, from, to) => ({
  name,
  severity: "error",
  from: { path: from },
  to: { path: to, dependencyTypesNot: ["type-only"] },
});

module.exports = {
  forbidden: [
    { name: "no-cycles", severity: "error", from: {}, to: { circular: true } },
    { name: "no-orphans", severity: "error", from: { orphan: true, path: "^(src|commands)/", pathNot: ["^src/main\\.ts$"] }, to: {} },
    { name: "resolves", severity: "error", from: { path: OURS }, to: { couldNotResolve: true } },
    { name: "house-stands-without-tests", severity: "error", from: { path: OURS }, to: { path: "^(test|\\.config)/" } },
    {
      name: "no-duplicate-dependency",
      comment: "a package stands in one list of package.json",
      severity: "error",
      from: {},
      to: { moreThanOneDependencyType: true, dependencyTypesNot: ["type-only"] },
    },
    {
      name: "runs-without-dev-packages",
      severity: "error",
      from: { path: OURS },
      to: { dependencyTypes: ["npm-dev"], dependencyTypesNot: ["type-only"], pathNot: ["node_modules/@types/"] },
    },

    only("core-knows-core", "^src/core/", []),
    only("trade-knows-core", "^src/trade/", ["^src/core/"]),
    only("message-knows-core", "^src/message/", ["^src/core/"]),
    only("picture-knows-core", "^src/picture/", ["^src/core/"]),
    only("words-know-core-and-trade", "^src/words/", ["^src/core/", "^src/trade/"]),
    typesOnly("words-know-trade-by-type", "^src/words/", "^src/trade/"),
    only("store-knows-core", "^src/store/", ["^src/core/", "^migrations/"]),
    only("migrations-know-columns", "^migrations/", ["^src/store/columns\\.ts$"]),
    only("usecases-know-the-house-below", "^src/usecases/", ["^src/(store|core|trade|message)/"]),
    only("chat-knows-core", "^src/chat/", ["^src/core/"]),
    typesOnly("chat-knows-core-by-type", "^src/chat/", "^src/core/"),
    only("reminders-know", "^src/reminders/", ["^src/(usecases|chat|words|core|store)/"]),
    only("commands-know", "^commands/", ["^src/(chat|usecases|words|core|trade|picture)/"]),
    typesOnly("commands-know-trade-by-type", "^commands/", "^src/trade/"),
    only("terminal-knows-chat", "^src/terminal/", ["^src/(chat|core|words)/"]),
    // A face implements the port that reminders owns.
    only("discord-knows-chat", "^src/discord/", ["^src/(chat|core|words)/", "^src/reminders/deliver\\.ts$"]),
    typesOnly("discord-knows-the-port-by-type", "^src/discord/", "^src/reminders/"),
    {
      name: "only-main-knows-the-commands",
      severity: "error",
      from: { path: OURS, pathNot: "^src/main\\.ts$" },
      to: { path: "^commands/index\\.ts$" },
    },
    { name: "no-part-knows-a-command", severity: "error", from: { path: "^(src|migrations)/", pathNot: "^src/main\\.ts$" }, to: { path: "^commands/" } },
    {
      name: "only-main-builds-the-clock",
      severity: "error",
      from: { path: "^(src|commands)/", pathNot: ["^src/(main|restore|ids|bot|open-room|open-server)\\.ts$"] },
      to: { path: "^src/clock\\.ts$" },
    },

    kept("luxon-in-calendar", "luxon", ["^src/core/calendar/"]),
    kept("database-in-store", "kysely|better-sqlite3|pg", ["^src/store/", "^migrations/"]),
    kept("chrono-in-message", "chrono-node", ["^src/message/"]),
    kept("pino-in-log", "pino", ["^src/log\\.ts$"]),
    kept("cron-in-main-and-reminders", "node-cron", ["^src/main\\.ts$", "^src/reminders/"]),
    kept("drawing-in-picture", "@resvg|dejavu-fonts-ttf|opentype", ["^src/picture/"]),
    kept("discord-in-its-face", "discord\\.js|discord-api-types|@discordjs", ["^src/discord/"]),
    {
      name: "core-is-pure",
      comment: "these parts read no files and ask no system",
      severity: "error",
      from: { path: "^src/(core|trade|words|message|chat)/" },
      to: { dependencyTypes: ["core"] },
    },
  ],
  options: {
    tsPreCompilationDeps: true,
    tsConfig: { fileName: "tsconfig.json" },
    doNotFollow: { path: "node_modules" },
    enhancedResolveOptions: { exportsFields: ["exports"], extensions: [".ts", ".js", ".mjs", ".json"], conditionNames: ["import", "types", "default"] },
  },
};
