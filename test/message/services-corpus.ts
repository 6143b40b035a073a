// Whole services as riders tell of them, and what each must come to. Bikes and day as in corpus.ts; one bike only, Heron, whose dial stood at 14,210 mi.
// `?service` asks which one of its plan it was; nothing is saved before that.

import type { Case } from "./corpus.ts";

const c = (say: string, ...means: readonly string[]): Case => ({ say, means });

export const SERVICES: readonly Case[] = [
  c("had it serviced at 14,300 mi", "W ?=done at 14300 (by shop)@Heron ?service"),
  c("serviced at the dealer at 14,300 mi", "W ?=done at 14300 (by dealer)@Heron ?service"),
  c("just had the service done, 14,300 mi", "W ?=done at 14300 (by shop)@Heron ?service"),
  c("16,000 mi service at the shop, receipt", "W ?=done (by shop)@Heron ?service"),
  c("service done by Miller's garage at 14,300 mi on Heron, 210 EUR", "W ?=done at 14300 (cost 21000EUR; by Miller's garage)@Heron ?service"),
  c("16,000 service at Miller's on 20 November, 380", "W ?=done on 2026-11-20 (cost 38000; by Miller's)@Heron ?service"),
  c("16,000 service at millers, 380", "W ?=done (cost 38000; by millers)@Heron ?service"),
  c("took it in for the 16,000 service, 380", "W ?=done (cost 38000; by shop)@Heron ?service"),
  c("big service done yesterday", "W ?=done on 2026-11-24@Heron ?service"),
  c("big service yesterday", "W ?=done on 2026-11-24@Heron ?service"),
  c("annual service at the dealer yesterday at 14,300 for 210", "W ?=done at 14300 on 2026-11-24 (cost 21000; by dealer)@Heron ?service"),
  c("service was done last year at the dealer", "W ?=done on 2025-01-01 (by dealer)@Heron ?service"),
  c("serviced last spring at 12,000 by the previous owner", "W ?=done at 12000 on 2026-03-01 (by previous owner)@Heron ?service"),
  c("14,300 mi, service done by me", "W ?=done at 14300@Heron ?service"),
  c("Heron serviced, 14,300", "W ?=done at 14300@Heron ?service"),
  c("Heron's back from the service, 14,300 mi, 210 EUR", "W ?=done at 14300 (cost 21000EUR)@Heron ?service"),
  c("the last service was at 12,100", "W ?=done at 12100@Heron ?service"),
  c("8,000 and 12,000 service done at the dealer", "W ?=done (by dealer)@Heron ?service", "W ?=done (by dealer)@Heron ?service"),
  // A service of one thing is that thing's line.
  c("oil service at the garage at 14,330, 120", "W engine-oil.replace=done at 14330 (cost 12000; by garage)@Heron"),
  c("had the oil service done at Corner Garage, 14,300 mi, 89.90", "W engine-oil.replace=done at 14300 (cost 8990; by Corner Garage)@Heron"),
  c("valve service at 14,300 mi", "W valve-clearance.adjust=done at 14300@Heron"),
  c("oil change at the dealer at 14,300, 120", "W engine-oil.replace=done at 14300 (cost 12000; by dealer)@Heron"),
  // What was done beside it is kept as well, and what it cost is said once.
  c("did the 12,000 service and a new chain at 14,300", "W ?=done at 14300@Heron ?service", "W chain.replace=done at 14300@Heron"),
  c("16,000 service at the shop, 380, new front tyre too", "W ?=done (cost 38000; by shop)@Heron ?service", "W front-tyre.replace=replaced@Heron"),
  // None that was done.
  c("14,300 mi, service booked for Friday", "odometer 14300 mi@Heron"),
  c("14,300 mi, next service in spring", "odometer 14300 mi@Heron"),
  c("full service history, 14,300 mi", "odometer 14300 mi@Heron"),
];

/** In German; one bike only, Bramble, whose dial stood at 8,640 km. */
export const SERVICES_GERMAN: readonly Case[] = [
  c("Inspektion bei 8.900 km gemacht", "W ?=done at 8900@Bramble ?service"),
  c("Kundendienst beim Händler, 380 €", "W ?=done (cost 38000EUR; by händler)@Bramble ?service"),
  c("große Inspektion gestern in der Werkstatt", "W ?=done on 2026-11-24 (by werkstatt)@Bramble ?service"),
  c("Jahresinspektion beim Händler bei 8900 km, 280 Euro", "W ?=done at 8900 (cost 28000EUR; by händler)@Bramble ?service"),
  c("Inspektion machen lassen bei Müller, 8.900 km, 280 €", "W ?=done at 8900 (cost 28000EUR; by Müller)@Bramble ?service"),
  c("9000er Inspektion gemacht, 8900 km", "W ?=done at 8900@Bramble ?service"),
  c("Ölservice beim Händler bei 8900 km, 120 Euro", "W engine-oil.replace=done at 8900 (cost 12000EUR; by händler)@Bramble"),
];

/** Talk of services, from which nothing comes. */
export const NO_SERVICE: readonly string[] = [
  ...["service due at 16,000", "no service since 12,000", "next service at 16,000 mi", "it has a full service history", "service at the shop is booked"],
  ...["the dealer quoted 420 for the big service", "when is the big service due?", "need the annual service", "great service at the café yesterday"],
  ...["service station at the next exit", "the garage wants 95 an hour", "took the service road home", "service manual says 98 Nm"],
];
