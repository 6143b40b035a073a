// What people type when something is wrong, in German.

import type { DefectWords } from "../../core/reading/defect-words.ts";
import type { DefectKind } from "../../trade/defects.ts";
import {
  BESIDE,
  BY_BLEEDING,
  BY_CHARGING,
  BY_CLEANING,
  BY_END,
  BY_FREEING,
  BY_GREASE,
  BY_SETTING,
  BY_TIGHTENING,
  OF_LININGS_ALONE,
  UNLESS_READ,
} from "../en/defect-phrases.ts";
import { GERMAN_BRAKES_WRONG } from "./wrong/brakes.ts";
import { GERMAN_CHASSIS_WRONG } from "./wrong/chassis.ts";
import { GERMAN_DRIVE_WRONG } from "./wrong/drive.ts";
import { GERMAN_ELECTRICS_WRONG } from "./wrong/electrics.ts";
import { GERMAN_ENGINE_WRONG } from "./wrong/engine.ts";
import { GERMAN_TYRES_AND_WHEELS_WRONG } from "./wrong/tyres-and-wheels.ts";

export const GERMAN_DEFECT_WORDS: DefectWords & { readonly kinds: Readonly<Record<DefectKind, DefectWords["kinds"][string]>> } = {
  kinds: {
    ...GERMAN_BRAKES_WRONG,
    ...GERMAN_ELECTRICS_WRONG,
    ...GERMAN_ENGINE_WRONG,
    ...GERMAN_DRIVE_WRONG,
    ...GERMAN_TYRES_AND_WHEELS_WRONG,
    ...GERMAN_CHASSIS_WRONG,
  },
  whole: {
    puncture: ["plattfuß", "platter reifen", "reifenpanne", "platten vorne", "platten hinten", "platten vorn", "einen platten"],
    "flat battery": ["batterie leer", "leere batterie"],
    "oil leak": ["ölleck", "ölverlust", "verliert öl", "tropft öl", "sifft öl", "ölfleck unter dem motor", "ölpfütze unter dem motor", "ölpfütze unterm motor"],
    "coolant leak": ["kühlwasserverlust", "verliert kühlwasser", "verliert kühlmittel", "verliert kühlflüssigkeit"],
    "fuel leak": ["benzingeruch", "riecht nach benzin", "benzinleck", "verliert benzin", "verliert sprit", "spritgeruch", "stinkt nach benzin"],
    "brake fluid leak": ["verliert bremsflüssigkeit", "bremsflüssigkeitsverlust"],
    "fork leak": ["gabelsimmerring undicht", "undichter gabelsimmerring", "undichte simmerringe"],
    "soft brake": [
      ...["kein bremsdruck", "keinen bremsdruck", "keine bremse vorne", "keine bremse vorn", "keine bremse hinten", "keine bremsen", "keine bremswirkung"],
      ...["kein druckpunkt", "luft in der bremse", "luft im bremssystem"],
    ],
    "brake light": ["kein bremslicht"],
    headlight: ["kein abblendlicht", "kein fahrlicht"],
    "worn rear tyre": ["kein profil mehr hinten", "hinten kein profil mehr", "hinten kein profil", "kein profil hinten"],
    "worn front tyre": [
      ...["kein profil mehr vorne", "vorne kein profil mehr", "vorn kein profil mehr", "vorne kein profil", "kein profil vorne", "kein profil mehr vorn"],
    ],
    "worn tyre": ["kein profil mehr"],
    steering: ["spiel im lenkkopf", "spiel in der lenkung", "lenkerflattern", "lenkerschlagen", "hochgeschwindigkeitspendeln"],
  },
  stray: ["kaputt", "defekt", "gebrochen", "gerissen", "undicht", "locker", "lose", "fehlt", "abgefallen", "klappert", "beschädigt", "abgebrochen"],
  between: [
    ...["ist", "sind", "fühlt", "fühlen", "sich", "scheint", "scheinen", "hat", "haben", "ein", "eine", "einen", "bisschen", "etwas", "sehr", "ziemlich"],
    ...["ganz", "jetzt", "wieder", "immer", "noch", "total", "komplett", "plötzlich", "leicht", "stark", "links", "rechts", "vorne", "hinten", "vorn", "seit"],
    ...["gestern", "heute", "der", "die", "das", "im", "am", "wird", "werden", "völlig", "fast", "schon", "und", "auch", "so", "richtig", "recht", "relativ"],
    ...["extrem", "langsam", "bereits", "lässt", "lassen", "kommt", "kommen", "geht", "gehen", "zieht", "macht", "wirkt", "sieht", "sehen", "aus"],
    ...["mittlerweile", "inzwischen", "wohl", "leider", "gerade", "anscheinend", "offenbar", "nahezu", "beinahe", "ständig", "dauernd", "manchmal"],
    ...["deutlich", "ordentlich", "arg", "echt", "nur", "zu", "wie", "schwer", "einfach", "unten", "oben", "innen", "außen", "beide", "beiden", "mir", "an"],
    ...["den", "dem", "kräftig", "fürchterlich", "furchtbar", "minimal", "oft", "öfter", "mal"],
  ],
  past: ["war", "waren", "hatte", "hatten"],
  joins: [
    ...["der", "die", "das", "am", "im", "an", "in", "beim", "vom", "von", "vorne", "vorn", "hinten", "den", "dem", "aus", "unter", "links", "rechts"],
    ...["linken", "rechten", "meine", "mein"],
  ],
  before: [
    ...["linke", "linker", "linkes", "linken", "rechte", "rechter", "rechtes", "rechten", "vordere", "vorderer", "vorderes", "vorderen", "hintere"],
    ...["hinterer", "hinteres", "hinteren", "obere", "untere", "zwei", "drei", "mehrere", "beide", "ein", "eine", "einen", "einer", "die", "der", "das"],
    ...["den", "dem", "meine", "mein", "meiner", "meinem", "meinen", "hab", "habe", "hatte", "gesehen", "bemerkt", "gefunden", "entdeckt", "festgestellt"],
    ...["und", "aber", "auch", "dass", "glaube", "kleine", "kleiner", "kleinen", "großer", "großen", "neue", "neuer", "leider", "oh", "mist", "seit", "heute"],
    ...["gestern", "jetzt", "hier", "am", "im", "an", "in", "bei", "weil", "da", "denn", "es", "sie", "mit", "schon", "wieder", "langsam", "vom", "beim"],
    ...["von", "einfach", "wohl"],
  ],
  none: ["kein", "keine", "keinen", "keinem", "ohne", "nicht", "nie"],
  itself: ["motorrad", "maschine"],
  others: ["dein", "deine", "deiner", "sein", "seine", "seiner", "ihr", "ihre", "ihrer", "euer", "eure", "kumpel", "kumpels", "er", "handy", "auto"],
  notBefore: [
    ...["kit", "set", "ladegerät", "reparatur", "reparaturset", "händler", "wie", "als", "nicht", "nie", "nimmer", "mehr", "test", "spray", "öl", "fett"],
    // "Fest angezogen", "fertig montiert": work, and nothing wrong.
    ...["montiert", "eingebaut", "gewechselt", "angezogen", "verschraubt", "gemacht", "eingestellt", "geschmiert", "gereinigt", "bestellt", "gekauft"],
    ...["gefahren", "geputzt", "gespannt", "drauf", "eingefahren", "angefahren", "gesucht", "zuverkaufen", "abgeholt"],
  ],
  mended: [
    ...["repariert", "behoben", "gerichtet", "geflickt", "ersetzt", "gewechselt", "getauscht", "ausgetauscht", "erneuert", "entlüftet", "eingestellt"],
    ...["nachgezogen", "festgezogen", "gereinigt", "abgedichtet", "geladen", "gangbar", "geschmiert", "nachgestellt", "gespannt", "gefettet", "geschweißt"],
    ...["angezogen"],
  ],
  mendsOnly: {
    ...{ entlüftet: BY_BLEEDING, eingestellt: BY_SETTING, nachgestellt: BY_SETTING, gespannt: BY_SETTING, nachgezogen: BY_TIGHTENING },
    ...{ festgezogen: BY_TIGHTENING, angezogen: BY_TIGHTENING, gereinigt: BY_CLEANING, geschmiert: BY_GREASE, gefettet: BY_GREASE },
    ...{ gangbar: BY_FREEING, geladen: BY_CHARGING },
  },
  inVain: ["nach", "seit", "nachdem", "obwohl", "trotz", "trotzdem", "immer", "noch", "wieder", "zweimal", "bis", "wenn"],
  turns: [
    {
      ...{ from: ["puncture"], to: "plugged tyre" },
      said: ["geflickt", "gestopft", "stopfen rein", "stopfen drin", "pannenwurst rein", "pannenstreifen rein", "flicken drauf", "flicken drin"],
    },
  ],
  linings: {
    things: ["belag", "beläge", "belägen", "bremsbelag", "bremsbeläge", "bremsbelägen", "bremsklötze", "klötze", "bremsbacken", "backen"],
    ofThem: OF_LININGS_ALONE,
  },
  byEnd: BY_END,
  unlessRead: UNLESS_READ,
  beside: {
    kinds: BESIDE,
    not: ["locker", "zu locker", "viel zu locker", "zu stramm", "viel zu stramm", "zu straff", "lockere", "hängt durch", "hängt", "lose"],
    where: [],
    parts: { "cold pressure": ["ventil", "ventileinsatz", "ventile"] },
    alone: ["nagel drin", "schraube drin", "verliert luft"],
  },
};
