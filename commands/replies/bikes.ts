// Bikes as words.

import type { Said } from "../../src/chat/reply.ts";
import type { BikeShown } from "../../src/usecases/change-bike.ts";
import type { Words } from "../../src/words/en/english.ts";
import { showEach } from "./defects.ts";
import { press, said } from "./said.ts";

export function sayBikes(bikes: readonly BikeShown[], words: Words): Said {
  if (bikes.length === 0) return said([words.bikes.none()]);
  return said(bikes.flatMap((bike) => [...linesOf(bike, words)]));
}

/** A bike just changed: as it stands now, with what its plan holds. */
export function sayChanged(bike: BikeShown, words: Words): Said {
  const lines = [words.bikes.changed(bike.nickname, bike.items), ...linesOf(bike, words)];
  if (bike.state === "laid up") lines.push(words.bikes.resting(bike.nickname));
  if (bike.standing != null) lines.push(...words.outlook.whileItStands(bike.standing, words.today));
  if (bike.pictured !== undefined) lines.push(words.pictures.pictured(bike.nickname, bike.pictured));
  if (bike.brought !== undefined) lines.push(words.evening.brought(bike.nickname, bike.brought));
  if (bike.fluid !== undefined) lines.push(...words.fluidEntered(bike.fluid));
  if (bike.brakesNow !== undefined) lines.push(words.bikes.brakesNow(bike.nickname, bike.brakesNow));
  const { noted, lapsed } = bike.looked ?? { noted: [], lapsed: [] };
  lines.push(...noted.map((defect) => words.defects.noted(defect)));
  if (lapsed.length > 0) lines.push(words.defects.lapsed(lapsed.map((defect) => defect.words)));
  const caution = words.caution(noted[0]?.caution ?? (bike.fluid === undefined ? null : "brake fluid"));
  return said(lines, { caution, actions: [...showEach(noted, words), press("show-due", bike.bike, words.bikes.labels.due)] });
}

function linesOf(bike: BikeShown, words: Words): string[] {
  const use = words.bikes.use(bike);
  const names = bike.byNames.length === 0 ? [] : [words.bikes.byNames(bike.byNames)];
  return [words.bikes.shown(bike, words.today), ...names, words.bikes.fitted(bike.equipment), ...(use === null ? [] : [use])];
}
