// Things and signs that riders name of more than one system, in English.

export const LEAK = [
  "leaking",
  "leaks",
  "leak",
  "weeping",
  "weeps",
  "weep",
  "dripping",
  "drips",
  "seeping",
  "seeps",
  "pouring out",
  "coming out",
  "everywhere",
];
export const LOOSE = ["loose", "has play", "wobbly", "wobbles", "rattling", "rattles", "coming loose", "came loose", "has come loose"];
export const BROKEN = [
  "broken",
  "cracked",
  "bent",
  "snapped",
  "split",
  "torn",
  "missing",
  "fell off",
  "fallen off",
  "came off",
  "dented",
  "buckled",
  "damaged",
];
export const HOSE = [
  ...["cracked", "cracks", "has cracks", "split", "perished", "bulging", "bulge", "swollen", "chafed", "chafing", "kinked", "frayed", "rubbed through"],
  ...["cracking", "has a crack", "rubbing"],
];
export const WORN_BELT = [
  ...["cracked", "cracks", "crack", "has a crack", "has cracks", "crack in it", "cracks in it", "frayed", "fraying", "missing teeth", "missing a tooth"],
  ...[
    "torn",
    "slipping",
    "snapped",
    "missing tooth",
    "has a missing tooth",
    "has missing teeth",
    "missing one tooth",
    "missing two teeth",
    "missing some teeth",
  ],
  ...["missing three teeth", "missing several teeth", "lost a tooth", "lost teeth", "lost some teeth", "lost two teeth", "broken tooth", "broken teeth"],
  ...["tooth missing", "teeth missing", "shredded", "shredding", "split", "damaged", "delaminating", "holed", "hole in it", "jumping", "skipping", "jumps"],
];
export const CRACK_IN = ["crack in the", "cracks in the", "crack in", "cracks in"];
export const NO_PLAY = [
  "no free play at the",
  "no free play in the",
  "no free play on the",
  "no freeplay at the",
  "no play at the",
  "no free play at",
  "no play in the",
];
/** "Goes almost to the bar". */
export const TO_THE_BAR = ["bar", "bars", "grip", "handlebar"].flatMap((end) =>
  ["goes", "comes", "pulls", "travels", "moves"].flatMap((verb) =>
    ["almost", "nearly", "right", "all the way", "almost all the way", "straight"].map((how) => `${verb} ${how} to the ${end}`),
  ),
);
/** Said of what is worn to its end, whatever it is. */
export const DONE_FOR = [
  ...["worn", "worn out", "worn down", "worn through", "worn away", "toast", "had it", "finished", "done for", "shot", "knackered", "past it"],
  ...["past its best", "past their best", "wrecked", "ruined", "cooked", "buggered", "on its last legs", "on their last legs", "on the way out"],
  ...["on its way out", "on their way out", "at its end", "at their end", "at the end of its life", "at the end of their life", "end of life", "at the limit"],
  ...["below the limit", "under the limit", "past the limit", "beyond the limit", "at minimum", "below minimum", "under minimum", "seen better days"],
];
export const FEELS = ["feel", "feels", "feeling"].flatMap((verb) =>
  ["", "a bit ", "a little ", "really ", "very ", "kind of ", "kinda ", "slightly ", "quite ", "so "].map((much) => `${verb} ${much}`),
);
export const ODD = ["weird", "strange", "odd", "funny", "wrong", "different", "off", "iffy", "dodgy", "not right", "not quite right", "not normal"];
export const FEELS_ODD = [
  ...FEELS.flatMap((feels) => ODD.map((odd) => `${feels}${odd}`)),
  ...["acting up", "acting weird", "acting strange", "acting funny", "playing up"],
];
