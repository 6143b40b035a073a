// Loaded before the bot: lets the process die by SIGKILL at a named step of its own work with the database, as a power cut would.
// TAPPET_DIE_AT is "<step> before|after commit#<nth time>". Plain JavaScript, so that it can be loaded before anything else.

import { createRequire } from "node:module";
import path from "node:path";

const [, step = "", when = "", nth = "1"] = /^(.*), (before|after|midway)(?: the commit)?#(\d+)$/u.exec(process.env.TAPPET_DIE_AT ?? "") ?? [];

/** What a transaction has done when it belongs to a step. */
const STEPS = {
  claim: /^update "deliveries" set "state" = .+"attempt" = "attempt" \+ /u,
  gather: /^update "notices" set "state" = \S+, "delivery"/u,
  begun: /^update "deliveries" set "trace_channel"/u,
  final: /^update "deliveries" set "state" = \S+, "message_id"/u,
  message: /^insert into "events"/u,
  migration: /^(create|alter) /u,
};
const mine = STEPS[step];
let left = Number(nth);
let inStep = false;

function die() {
  process.kill(process.pid, "SIGKILL");
  // The signal is on its way; nothing more is done until it comes.
  for (;;);
}
const hit = () => {
  if (--left === 0) die();
};

/** @param rows how many rows a statement gave or changed */
function done(sql, rows) {
  if (mine === undefined) return;
  if (/^(begin|start transaction)/iu.test(sql)) inStep = false;
  else if (mine.test(sql) && (rows > 0 || step === "migration")) {
    inStep = true;
    if (when === "midway") hit();
  } else if (/^commit/iu.test(sql) && inStep) {
    inStep = false;
    if (when === "after") hit();
  }
}
function about(sql) {
  if (when === "before" && inStep && /^commit/iu.test(sql)) hit();
}

// The libraries as the bot will load them.
const require = createRequire(path.join(process.cwd(), "package.json"));

const SQLite = require("better-sqlite3");
const { prepare, backup } = SQLite.prototype;
SQLite.prototype.prepare = function (sql) {
  const statement = prepare.call(this, sql);
  for (const way of ["run", "all"]) {
    const original = statement[way].bind(statement);
    statement[way] = (...args) => {
      about(sql);
      const result = original(...args);
      done(sql, Array.isArray(result) ? result.length : result.changes);
      return result;
    };
  }
  return statement;
};
if (step === "backup") {
  let copied = 0;
  SQLite.prototype.backup = function (target, options = {}) {
    return backup.call(this, target, {
      ...options,
      progress() {
        if (++copied === Number(nth)) die();
        return 1;
      },
    });
  };
}

const { Client } = require("pg");
const { query } = Client.prototype;
Client.prototype.query = function (text, ...rest) {
  if (typeof text !== "string" || typeof rest.at(-1) === "function") return query.call(this, text, ...rest);
  about(text);
  return query.call(this, text, ...rest).then((result) => {
    done(text, result.rowCount ?? 0);
    return result;
  });
};
