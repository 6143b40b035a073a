// What each command does and takes, in English: registration, help and the README's table read this.

/** Help texts by command name ("bike add"). */
export const COMMAND_WORDS = {
  "bike add": {
    does: "Add a bike of yours; a starter plan comes with its kind.",
    options: {
      name: "Nickname you will call it by",
      kind: "Kind of bike",
      odometer: "What the dial shows now",
      unit: "Unit of the dial, if not typed with the figure",
    },
    example: "/bike add name:Heron kind:chain-drive twin odometer:14,210 mi",
  },
  "bike list": { does: "Your bikes, what they are fitted with and how they are used.", options: {}, example: "/bike list" },
  "bike change": {
    does: "Change a bike's name, state or use.",
    options: {
      bike: "Which bike",
      name: "New nickname",
      state: "Riding, laid up, sold or retired",
      used: "A condition of use to add",
      "not-used": "A condition of use to take away",
      yearly: "About how far it is ridden in a year",
      book: "Keep to the printed marks, for a warranty",
    },
    example: "/bike change bike:Heron state:laid up",
  },
  "bike fitted": {
    does: "Change what a bike is fitted with; its plan follows.",
    options: { bike: "Which bike", part: "Which part", choice: "What it is now" },
    example: "/bike fitted bike:Heron part:wheels choice:wire-spoked",
  },
  "bike odometer": {
    does: "Note a new odometer: replaced, rolled over, or in another unit.",
    options: {
      bike: "Which bike",
      now: "What the new dial shows now",
      last: "What the old dial last showed",
      unit: "Unit of the new dial",
      why: "What happened to the dial",
    },
    example: "/bike odometer bike:Heron last:15,300 mi now:12 km why:replaced",
  },
  reading: {
    does: "Log a reading, or list the latest and what is unanswered.",
    options: { log: "The reading, as you would write it", bike: "Which bike" },
    example: "/reading log:33 psi front 36 rear bike:Heron",
  },
  work: {
    does: "Record work that was done.",
    options: {
      did: "What was done, in your words",
      bike: "Which bike",
      at: "Odometer at the time",
      on: "When, as vaguely as you know it",
      how: "How you know",
      outcome: "What came of it",
    },
    example: "/work did:oil and filter at:14,820 mi on:yesterday bike:Heron",
  },
  due: {
    does: "What is due, coming up and good, each with its reason.",
    options: { bike: "Which bike; all of yours when left out", share: "Show the answer to everyone here" },
    example: "/due bike:Heron",
  },
  convert: {
    does: "Convert torque, pressure, length, distance, temperature and more.",
    options: { what: "Figure and unit, or a range", to: "Unit wanted" },
    example: "/convert what:60-80 in-lb to:N·m",
  },
  remind: {
    does: "When and where your reminders come, your zone and units.",
    options: {
      by: "Direct message, channel or off",
      day: "Day of the week",
      time: "Time of day",
      "quiet-from": "No message from",
      "quiet-to": "No message until",
      zone: "Your time zone",
      distance: "Unit for distances",
      pressure: "Unit for bare pressures",
      tread: "Unit for bare tread depths",
    },
    example: "/remind day:Sunday time:18:00",
  },
  group: {
    does: "The group's time zone, units, tread law and reading channel.",
    options: {
      reading: "Make this channel the one where plain messages are read",
      place: "Whose tread law is told",
      season: "Which half of the world the seasons are of",
      zone: "Time zone of the group",
      distance: "Unit for distances",
      pressure: "Unit for bare pressures",
      reads: "Read plain messages in the reading channel",
    },
    example: "/group zone:Europe/Berlin reading:here",
  },
  help: { does: "What I can do, and how to say it.", options: { command: "One command to explain" }, example: "/help command:due" },
} as const satisfies Record<string, { does: string; options: Readonly<Record<string, string>>; example: string }>;

/** What a command with subcommands is about. */
export const PARENT_WORDS = { bike: "Your bikes: add, list and change them." } as const;

export const helpWords = {
  intro: "Write readings as you would say them: 14,820 mi on Heron; 33 psi front 36 rear; did the oil at 14,820. Or ask:",
  line: (name: string, does: string): string => `/${name}: ${does}`,
  option: (name: string, what: string, required: boolean): string => `${name}: ${what}${required ? "" : " (may be left out)"}`,
  example: (example: string): string => `For example ${example}`,
  caution: "Your maker's manual has the last word; where braking, steering or tyres were opened and you are not sure, have a licensed mechanic look.",
};
