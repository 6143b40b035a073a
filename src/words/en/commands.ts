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
      model: "Make and model: shares specs and plans with the same model in the group",
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
      registered: "By the book: when it was first registered, from which yearly services run",
      model: "Make and model: shares specs and plans with the same model in the group",
      "group-picture": "Let this group's picture show when it falls due; off until you say so",
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
  "bike tyres": {
    does: "Swap sets of tyres; each keeps its own distance.",
    options: {
      set: "The set that goes on, by a name of yours",
      off: "The set that came off; at the first swap only",
      at: "What the odometer showed",
      on: "The day, if not today",
      bike: "Which bike",
    },
    example: "/bike tyres set:off-road off:road at:15,200 mi",
  },
  "bike date": {
    does: "Note a day of a bike's papers, told in time; without one, list them.",
    options: { what: "Insurance, inspection, in your words", on: "The day; none takes it away", bike: "Which bike" },
    example: "/bike date what:insurance on:31 March bike:Heron",
  },
  "bike card": {
    does: "A roadside card for your phone: tyres, pressures, bulbs, fuses, plug, chain, your recovery number.",
    options: { bike: "Which bike", recovery: "The number you call when stranded; none forgets it" },
    example: "/bike card bike:Heron",
  },
  "bike parts": {
    does: "Parts fitted: tyres, pads, chain, battery, fluids, each with how far it has gone.",
    options: { bike: "Which bike, when you have several", share: "Show the answer to everyone here" },
    example: "/bike parts bike:Heron",
  },
  reading: {
    does: "Log a reading, or list the latest and what is unanswered.",
    options: { log: "The reading, as you would write it", bike: "Which bike", picture: "Draw them instead: the odometer, the tread, or the pressures" },
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
      found: "What you found: 0.09 mm intake 1",
      left: "What you left it at",
      with: "What was used or fitted: 3.2 L 20W-50, crush washer",
      cost: "What it cost: 48.60 EUR",
      by: "Who did it, if not you",
      note: "A note for the next time",
    },
    example: "/work did:oil and filter at:14,820 mi on:yesterday bike:Heron",
  },
  records: {
    does: "Look back: what was done, when, at what odometer, by whom, with what; as lines and as a table.",
    options: {
      bike: "Which bike; all of yours when left out",
      item: "One item only",
      since: "From when on: May 2025, 2024",
      share: "Show the answer to everyone here",
    },
    example: "/records bike:Heron since:2025",
  },
  due: {
    does: "What is due, coming up and good, each with its reason; or what falls due until a day.",
    options: {
      bike: "Which bike; all of yours when left out",
      until: "Look ahead: 1 June, midsummer, in 6 weeks, 18,000 mi, +1,500 mi",
      picture: "Draw what comes next, along days and odometer",
      share: "Show the answer to everyone here",
    },
    example: "/due bike:Heron until:midsummer",
  },
  trip: {
    does: "Plan a trip: what to do before, what falls due on the way, what wears too far.",
    options: { plan: "Distance and days: 2,800 mi from 12 June to 30 June", bike: "Which bike", load: "How the bike is loaded" },
    example: "/trip plan:2,800 mi from 12 June to 30 June bike:Heron load:two-up",
  },
  check: {
    does: "Walk through a checklist; without a list, what is open and what was found last.",
    options: {
      list: "Which list",
      bike: "Which bike; by itself, what its last check came to",
      kind: "Kind of a bike that is not yours yet",
      coldest: "The coldest night it stood through",
      share: "Show what the last check came to to everyone here",
    },
    example: "/check list:out of storage bike:Heron",
  },
  "plan list": {
    does: "Your bike's plan: what is done, and how often.",
    options: { bike: "Which bike, when you have several", share: "Show the answer to everyone here" },
    example: "/plan list bike:Heron",
  },
  "plan change": {
    does: "Change an interval to what your manual says; you see both before it is saved.",
    options: { item: "Which item of the plan", every: "How often: 4,000 mi or 12 months, 6,000 km, 2 years", bike: "Which bike, when you have several" },
    example: "/plan change item:oil and filter every:3,000 mi or 12 months",
  },
  "plan add": {
    does: "Add an item of your own to a bike's plan.",
    options: {
      called: "What it is: heated grip wiring",
      every: "How often: 4,000 mi or 12 months, 6,000 km, 2 years",
      action: "What is done to it; inspect if not said",
      system: "Where on the bike it belongs",
      why: "Why, kept with the change",
      bike: "Which bike, when you have several",
    },
    example: "/plan add called:heated grip wiring every:12 months action:inspect",
  },
  "plan drop": {
    does: "Drop an item of a bike's plan, or bring it back; it stays visible as dropped.",
    options: { item: "Which item of the plan", back: "Bring a dropped one back", why: "Why, kept with the change", bike: "Which bike, when you have several" },
    example: "/plan drop item:headlamp aim why:set for good",
  },
  "plan history": {
    does: "Every change of a bike's plan: what, by whom, when and why.",
    options: { bike: "Which bike, when you have several" },
    example: "/plan history bike:Heron",
  },
  "plan compare": {
    does: "Your plan beside the starter plan or the group's; take it over if you like.",
    options: { with: "The starter plan as it is now, the group's for this make and model, or as it was given", bike: "Which bike, when you have several" },
    example: "/plan compare with:group plan bike:Heron",
  },
  "plan share": {
    does: "Share your plan as the group's for its make and model.",
    options: { manual: "The manual it is from, with its edition", bike: "Which bike, when you have several" },
    example: "/plan share manual:workshop manual, 2019 edition bike:Heron",
  },
  "plan export": {
    does: "Your plan as a file, to keep or to take elsewhere.",
    options: { bike: "Which bike, when you have several" },
    example: "/plan export bike:Heron",
  },
  "plan import": {
    does: "Paste a plan file; you see what it changes before anything is saved.",
    options: { bike: "Which bike, when you have several" },
    example: "/plan import bike:Heron",
  },
  "plan chart": {
    does: "The service chart of your bike's plan: which item at which service, as text, drawing and table.",
    options: { bike: "Which bike, when you have several", until: "The last service to show: 24,000 mi", share: "Show the answer to everyone here" },
    example: "/plan chart bike:Heron until:24,000 mi",
  },
  "plan read-chart": {
    does: "Paste the service chart of your manual; you see what it changes before anything is saved.",
    options: { bike: "Which bike, when you have several", chart: "A short chart, its lines parted by \\n; leave it out to paste into a form" },
    example: "/plan read-chart bike:Heron",
  },
  spec: {
    does: "A value from your manual: look it up by name, or enter it with its source.",
    options: {
      what: "Front tyre pressure two-up, oil, rear axle; or a mark: 10W-40, DOT 4, 58V, M8, tread law",
      value: "To enter it: 98 Nm, 25-35 mm, at least 4.5 mm, or words such as a plug's name",
      source: "Manual, edition and page: workshop manual, 2019 edition, p. 142",
      for: "Solo, two-up or loaded, where the manual has them apart",
      bike: "Which bike, when you have several",
      share: "Show the answer to everyone here",
    },
    example: "/spec what:rear axle value:98 Nm source:workshop manual, p. 142",
  },
  "plan sheet": {
    does: "The service sheet: what a service asks of your bike, in order, with tools, values and parts.",
    options: { at: "Which service: next, or 12,000 mi", bike: "Which bike, when you have several", share: "Show the answer to everyone here" },
    example: "/plan sheet at:16,000 mi bike:Heron",
  },
  "plan recheck": {
    does: "What is looked at again after work, and how far after it; change it to what your manual says.",
    options: { item: "Which look", every: "How far after the work: 100 mi, 150 km; never; again", bike: "Which bike, when you have several" },
    example: "/plan recheck item:slack of the new chain every:200 mi",
  },
  "plan shopping": {
    does: "What to buy for all that falls due within a month or until a day, each thing once.",
    options: { until: "By when: midsummer, 1 June, in 6 weeks", bike: "Which bike; all of yours when left out", share: "Show the answer to everyone here" },
    example: "/plan shopping until:midsummer",
  },
  "plan job": {
    does: "The sheet you are working through: what is ticked and what is left, or tick an item off.",
    options: {
      done: "The item that is done",
      found: "What you found",
      left: "What you left it at",
      outcome: "What came of it, if not the usual",
      at: "Odometer at the time",
      on: "The day, if not today",
      bike: "Which bike, when you have several",
    },
    example: "/plan job done:clutch free play found:20 mm left:12 mm",
  },
  convert: {
    does: "Convert torque, pressure, length, distance, temperature and more.",
    options: { what: "Figure and unit, or a range", to: "Unit wanted", exact: "Every digit" },
    example: "/convert what:60-80 in-lb to:N·m",
  },
  "torque set": {
    does: "Which of your wrenches to take for a torque, and where to set it.",
    options: {
      target: "The maker's value or window",
      adapter: "Length of an adapter, from the square to the fastener",
      lever: "Length of the wrench, from the square to the middle of your grip",
      angle: "Angle between wrench and adapter: 0 in line, 90 at a right angle",
    },
    example: "/torque set target:60-80 in-lb",
  },
  "torque estimate": {
    does: "An estimate from the fastener where no maker's value can be found.",
    options: {
      thread: "M8, M10x1.25, 5/16-18",
      grade: "What is marked on the head",
      threads: "State of the threads",
      joint: "What it holds: a rack, a crash bar",
      into: "What the thread goes into",
      engaged: "Length of thread in the hole",
    },
    example: "/torque estimate thread:M8 grade:8.8 threads:oiled into:steel joint:luggage rack",
  },
  "torque stages": {
    does: "Tighten several fasteners evenly: in stages, across from one another.",
    options: { target: "The final torque", fasteners: "How many there are", angle: "How far each is turned after the last stage: 90° or 1/4 turn" },
    example: "/torque stages target:24 Nm fasteners:6",
  },
  "tyre show": {
    does: "Your tyres judged: tread, pressure, how far they still go, a slow leak.",
    options: { bike: "Which bike" },
    example: "/tyre show bike:Heron",
  },
  "tyre date": {
    does: "How old a tyre is, from the code moulded on it.",
    options: { code: "The last digits after DOT" },
    example: "/tyre date code:2223",
  },
  "tyre marking": {
    does: "What size, load and speed marks mean, and whether both ends are built alike.",
    options: { mark: "As it is moulded", other: "The other end's" },
    example: "/tyre marking mark:120/70ZR17 (58W)",
  },
  "tyre pressure": {
    does: "What to set in a warm garage before a cold road.",
    options: { want: "The pressure wanted", garage: "Temperature of the garage", road: "Temperature where the ride starts" },
    example: "/tyre pressure want:36 psi garage:20 °C road:2 °C",
  },
  "torque hex": {
    does: "Which spanner of the other system fits a hex, and whether to load it.",
    options: { size: "Width across the flats" },
    example: "/torque hex size:11 mm",
  },
  "torque wrench-add": {
    does: "List a torque wrench of yours, or a pressure gauge.",
    options: {
      name: "What you call it",
      range: "Both ends of its scale",
      step: "What one step of its scale is",
      accuracy: "In percent; 4 if not said, 6 for one up to 10 N·m",
      drive: "Its square",
      type: "What kind it is",
    },
    example: "/torque wrench-add name:Small one range:5-25 Nm step:0.5",
  },
  "torque wrench-list": { does: "The torque wrenches and gauges you have listed.", options: {}, example: "/torque wrench-list" },
  "torque wrench-drop": { does: "Take a wrench off your list.", options: { name: "Which one" }, example: "/torque wrench-drop name:Small one" },
  remind: {
    does: "When and where your reminders come, your zone and units.",
    options: {
      by: "Direct message, channel or off",
      off: "Hear no more of this",
      on: "Hear of this again",
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
      riding: "The riding season: north, south, none, or 1 April to 15 October",
      zone: "Time zone of the group",
      distance: "Unit for distances",
      pressure: "Unit for bare pressures",
      off: "Tell members of this only if they ask for it",
      on: "Tell members of this again",
      reads: "Read plain messages in the reading channel",
      picture: "Draw when the bikes of those who said so fall due",
      share: "Show the picture to everyone here",
    },
    example: "/group zone:Europe/Berlin reading:here",
  },
  help: { does: "What I can do, and how to say it.", options: { command: "One command to explain" }, example: "/help command:due" },
} as const satisfies Record<string, { does: string; options: Readonly<Record<string, string>>; example: string }>;

/** What a command with subcommands is about. */
export const PARENT_WORDS = {
  bike: "Your bikes: add, list and change them.",
  plan: "What is done to a bike, and how often.",
  torque: "Torque at the wrench: settings, stages, estimates, spanners.",
} as const;

export const helpWords = {
  intro:
    "Write readings as you would say them, in the reading channel, to me directly or with my name: 14,820 mi on Heron; 33 psi front 36 rear; did the oil at 14,820. Or ask:",
  line: (name: string, does: string): string => `/${name}: ${does}`,
  option: (name: string, what: string, required: boolean): string => `${name}: ${what}${required ? "" : " (may be left out)"}`,
  example: (example: string): string => `For example ${example}`,
  caution: "Your maker's manual has the last word; where braking, steering or tyres were opened and you are not sure, have a licensed mechanic look.",
};
