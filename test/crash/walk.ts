// A checklist walked through on the real process in JSON lines, which is killed at each step: as the answer is being kept, and when it just was.
// Each input is then sent again under its own id, as a platform does that got no answer.

import { spawn } from "node:child_process";
import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import path from "node:path";

const HOUSE = path.join(import.meta.dirname, "..", "..");
const CLOCK = "2027-03-20T09:00:00Z";

type Action = { readonly id: string; readonly label: string };
type Point = { readonly key: string; readonly answer: string | null };
type Step = {
  readonly check: string;
  readonly rev: number;
  readonly state: string;
  readonly at: { readonly key: string } | null;
  readonly sections: { readonly points: readonly Point[] }[];
};
type Answer = {
  readonly text?: string | null;
  readonly actions?: readonly Action[];
  readonly data?: { readonly step?: Step } & Partial<Step>;
  readonly error?: string;
};
type Input = Readonly<Record<string, unknown>>;

/** One process: takes the inputs, and dies at a step if it is told to. Answers what it said, and how it ended. */
function runs(file: string, inputs: readonly Input[], dieAt: string | null): Promise<{ readonly answers: readonly Answer[]; readonly killed: boolean }> {
  const child = spawn(
    process.execPath,
    [...(dieAt === null ? [] : ["--import", path.join(import.meta.dirname, "die-at.mjs")]), "dist/src/main.js", "--lines", "--db", file, "--clock", CLOCK],
    { cwd: HOUSE, env: { ...process.env, ...(dieAt === null ? {} : { TAPPET_DIE_AT: dieAt }) }, stdio: ["pipe", "pipe", "ignore"] },
  );
  let said = "";
  child.stdout.on("data", (chunk) => {
    said += String(chunk);
  });
  // What dies does not take the rest of its input.
  child.stdin.on("error", () => undefined);
  child.stdin.end(inputs.map((input) => `${JSON.stringify({ as: "Ines", in: "dm", ...input })}\n`).join(""));
  return new Promise((resolve) =>
    child.on("close", (_code, signal) => {
      const answers = said.split("\n").flatMap((line): Answer[] => (line.trim() === "" ? [] : [JSON.parse(line) as Answer]));
      resolve({ answers: answers.filter((answer) => !("done" in answer)), killed: signal === "SIGKILL" });
    }),
  );
}

const OPEN = { run: "/check list:pre-ride bike:Heron" };
const stepOf = (answer: Answer | undefined): Step => (answer?.data?.step ?? answer?.data) as Step;
const button = (answer: Answer, label: string): string => {
  const found = answer.actions?.find((action) => action.label === label);
  if (found === undefined) throw new Error(`no ${label} on ${answer.text}`);
  return found.id;
};

/** What a member does at a card, by turns. */
const DOES: readonly ((card: Answer) => Input)[] = [
  (card) => ({ press: button(card, "Good") }),
  (card) => ({ fill: button(card, "Needs work"), fields: { what: "a nail in it", grade: "do not ride" } }),
  () => ({ say: "front 33 psi, rear 36 psi on Heron" }),
  (card) => ({ press: button(card, "Later") }),
  (card) => ({ press: button(card, "Good") }),
  (card) => ({ press: button(card, "Finish") }),
];

export type Walked = {
  /** How many processes were killed, of how many that were to be. */
  readonly killed: number;
  readonly of: number;
  /** Answers, by point, after each step. */
  readonly answers: readonly Readonly<Record<string, string>>[];
  readonly text: string;
  readonly state: string;
};

/** Walks the list; @param cruel kills the process twice at every step */
export async function walk(cruel: boolean): Promise<Walked> {
  const folder = await mkdtemp(path.join(tmpdir(), "tappet-walk-"));
  const file = path.join(folder, "practice.sqlite");
  let [killed, of] = [0, 0];
  const does = async (input: Input, n: number): Promise<Answer | undefined> => {
    const once = { ...input, id: `step-${n}` };
    if (cruel)
      for (const when of ["before", "after"]) {
        of++;
        if ((await runs(file, [once], `message, ${when} the commit#1`)).killed) killed++;
      }
    return (await runs(file, [once], null)).answers[0];
  };
  try {
    await does({ run: "/bike add name:Heron kind:chain-drive twin odometer:14,210 mi" }, 0);
    await does(OPEN, 1);
    const answers: Record<string, string>[] = [];
    for (const [n, act] of DOES.entries()) {
      const [card] = (await runs(file, [OPEN], null)).answers;
      if (card === undefined) throw new Error("no card");
      await does(act(card), n + 2);
      const [after] = (await runs(file, [n + 1 < DOES.length ? OPEN : { run: "/check bike:Heron" }], null)).answers;
      answers.push(
        Object.fromEntries(stepOf(after).sections.flatMap(({ points }) => points.flatMap(({ key, answer }) => (answer === null ? [] : [[key, answer]])))),
      );
    }
    const [last, due, readings] = (await runs(file, [{ run: "/check bike:Heron" }, { run: "/due bike:Heron" }, { run: "/reading bike:Heron" }], null)).answers;
    const text = [last, due, readings].map((each) => each?.text ?? each?.error).join("\n--\n");
    return { killed, of, answers, text, state: stepOf(last).state };
  } finally {
    await rm(folder, { recursive: true });
  }
}
