// The practice room's own words.

export const roomWords = {
  welcome: (member: string, file: string): readonly string[] => [
    `Practice room: everything you try stays in ${file} on this machine. You are ${member}.`,
    "Begin with: /bike add name:Heron kind:chain-drive twin odometer:14,210 mi",
    "Then write a reading as you would say it: 14,820 mi on Heron. Ask /due. /help lists the commands, :help the room's own words.",
  ],
  welcomeBack: (member: string, day: string): readonly string[] => [
    `Practice room, ${day}. You are ${member}. /help lists the commands, :help the room's own words.`,
  ],
  help: [
    ":as NAME          speak as another member",
    ":in PLACE         speak in dm, g1 (a group's reading channel) or g1/other",
    "2                 press button 2 of the last answer (or :press 2)",
    ":leave            out of a form or a choice, sending nothing",
    ":advance 60d      move the clock forward; reminders arrive as they would (2w, 3m, 1y, P30D work too)",
    ":advance 60d asleep   the same with the bot switched off meanwhile",
    ":edit TEXT        edit your last message",
    ":delete           delete your last message",
    ":demo             add some riders and bikes to look around",
    ":quit             leave; all of it is kept",
  ],
  unknown: (typed: string): string => `The room does not know ${typed}. :help lists its words.`,
  noButton: (n: string): string => `There is no button ${n} in the last answer.`,
  now: (day: string, time: string): string => `It is now ${day}, ${time}.`,
  notADuration: (typed: string): string => `I cannot read “${typed}” as a time span. Try 60d, 2w, 3m or P30D.`,
  speaking: (member: string, place: string): string => `You are ${member}, ${place === "dm" ? "writing to the bot directly" : `in ${place}`}.`,
  notAPlace: (typed: string): string => `“${typed}” is no place. Try dm, g1 or g1/other.`,
  notAName: (typed: string): string => `“${typed}” cannot be a member's name here. Use letters, digits and dashes.`,
  file: (type: "image/png" | "text/csv" | "application/json", alt: string, path: string): string =>
    `(a ${{ "image/png": "drawing", "text/csv": "table", "application/json": "file" }[type]}, in ${path}: ${alt})`,
  reactions: { logged: "(marked as logged)", asked: "(marked with a question)" },
  toEveryone: "to everyone:",
  arrived: (member: string, place: string): string => (place === "dm" ? `A message for ${member}:` : `In ${place}, for ${member}:`),
  pick: "Type the number of your choice (:leave for none of them):",
  /** What was begun to be filled in or chosen is let go. */
  left: "Left; nothing of it was sent.",
  /** The first field says how to get out of the form. */
  wayOut: "(:leave lets it go, sending nothing)",
  field: (label: string, hint: string | null, required: boolean, lines: boolean): string =>
    `${[label, ...(hint === null ? [] : [`such as ${hint}`]), ...(lines ? ["several lines are typed in one, with \\n between them"] : []), ...(required ? [] : ["Enter leaves it out"])].join("; ")}:`,
  nothingToLeave: "No form and no choice is open.",
  nothingToEdit: "You have said nothing yet that could be changed.",
  silence: "(no answer: the bot keeps out of small talk)",
  bye: "All is kept. See you next time.",
  demoDone: (members: readonly string[]): string => `Added. Look around with /due, and speak as ${members.join(" or ")} with :as.`,
  demoThere: "The demo's bikes are here already.",
} as const;
