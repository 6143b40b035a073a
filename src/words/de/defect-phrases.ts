// What people type when something is wrong, in German.

import type { DefectWords } from "../../core/reading/defect-words.ts";
import type { DefectKind } from "../../trade/defects.ts";
import { BESIDE, BY_BLEEDING, BY_CHARGING, BY_CLEANING, BY_END, BY_FREEING, BY_GREASE, BY_SETTING, BY_TIGHTENING, UNLESS_READ } from "../en/defect-phrases.ts";

/** Words that agree with their noun, with each ending: "undicht", "undichte Gabel". */
const ended = (...words: readonly string[]): readonly string[] => words.flatMap((word) => [word, ...["e", "er", "es", "en", "em"].map((end) => word + end)]);
/** "Hat einen Riss", "hat Risse", "mit Riss". */
const has = (...nouns: readonly string[]): readonly string[] =>
  nouns.flatMap((noun) => [
    noun,
    ...["hat", "haben", "hat ein", "hat eine", "hat einen", "haben ein", "haben einen", "mit", "zeigt"].map((verb) => `${verb} ${noun}`),
  ]);

const OUT = [
  ...ended("kaputt", "defekt", "ausgefallen", "durchgebrannt", "tot"),
  ...["ist durch", "sind durch"],
  ...["geht nicht", "gehen nicht", "geht nicht mehr", "gehen nicht mehr", "geht nimmer", "funktioniert nicht", "funktioniert nicht mehr"],
  ...["funktionieren nicht", "leuchtet nicht", "leuchtet nicht mehr", "brennt nicht", "brennt nicht mehr", "aus", "flackert", "flackern", "ohne funktion"],
  ...["hinüber", "spinnt", "hat einen wackelkontakt", "wackelkontakt", "blinkt nicht", "blinken nicht", "geht manchmal nicht", "tut nicht", "tut nicht mehr"],
  ...["streikt"],
];
const LEAK = [
  ...ended("undicht", "leck", "feucht"),
  ...["nass", "nasse", "nasser", "leckt", "lecken", "tropft", "tropfen", "tröpfelt", "sifft", "siffen", "schwitzt", "schwitzen", "läuft aus", "läuft raus"],
  ...["kommt raus", "tritt aus", "verliert flüssigkeit", "rinnt", "hat ein leck", "spritzt", "am tropfen", "suppt", "sabbert"],
];
const LOSES_OIL = [
  ...["verliert öl", "verlieren öl", "ölt", "ölen", "schwitzt öl", "tropft öl", "sifft öl", "ölverlust"],
  ...ended("ölig", "verölt", "ölfeucht", "ölnass"),
];
const LOOSE = [
  ...ended("locker", "gelockert"),
  ...["lose", "loser", "loses", "losen", "lockere", "wackelt", "wackeln", "wackelig", "klappert", "klappern", "hat spiel", "haben spiel", "spiel", "hat luft"],
  ...["hat sich gelöst", "hat sich gelockert", "löst sich", "hat zu viel spiel", "viel spiel"],
];
const BROKEN = [
  ...ended("gebrochen", "gerissen", "verbogen", "abgebrochen", "kaputt", "defekt", "beschädigt", "abgerissen", "angebrochen", "gesprungen", "verdreht"),
  ...["fehlt", "fehlen", "abgefallen", "abgegangen", "hat sprung", "hat einen sprung", "hinüber", ...has("riss", "risse")],
];
const HOSE = [
  ...ended(
    ...["rissig", "gerissen", "porös", "geknickt", "aufgequollen", "gequollen", "durchgescheuert", "aufgescheuert", "brüchig", "spröde", "beschädigt"],
    ...["alt und hart"],
  ),
  ...["bläht sich", "scheuert", ...has("beule", "beulen", "risse", "riss", "knick", "scheuerstelle")],
];
const CRACKED = [...ended("rissig", "porös", "gerissen", "spröde"), ...has("riss", "risse", "haarriss", "haarrisse")];
/** Said of what is worn to its end, whatever it is. */
const DONE_FOR = [
  ...["verschlissen", "hinüber", "fertig", "am ende", "durch", "runter", "abgenutzt", "im eimer", "platt gefahren", "total fertig", "komplett fertig"],
  ...["kaputt", "ausgelutscht", "abgerockt", "auf der verschleißgrenze", "an der verschleißgrenze", "unter der verschleißgrenze", "am verschleißlimit"],
  ...["am limit", "unter dem limit", "unter mindestmaß", "am mindestmaß", "unter dem mindestmaß", "verbraucht"],
];
/** Of these "fertig" alone may say that the work on them is done. */
const IS_DONE_FOR = [
  ...DONE_FOR.filter((sign) => sign !== "fertig" && sign !== "runter" && sign !== "durch"),
  ...["ist", "sind"].flatMap((verb) =>
    ["", "jetzt ", "wohl ", "leider ", "langsam ", "total ", "komplett ", "völlig ", "echt "].map((much) => `${verb} ${much}fertig`),
  ),
  ...["ist durch", "sind durch", "ist runter", "sind runter"],
];
const BALD = [
  ...["abgefahren", "blank", "glatt", "runter", "runtergefahren", "heruntergefahren", "auf der verschleißgrenze", "am verschleißindikator", "am indikator"],
  ...["auf den verschleißmarken", "an den verschleißmarken", "auf den indikatoren", "an den indikatoren", "auf dem indikator", "auf der verschleißmarke"],
  ...["auf den stegen", "kein profil", "kein profil mehr", "hat kein profil", "hat kein profil mehr", "ohne profil", "kaum profil", "kaum noch profil"],
  ...["kein gummi mehr", "slick"],
];
const WORN_LINING = [
  ...DONE_FOR,
  ...["abgefahren", "abgebremst", "runtergebremst", "heruntergebremst", "runtergefahren", "abgeschliffen", "sind dünn", "zu dünn", "sehr dünn", "hauchdünn"],
  ...["auf dem träger", "bis auf den träger", "auf der trägerplatte", "bis auf die trägerplatte", "kein belag", "kein belag mehr", "kaum noch belag"],
  ...["nichts mehr drauf", "nix mehr drauf", "bis aufs metall", "weg"],
];
const BRAKE = [
  ...["bremse", "bremsen", "vorderbremse", "hinterbremse", "vorderradbremse", "hinterradbremse", "vordere bremse", "hintere bremse", "vorderen bremse"],
  ...["bremse vorne", "bremse vorn", "bremse hinten", "bremshebel", "bremspedal", "fußbremse", "handbremse", "handbremshebel", "fußbremshebel", "druckpunkt"],
];
const FRONT_TYRE = ["vorderreifen", "vorderradreifen"];
const REAR_TYRE = ["hinterreifen", "hinterradreifen", "heckreifen"];
const TYRE = [
  ...["reifen", "pneu", "pneus", ...FRONT_TYRE, ...REAR_TYRE, "vorderer reifen", "hinterer reifen", "vorderen reifen", "hinteren reifen", "reifen vorne"],
  ...["reifen vorn", "reifen hinten"],
];
const TYRES = TYRE.filter((thing) => ![...FRONT_TYRE, ...REAR_TYRE].includes(thing));
const FLANK = ["reifenflanke", "flanke", "seitenwand", "reifenflanken", "flanken"];
const PADS = ["beläge", "belag", "bremsbeläge", "bremsbelag", "bremsklötze", "bremsklotz", "klötze", "bremssteine", "scheibenbremsbeläge"];
const SHOES = ["bremsbacken", "bremsbacke", "backen", "trommelbeläge", "bremsbackenbeläge"];
const DISC = ["bremsscheibe", "bremsscheiben", "scheibe", "scheiben"];
const BRAKE_HOSE = ["bremsschlauch", "bremsschläuche", "bremsleitung", "bremsleitungen", "stahlflex", "stahlflexleitung", "stahlflexleitungen"];
const FUEL = ["benzin", "sprit", "kraftstoff"];
const FUEL_HOSE = [
  ...["benzinschlauch", "benzinschläuche", "benzinleitung", "benzinleitungen", "kraftstoffschlauch", "kraftstoffleitung", "spritschlauch", "spritleitung"],
];
const COOLANT_HOSE = ["kühlerschlauch", "kühlerschläuche", "kühlmittelschlauch", "kühlmittelschläuche", "kühlwasserschlauch", "kühlwasserschläuche"];
const BATTERY = ["batterie", "akku", "starterbatterie"];
const CHAIN = ["kette", "antriebskette"];
const BEARING = [
  ...["radlager", "radlager vorne", "radlager vorn", "radlager hinten", "vorderradlager", "hinterradlager", "vorderes radlager", "hinteres radlager"],
  ...["vorderrad", "hinterrad"],
];
const WHEEL = ["felge", "felgen", "rad", "vorderrad", "hinterrad", "vorderradfelge", "hinterradfelge", "vorderfelge", "hinterfelge"];
const FETT_AUF = ["öl", "fett", "gabelöl", "motoröl", "bremsflüssigkeit", "kettenspray", "kettenfett", "kettenöl"].flatMap((what) =>
  ["auf der", "auf den", "an der", "an den", "auf die", "auf"].map((on) => `${what} ${on}`),
);
const HAT_FETT = ["öl", "fett", "bremsflüssigkeit", "gabelöl"].flatMap((what) => [
  `hat ${what} abbekommen`,
  `haben ${what} abbekommen`,
  `voll ${what}`,
  `voller ${what}`,
]);
const WENIG_LUFT = [
  ...["weich", "ist weich", "schwammig", "hat wenig luft", "wenig luft", "hat zu wenig luft", "zu wenig luft", "zuwenig luft", "braucht luft"],
];
const RISS_IN = ["riss im", "riss in der", "risse im", "risse in der", "riss am", "riss an der", "risse am", "risse an der", "haarriss im", "haarriss in der"];
const NAIL = ["nagel", "schraube", "scherbe", "glasscherbe", "loch", "dorn", "draht"];

export const GERMAN_DEFECT_WORDS: DefectWords & { readonly kinds: Readonly<Record<DefectKind, DefectWords["kinds"][string]>> } = {
  kinds: {
    "soft brake": [
      {
        things: BRAKE,
        signs: [
          ...ended("weich", "schwammig", "teigig", "wirkungslos", "matschig"),
          ...["kein druck", "keinen druck", "hat keinen druck", "kein druckpunkt", "keinen druckpunkt", "druckpunkt weg", "druckpunkt wandert", "wandert"],
          ...["zieht nicht", "greift nicht", "packt nicht", "bremst nicht", "bremst nicht mehr", "bremst kaum", "bremst kaum noch", "zieht nicht mehr"],
          ...["greift nicht mehr", "fading", "packt nicht mehr", "greift kaum", "greift schlecht", "bremst schlecht", "hat luft", "luft im system"],
          ...["geht ins leere", "fällt durch", "sackt durch", "geht nicht", "geht nicht mehr", "funktioniert nicht", "funktioniert nicht mehr", "ausgefallen"],
          ...["ohne wirkung", "ohne druck", "packt erst spät", "greift erst spät", "packt spät", "greift spät", "kommt spät", "zieht ungleich"],
          ...["keine wirkung", "lässt nach", "schwach", "bis zum griff", "bis zum lenker", "bis an den griff", "bis an den lenker", "bis zum anschlag", "weg"],
          ...["tut nichts", "macht nichts", "tut nix", "macht nix", "bewirkt nichts", "berührt den griff", "berührt den lenker", "schlägt am griff an"],
        ],
      },
      { things: ["hebel"], signs: ["bis zum griff", "bis zum lenker", "bis an den griff", "bis an den lenker", "schwammig", "weich"] },
    ],
    "brake fluid leak": [
      {
        things: [
          ...["bremsflüssigkeit", "bremssattel", "bremssättel", "bremszange", "bremszylinder", "radbremszylinder", "hauptbremszylinder", "bremspumpe"],
          ...["handbremspumpe", "ausgleichsbehälter", "geberzylinder"],
          ...BRAKE_HOSE,
        ],
        signs: LEAK,
      },
      { things: BRAKE, signs: [...LEAK, "verliert bremsflüssigkeit"] },
    ],
    "damaged brake hose": [
      { things: BRAKE_HOSE, signs: HOSE },
      { things: RISS_IN, signs: BRAKE_HOSE },
    ],
    "damaged brake": [
      {
        things: [...PADS, ...SHOES],
        signs: [...ended("gerissen", "verölt", "ölig", "verglast", "verschmutzt", "gebrochen"), ...has("riss", "risse", "riefen", "öl")],
      },
      {
        things: DISC,
        signs: [
          ...ended("gerissen", "riefig", "verölt", "ölig", "gebrochen", "blau angelaufen"),
          ...has("riss", "risse", "haarrisse", "riefen", "tiefe riefen"),
        ],
      },
      { things: RISS_IN, signs: DISC },
      { things: FETT_AUF, signs: [...DISC, ...PADS, ...SHOES, "bremsbelägen", "belägen"] },
      { things: [...DISC, ...PADS, ...SHOES], signs: HAT_FETT, signLast: true },
    ],
    "odd brake": [
      {
        things: BRAKE,
        signs: ["komisch", "seltsam", "merkwürdig", "anders", "eigenartig", "nicht richtig", "nicht normal", "macht zicken", "spinnt", "stimmt nicht"],
        signLast: true,
      },
    ],
    "old brake fluid": [
      {
        things: ["bremsflüssigkeit", "bremsflüssigkeit vorne", "bremsflüssigkeit hinten", "bremsbrühe"],
        signs: [
          ...ended("schwarz", "braun", "dunkel", "trüb", "dunkelbraun", "tiefschwarz", "pechschwarz", "alt", "uralt", "verfärbt"),
          ...["dunkle", "dunkles", "dunkler", "brühe", "wie kaffee", "wie cola"],
        ],
        signLast: true,
      },
    ],
    "dragging brake": [
      {
        things: [...BRAKE, "bremssattel", "bremssättel", "bremszange", "bremskolben", "kolben", ...PADS],
        signs: [
          ...["schleift", "schleifen", "klemmt", "klemmen", "fest", "löst nicht", "lösen nicht", "hängt", "hängen", "festgegangen", "sitzt fest"],
          ...["sitzen fest", "blockiert", "macht nicht auf", "geht nicht zurück", "gehen nicht zurück", "festgefressen", "wird heiß"],
        ],
      },
    ],
    "brake noise": [
      {
        things: [...BRAKE, ...PADS, ...DISC],
        signs: [
          ...["quietscht", "quietschen", "kratzt", "kratzen", "metall auf metall", "auf metall", "nur noch metall", "bis aufs blech", "schabt", "mahlt"],
          ...["knirscht", "kreischt", "macht geräusche"],
        ],
      },
    ],
    "pulsing brake": [
      {
        things: [...BRAKE, ...DISC],
        signs: [
          ...["rubbelt", "rubbeln", "pulsiert", "pulsieren", "stempelt"],
          ...ended("verzogen"),
          ...["hat schlag", "hat einen schlag", "haben schlag", "eiert", "schlägt"],
        ],
      },
    ],
    "brake light": [
      { things: ["bremslicht", "bremsleuchte", "bremslichtschalter"], signs: [...OUT, "leuchtet dauernd", "brennt dauernd", "leuchtet ständig"] },
    ],
    headlight: [{ things: ["scheinwerfer", "abblendlicht", "fernlicht", "frontlicht", "frontscheinwerfer", "hauptscheinwerfer", "fahrlicht"], signs: OUT }],
    light: [
      {
        things: [
          ...["rücklicht", "schlusslicht", "blinker", "blinker links", "blinker rechts", "kennzeichenbeleuchtung", "kennzeichenleuchte", "standlicht"],
          ...["tagfahrlicht", "nummernschildbeleuchtung", "blinkrelais", "rücklichtbirne", "blinkerbirne", "birne vom rücklicht", "birne vom blinker"],
          ...["warnblinker"],
        ],
        signs: OUT,
      },
      {
        things: ["birne", "glühbirne", "rücklichtbirne", "blinkerbirne", "birne vom rücklicht", "birne vom blinker", "birne vom bremslicht"],
        signs: ["durch", "kaputt", "defekt"],
      },
    ],
    horn: [{ things: ["hupe"], signs: [...OUT, "stumm", "leise", "krächzt", "hupt nicht"] }],
    "flat battery": [
      {
        things: BATTERY,
        signs: [
          ...ended("leer", "tot", "tiefentladen", "schwach", "platt"),
          ...["hält keine ladung", "hält die ladung nicht", "hält nicht", "nimmt keine ladung an", "entlädt sich", "hinüber", "am ende", "im eimer", "kaputt"],
          ...["defekt", "ist fertig", "ist wohl fertig", "ist völlig fertig", "ist komplett fertig", "leere", "macht schlapp", "pfeift aus dem letzten loch"],
        ],
      },
    ],
    "damaged battery": [
      {
        things: [...BATTERY, "batteriegehäuse"],
        signs: [
          ...ended("eingefroren", "gefroren", "aufgebläht", "geplatzt", "gerissen", "undicht", "aufgequollen"),
          ...["ausgelaufen", "läuft aus", "leckt", "gast", "heiß", "durchgefroren", ...has("riss", "risse", "beule")],
        ],
      },
      { things: ["batteriesäure", "säure"], signs: ["läuft aus", "tropft", "ausgelaufen", "tritt aus"] },
    ],
    "not charging": [
      {
        things: ["lichtmaschine", "lima", "regler", "laderegler", "gleichrichter", "stator", ...BATTERY],
        signs: ["lädt nicht", "lädt nicht mehr", "wird nicht geladen", "wird nicht mehr geladen", ...ended("durchgebrannt", "verschmort"), "lädt kaum"],
      },
      { things: ["lichtmaschine", "lima", "regler", "laderegler", "gleichrichter", "stator"], signs: [...ended("defekt", "kaputt"), "hinüber", "tot"] },
    ],
    "warning light": [
      {
        things: [
          ...["abs-leuchte", "abs leuchte", "abs-lampe", "abs lampe", "abs", "öldruckleuchte", "öldrucklampe", "öllampe", "ölkontrollleuchte"],
          ...["ölwarnleuchte", "motorkontrollleuchte", "mkl", "warnleuchte", "warnlampe", "kontrollleuchte", "temperaturleuchte", "temperaturwarnleuchte"],
        ],
        signs: ["an", "leuchtet", "leuchtet auf", "brennt", "blinkt", "geht nicht aus", "bleibt an", "geht an", "flackert"],
      },
    ],
    "fuel leak": [
      {
        things: [...FUEL, "benzinhahn", "vergaser", "tank", "tankdeckel", "schwimmerkammer", ...FUEL_HOSE],
        signs: [...LEAK, "läuft über", "läuft", "riecht", "stinkt", "leckage", "verliert benzin", "verliert sprit"],
      },
      { things: ["riecht nach", "stinkt nach", "geruch nach"], signs: FUEL },
    ],
    "damaged fuel hose": [
      { things: FUEL_HOSE, signs: HOSE },
      { things: RISS_IN, signs: FUEL_HOSE },
    ],
    "running rough": [
      {
        things: ["motor", "motorrad", "maschine", "moped", "karre", "kiste"],
        signs: [
          ...["läuft unrund", "läuft nicht rund", "läuft nicht richtig", "stottert", "ruckelt", "geht aus", "stirbt ab", "springt nicht an"],
          ...["springt nicht mehr an", "springt schlecht an", "patscht", "setzt aus", "hat aussetzer", "aussetzer", "nimmt kein gas an", "zieht nicht"],
          ...["säuft ab", "hat zündaussetzer", "geht immer wieder aus", "läuft nur auf einem zylinder", "läuft auf einem zylinder", "verschluckt sich"],
          ...["fehlzündungen", "hat fehlzündungen", "startet nicht", "startet schlecht"],
        ],
      },
    ],
    "oil leak": [
      {
        things: [
          ...["motor", "öl", "motoröl", "ölwanne", "ventildeckel", "ventildeckeldichtung", "ölfilter", "motordeckel", "kupplungsdeckel"],
          ...["zylinderfußdichtung", "zylinderkopfdichtung", "kopfdichtung", "fußdichtung", "ablassschraube", "ölablassschraube", "getriebe", "kardan"],
          ...["endantrieb", "limadeckel", "lichtmaschinendeckel", "ölleitung", "ölkühler"],
        ],
        signs: [...LEAK, ...LOSES_OIL],
      },
    ],
    "engine noise": [
      {
        things: ["motor", "steuerkette", "kurbelwelle", "pleuel", "pleuellager", "ventiltrieb", "ventile"],
        signs: [
          ...["klappert", "klappern", "klackert", "klackern", "rasselt", "klopft", "klingelt", "nagelt", "tackert", "macht geräusche"],
          ...["macht komische geräusche", "hat einen fresser", "fest", "festgegangen", "kolbenfresser", "scheppert", "mahlt"],
        ],
      },
    ],
    smoke: [
      {
        things: ["motor", "auspuff", "motorrad", "maschine"],
        signs: ["qualmt", "raucht", "rußt", "blauer rauch", "weißer rauch", "schwarzer rauch", "qualmt blau", "qualmt weiß", "raucht blau", "raucht weiß"],
      },
    ],
    exhaust: [
      {
        things: ["auspuff", "krümmer", "krümmerdichtung", "auspuffdichtung", "schalldämpfer", "endtopf", "endschalldämpfer", "krümmerschraube"],
        signs: [...LOOSE, ...ended("undicht", "gerissen", "durchgerostet", "abgerissen"), "bläst", "bläst ab", "durch", ...has("loch", "riss")],
      },
    ],
    "coolant leak": [
      {
        things: ["kühlwasser", "kühlflüssigkeit", "kühlmittel", "kühler", "wasserpumpe", "wasserschlauch", ...COOLANT_HOSE],
        signs: [...LEAK, "verliert wasser", "verliert kühlwasser", "verliert kühlmittel", "verliert kühlflüssigkeit", "fehlt", ...has("loch")],
      },
    ],
    "damaged coolant hose": [{ things: COOLANT_HOSE, signs: HOSE }],
    overheating: [
      {
        things: ["motor", "temperatur", "kühlwasser", "motorrad", "maschine", "temperaturanzeige"],
        signs: ["überhitzt", "überhitzt sich", "wird zu heiß", "zu heiß", "kocht", "kocht über", "im roten bereich", "im roten", "zu hoch"],
      },
      {
        things: ["lüfter", "kühlerlüfter", "ventilator"],
        signs: ["läuft nicht", "läuft nicht an", "springt nicht an", "dreht nicht", "dreht sich nicht", "geht nicht", "kaputt", "defekt"],
      },
    ],
    "slipping clutch": [
      {
        things: ["kupplung"],
        signs: [
          ...["rutscht", "rutscht durch", "schleift durch", "greift nicht", "packt nicht", "kommt spät", "kommt ganz spät", "kommt sehr spät"],
          ...["kommt erst spät", "verbrannt", "verraucht"],
          ...IS_DONE_FOR,
        ],
      },
      { things: ["kupplungsscheiben", "kupplungslamellen", "lamellen"], signs: [...IS_DONE_FOR, "verbrannt"] },
    ],
    "soft clutch": [
      {
        things: ["kupplung", "kupplungshebel"],
        signs: [...ended("weich", "schwammig", "teigig"), "kein druck", "keinen druck", "hat keinen druck", "bis zum griff", "bis zum lenker", "fällt durch"],
      },
    ],
    "no clutch play": [
      { things: ["kupplung", "kupplungshebel", "kupplungszug"], signs: ["kein spiel", "hat kein spiel", "ohne spiel", "kein leerweg", "hat keinen leerweg"] },
    ],
    "dragging clutch": [
      { things: ["kupplung"], signs: ["trennt nicht", "trennt nicht richtig", "trennt nicht sauber", "trennt schlecht", "rupft", "klebt", "schleift"] },
    ],
    gearbox: [
      {
        things: [
          ...["getriebe", "gang", "gänge", "schaltung", "erster gang", "zweiter gang", "dritter gang", "vierter gang", "fünfter gang", "sechster gang"],
          ...["zweite gang", "dritte gang"],
        ],
        signs: [
          ...["springt raus", "springt heraus", "springen raus", "hakt", "kracht", "krachen", "geht nicht rein", "gehen nicht rein", "gehen schwer rein"],
          ...["heult", "mahlt", "lässt sich nicht schalten", "lässt sich schlecht schalten"],
        ],
      },
    ],
    "chain at its end": [
      {
        things: ["kettenspanner", "spanner", "kettenversteller"],
        signs: ["am ende", "am anschlag", "ganz hinten", "ausgereizt", "auf anschlag", "am ende der skala", "am ende der markierung", "im roten bereich"],
      },
      {
        things: [...CHAIN, "kettensatz", "kettenkit"],
        signs: ["verschlissen", "gelängt", "ausgelängt", "ausgeleiert", "lässt sich nicht mehr spannen", ...IS_DONE_FOR],
      },
    ],
    chain: [
      {
        things: CHAIN,
        signs: [
          ...ended("gerissen", "abgesprungen", "geknickt"),
          ...["springt", "springt über", "rutscht über", "steifes glied", "steife glieder", "hat steife glieder", "hat ein steifes glied"],
          ...["hat feste glieder", "klackert", "rasselt", "ungleiche spannung", "hat ungleiche spannung", "schlägt", "abgefallen", "runtergesprungen"],
          ...[
            "hat feste stellen",
            "hat eine feste stelle",
            "feste stelle",
            "feste stellen",
            "ungleich gelängt",
            "hat verschiedene spannung",
            "verliert rollen",
          ],
          ...["hat einen riss", "hat ein gebrochenes glied", "gebrochen", "clip fehlt"],
        ],
      },
      {
        things: [
          ...[
            "kettenschloss",
            "kettenschlossfeder",
            "kettenglied",
            "kettenglieder",
            "kettenclip",
            "kettenlasche",
            "kettenlaschen",
            "kettenrolle",
            "kettenrollen",
          ],
          ...["federclip", "schlossclip", "clip vom kettenschloss", "nietschloss", "clipschloss", "kettenschloss-clip"],
        ],
        signs: ["fehlt", "fehlen", "offen", "locker", "verloren", "gebrochen", "gerissen", "lose", "hat einen riss", "weg", "abgefallen", "steif", "verbogen"],
      },
    ],
    "chain tension": [
      {
        things: CHAIN,
        signs: [
          ...ended("locker"),
          ...["zu locker", "viel zu locker", "zu stramm", "viel zu stramm", "zu straff", "lockere", "hängt durch", "hängt", "lose"],
          ...["kein durchhang", "ohne durchhang", "hat keinen durchhang", "hat gar keinen durchhang", "hat kein spiel", "hat gar kein spiel"],
        ],
      },
    ],
    "rusty chain": [{ things: CHAIN, signs: [...ended("rostig", "verrostet", "angerostet"), "hat rost", "rost"] }],
    "worn sprockets": [
      {
        things: ["ritzel", "kettenrad", "kettenblatt", "kettenräder", "ritzelzähne", "ritzelmutter"],
        signs: [
          ...[...DONE_FOR.filter((sign) => sign !== "runter" && sign !== "fertig"), "ist fertig", "sind fertig", "spitz", "spitze zähne", "hat haifischzähne"],
          ...["haifischzähne", "haizähne", "locker", "lose", "wackelt", "zähne fehlen", "zahn fehlt", "abgebrochen", "hat spiel", "fehlt"],
        ],
      },
    ],
    "drive belt": [
      {
        things: ["riemen", "antriebsriemen", "zahnriemen"],
        signs: [
          ...ended("rissig", "ausgefranst", "gerissen", "porös"),
          ...["rutscht", "springt", "franst aus", "zahn fehlt", "zähne fehlen"],
          ...has("risse", "riss"),
        ],
      },
    ],
    puncture: [
      {
        things: [...TYRE, "vorderrad", "hinterrad", "vorne", "hinten"],
        signs: [
          ...["verliert luft", "verlieren luft", "verliert langsam luft", "verliert ständig luft", "verliert immer luft", "verliert immer wieder luft"],
          ...["verliert druck", "verliert über nacht luft", "verliert beim stehen luft", "luft raus", "keine luft", "hat keine luft", "hat keine luft mehr"],
          ...["luft weg", "platten", "hat einen platten", "hat platten"],
        ],
      },
      {
        things: TYRE,
        signs: [...ended("platt"), "platte", "geplatzt", "hat ein loch", "loch drin", "hält keine luft", "hält die luft nicht", "hält luft nicht"],
      },
      { things: TYRE, signs: NAIL.slice(0, 5).flatMap((nail) => [nail, `${nail} drin`, `hat einen ${nail}`, `hat eine ${nail}`, `hat ein ${nail}`]) },
      { things: NAIL.flatMap((nail) => [`${nail} im`, `${nail} in`, `${nail} steckt im`]), signs: TYRE },
      { things: ["ventil", "reifenventil"], signs: ["undicht", "leckt", "verliert luft", "porös", "rissig", "bläst ab"] },
    ],
    "plugged tyre": [
      { things: TYRE, signs: [...ended("geflickt", "gestopft"), "provisorisch geflickt", "hat einen flicken", "hat einen stopfen", "mit stopfen"] },
      {
        things: TYRE,
        signs: ["repariert", "wurde repariert", "von innen geflickt", "von innen repariert", "vulkanisiert", "mit flicken repariert"],
        signLast: true,
      },
      { things: ["flicken im", "stopfen im", "pannenstreifen im", "pannenwurst im"], signs: TYRE },
    ],
    "damaged tyre": [
      {
        things: [...TYRE, ...FLANK],
        signs: [
          ...["schnitt", "eingeschnitten", "aufgeschlitzt", "bis auf die karkasse", "karkasse sichtbar", "gewebe sichtbar", "bis aufs gewebe"],
          ...["karkasse kommt durch"],
          ...["gewebe schaut raus", "aufgerissen", ...has("beule", "schnitt", "beulen", "blase", "ausbeulung")],
        ],
      },
      { things: ["beule im", "beule in der", "beule an der", "schnitt im", "schnitt in der"], signs: [...TYRE, ...FLANK] },
    ],
    "cracked tyre": [
      { things: [...TYRE, ...FLANK], signs: CRACKED },
      { things: RISS_IN, signs: [...TYRE, ...FLANK] },
    ],
    "worn tyre": [
      { things: TYRES, signs: BALD },
      { things: ["abgefahrener", "abgefahrene", "abgefahrenen", "blanker", "blanke", "glatter"], signs: TYRES },
      { things: TYRES, signs: [...DONE_FOR, "unter 1,6", "verschleißgrenze erreicht"], signLast: true },
      {
        things: ["profil", "reifenprofil", "profiltiefe", "restprofil"],
        signs: ["weg", "runter", "abgefahren", "am ende", "am limit", "unter der grenze", "verschwunden"],
        signLast: true,
      },
      {
        things: ["verschleißmarken", "verschleißmarke", "verschleißindikator", "verschleißindikatoren", "twi"],
        signs: ["erreicht", "sichtbar", "bündig", "zu sehen"],
      },
    ],
    "cupped tyre": [{ things: TYRE, signs: ["hat sägezahn", "sägezahn", "sägezähne", "hat sägezähne", "ungleichmäßig abgefahren", "ungleich abgefahren"] }],
    "squared-off tyre": [
      {
        things: TYRE,
        signs: [...ended("eckig", "kantig"), "eckig gefahren", "mittig platt", "in der mitte platt", "in der mitte abgefahren"],
      },
    ],
    "wheel bearing": [
      {
        things: BEARING,
        signs: [
          ...ended("defekt", "rau", "ausgeschlagen", "kaputt", "verschlissen"),
          ...["hat spiel", "haben spiel", "spiel", "läuft rau", "brummt", "brummen", "mahlt", "heult", "hinüber", "fertig", "ist fertig", "sind fertig"],
          ...["durch", "wackelt", "hat luft", "knirscht", "rumpelt", "macht geräusche", "rastet", "läuft schwer", "am ende", "im eimer", "trocken", "singt"],
        ],
      },
      { things: ["spiel im", "spiel am"], signs: BEARING },
    ],
    "swingarm bearing": [
      {
        things: ["schwinge", "schwingenlager", "schwingenlagerung", "schwingenbuchsen", "schwingenachse"],
        signs: [...LOOSE, ...ended("ausgeschlagen", "verschlissen"), "fest", "hinüber", "fertig", "festgegangen"],
      },
      { things: ["spiel in der", "spiel im", "spiel an der"], signs: ["schwinge", "schwingenlager"] },
    ],
    spoke: [{ things: ["speiche", "speichen"], signs: [...LOOSE, ...ended("gebrochen", "gerissen", "verbogen", "abgerissen"), "fehlt", "fehlen"] }],
    "damaged wheel": [
      {
        things: WHEEL,
        signs: [
          ...ended("verbogen", "gerissen", "verzogen", "gebrochen", "verbeult"),
          ...["eiert", "hat höhenschlag", "hat seitenschlag", "läuft unrund", ...has("schlag", "delle", "dellen", "riss", "beule", "achter")],
        ],
      },
      { things: ["delle in der", "riss in der", "riss im", "schlag in der", "beule in der"], signs: WHEEL },
    ],
    steering: [
      {
        things: ["lenkung", "lenkkopflager", "lenkkopf", "steuerkopflager", "steuerkopf"],
        signs: [
          ...[...LOOSE, ...ended("ausgeschlagen", "schwergängig", "verschlissen", "rau", "schwer", "steif")],
          ...["hakt", "rastet", "rastet ein", "rastpunkt", "rastpunkte", "hat rastpunkt", "hat rastpunkte", "hat einen rastpunkt", "hat eine raststelle"],
          ...["raststelle", "mit rastpunkt", "klemmt", "klackt", "knackt", "hinüber", "fertig", "ist fertig", "geht schwer", "durch", "schwammig", "am ende"],
          ...["im eimer"],
        ],
      },
      {
        things: ["lenkung", "fahrverhalten"],
        signs: ["komisch", "seltsam", "merkwürdig", "unruhig", "nervös"],
        signLast: true,
      },
      {
        things: ["lenker", "lenkerstummel", "stummel"],
        signs: [...ended("verbogen", "verdreht"), "locker", "lose", "wackelt", "flattert", "schlägt", "vibriert stark", "steht schief", "schief"],
      },
      {
        things: ["motorrad", "maschine", "moped", "karre"],
        signs: [
          ...["zieht nach links", "zieht nach rechts", "pendelt", "schwimmt", "flattert", "schlingert", "fährt nicht geradeaus", "läuft nicht geradeaus"],
          ...["wackelt", "eiert"],
        ],
      },
      { things: ["spiel im", "spiel in der", "rastpunkt im", "rastpunkt in der"], signs: ["lenkkopflager", "lenkkopf", "lenkung", "steuerkopf"] },
    ],
    "fork leak": [
      {
        things: [
          ...["gabel", "gabeldichtring", "gabelsimmerring", "gabelsimmerringe", "simmerring", "simmerringe", "gabelholm", "gabelholme", "gabelbein"],
          ...["standrohr", "standrohre", "tauchrohr", "gabeldichtung", "gabelöl", "dichtring"],
        ],
        signs: [...LEAK, ...LOSES_OIL, ...ended("kaputt", "defekt"), "hinüber", "durch", "fertig", "ist fertig", "sind fertig"],
      },
    ],
    "shock leak": [
      {
        things: ["federbein", "federbeine", "stoßdämpfer", "dämpfer", "zentralfederbein"],
        signs: [
          ...LEAK,
          ...LOSES_OIL,
          ...ended("kaputt", "defekt"),
          ...["hinüber", "durch", "durchgeschlagen", "fertig", "ist fertig", "ohne dämpfung", "dämpft nicht"],
        ],
      },
    ],
    "sticking throttle": [
      {
        things: ["gas", "gasgriff", "gaszug", "gaszüge", "drosselklappe", "drosselklappen", "gasdrehgriff"],
        signs: [
          ...["hängt", "hängen", "klemmt", "klemmen", "dreht nicht zurück", "geht nicht zurück", "geht nicht zu", "bleibt hängen", "bleibt stehen", "hakt"],
          ...["schließt nicht"],
          ...["schnappt nicht zurück", "geht schwer", ...ended("schwergängig"), "klebt"],
        ],
      },
    ],
    cable: [
      {
        things: ["kupplungszug", "kupplungsseil", "gaszug", "gaszüge", "bowdenzug", "bowdenzüge", "bremszug", "seilzug", "chokezug"],
        signs: [...ended("ausgefranst", "gerissen", "geknickt", "schwergängig", "aufgespleißt", "angerissen"), "franst aus", "spleißt auf", "geht schwer"],
      },
    ],
    mirror: [{ things: ["spiegel", "rückspiegel", "außenspiegel", "linker spiegel", "rechter spiegel"], signs: [...LOOSE, ...BROKEN] }],
    "side stand": [
      {
        things: ["seitenständer", "seitenständerfeder", "seitenständerschalter", "ständer", "hauptständer", "ständerfeder"],
        signs: [
          ...LOOSE,
          ...BROKEN,
          ...["klappt nicht ein", "klappt runter", "bleibt nicht oben", "hängt", "hängt runter", "klemmt", "geht nicht", "funktioniert nicht"],
        ],
      },
    ],
    fastener: [
      {
        things: [
          ...["schraube am bremssattel", "schrauben am bremssattel", "schraube am rahmen", "schraube am motor", "schraube", "mutter", "schrauben", "muttern"],
          ...["achsmutter", "bremssattelschraube", "bremssattelschrauben", "steckachse", "bolzen", "splint", "motorschraube", "klemmschraube"],
          ...["ablassschraube", "ölablassschraube"],
        ],
        signs: [
          ...ended("locker", "abgerissen", "ausgerissen", "gerissen", "überdreht"),
          ...["lockere", "lose", "loser", "fehlt", "fehlen", "verloren", "rausgefallen", "weg"],
        ],
      },
      { things: ["gewinde"], signs: ["ausgerissen", "überdreht", "kaputt", "hinüber"] },
      {
        things: ["kennzeichenhalter", "verkleidung", "schutzblech", "kotflügel", "fußraste", "gepäckträger", "kofferträger", "sturzbügel", "hitzeschutz"],
        signs: [...LOOSE, "fehlt", "abgefallen", "hängt"],
      },
      { things: ["fußraste", "fußrasten"], signs: ["abgebrochen", "gebrochen"] },
    ],
    frame: [
      {
        things: ["rahmen", "heckrahmen", "hilfsrahmen", "schwinge", "rahmenheck", "motorhalter", "fußrastenhalter", "rahmenrohr"],
        signs: [...ended("gerissen", "gebrochen", "verbogen", "angerissen", "verzogen", "durchgerostet"), ...has("riss", "risse")],
      },
      { things: RISS_IN, signs: ["rahmen", "heckrahmen", "schwinge"] },
    ],
    "worn front tyre": [
      { things: FRONT_TYRE, signs: BALD },
      { things: FRONT_TYRE, signs: DONE_FOR, signLast: true },
      { things: ["abgefahrener", "abgefahrenen", "blanker", "glatter"], signs: FRONT_TYRE },
    ],
    "worn rear tyre": [
      { things: REAR_TYRE, signs: BALD },
      { things: REAR_TYRE, signs: DONE_FOR, signLast: true },
      { things: ["abgefahrener", "abgefahrenen", "blanker", "glatter"], signs: REAR_TYRE },
    ],
    "worn pads": [
      { things: PADS, signs: WORN_LINING, signLast: true },
      { things: ["abgefahrene", "abgefahrenen", "verschlissene", "verschlissenen"], signs: PADS },
    ],
    "worn front pads": [],
    "worn rear pads": [],
    "worn shoes": [
      { things: SHOES, signs: WORN_LINING, signLast: true },
      {
        things: [
          ...["bremsnachsteller", "nachsteller", "nachstellmutter", "bremsgestänge", "bremsgestängeschraube", "bremseinsteller", "bremsseilversteller"],
          ...[
            "trommelbremse",
            "bremstrommel",
            "bremse",
            "hinterradbremse",
            "vorderradbremse",
            "hintere bremse",
            "vordere bremse",
            "bremse hinten",
            "bremse vorne",
          ],
        ],
        signs: [
          ...["am ende", "ganz am ende", "am anschlag", "auf anschlag", "ausgereizt", "lässt sich nicht mehr nachstellen", "nicht mehr nachstellbar"],
          ...["kein nachstellweg mehr", "lässt sich nicht weiter nachstellen"],
        ],
        signLast: true,
      },
      {
        things: [
          ...["verschleißanzeige der bremse", "verschleißanzeige hinten", "verschleißanzeige vorne", "verschleißanzeiger", "bremsverschleißanzeige"],
          ...["bremsbackenanzeige", "verschleißzeiger", "bremsschlüsselhebel"],
        ],
        signs: [
          ...["über der marke", "über die marke", "an der marke", "hinter der marke", "jenseits der marke", "über der markierung", "an der markierung"],
          ...["am ende", "am limit", "über dem limit", "im roten", "im roten bereich", "an der verschleißgrenze", "über der verschleißgrenze"],
        ],
        signLast: true,
      },
    ],
    "worn front shoes": [],
    "worn sidecar tyre": [],
    "worn sidecar brake": [],
    "worn rear shoes": [],
    "worn front drum": [],
    "worn rear drum": [],
    "worn disc": [{ things: DISC, signs: [...WORN_LINING, ...has("grat")], signLast: true }],
    "low brake fluid": [],
    "low front brake fluid": [],
    "low rear brake fluid": [],
    "wrong front pressure": [{ things: [...FRONT_TYRE, "vorderer reifen", "reifen vorne", "reifen vorn"], signs: WENIG_LUFT, signLast: true }],
    "wrong rear pressure": [{ things: [...REAR_TYRE, "hinterer reifen", "reifen hinten"], signs: WENIG_LUFT, signLast: true }],
    "wrong sidecar pressure": [],
    "slack chain": [],
    "tight chain": [],
    "slack belt": [],
    "worn chain": [],
    "no throttle play": [],
    "low engine oil": [],
    // The word for it is also that of the drive belt.
    "timing belt": [],
    "tight valve": [{ things: ["ventile", "auslassventile", "einlassventile", "ventilspiel"], signs: ["zu eng", "zu klein", "zu stramm"], signLast: true }],
    "oily tyre": [
      {
        things: ["öl auf dem", "öl am", "motoröl auf dem", "kettenfett auf dem", "gabelöl auf dem", "bremsflüssigkeit auf dem"],
        signs: ["reifen", "hinterreifen", "vorderreifen"],
      },
      { things: ["reifen", "hinterreifen", "vorderreifen"], signs: ["ölig", "voller öl", "verölt"] },
    ],
    rubbing: [
      {
        things: ["reifen", "hinterreifen", "vorderreifen", "schutzblech", "kettenschutz", "kotflügel"],
        signs: ["schleift", "streift", "reibt", "berührt"],
        signLast: true,
      },
    ],
    "fitted wrong": [{ things: ["reifen", "hinterreifen", "vorderreifen", "beläge"], signs: ["falsch herum", "falschrum", "verkehrt herum"], signLast: true }],
    "attacked brake seals": [],
    "attacked clutch seals": [],
    "mixed brake fluid": [],
    "mixed clutch fluid": [],
    // By what the bike is fitted with.
    "damaged lithium battery": [],
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
