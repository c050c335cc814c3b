import { box, catalogueBox, content, fitting, hole } from "../core/plan/schema/boxes.js";
import {
  builtEntryKeys,
  builtHoleKeys,
  builtJointKeys,
  builtKeys,
  builtLengthKeys,
  builtRatingKeys,
} from "../core/plan/schema/built.js";
import { longProtection, switchSection } from "../core/plan/schema/common.js";
import { ambient, conductors, craft, showsKeys } from "../core/plan/schema/craft.js";
import { faceHole, faceKeys, measuredPair, opening, referenceKeys, zone } from "../core/plan/schema/faces.js";
import type { Keys } from "../core/plan/schema/fields.js";
import { formCheck, formFigure, formKeys, formLine } from "../core/plan/schema/form.js";
import { gearItem, leads } from "../core/plan/schema/gear.js";
import { floatKeys, marks, weightKeys } from "../core/plan/schema/marks.js";
import { corner, outing, period } from "../core/plan/schema/outings.js";
import { panel, way } from "../core/plan/schema/panels.js";
import { holeKeys, placeKeys, rowKeys } from "../core/plan/schema/placing.js";
import { planKeys } from "../core/plan/schema/plan.js";
import { run, slack } from "../core/plan/schema/runs.js";
import {
  bought,
  boughtWire,
  partPrice,
  priceKeys,
  priceSections,
  stock,
  stockWire,
} from "../core/plan/schema/stock.js";
import { battery, charger, converter } from "../core/plan/schema/supply.js";
import { leg, near, openingKeys, waypoint } from "../core/plan/schema/ways.js";
import {
  doneKeys,
  freeKeys,
  meterKeys,
  noteKeys,
  photoKeys,
  projectKeys,
  readingKeys,
} from "../core/plan/schema/work.js";

const sections: readonly (readonly [string, { readonly keys: Keys }])[] = [
  ["The plan", planKeys],
  ["`shows`", showsKeys],
  ["`craft`", craft],
  ["`form` of the craft", formKeys],
  ["A line (`lines` of a form)", formLine],
  ["A check (`checks` of a form)", formCheck],
  ["A figure (`measured` of a starting form)", formFigure],
  ["`ambient`", ambient],
  ["`conductors`", conductors],
  ["A battery", battery],
  ["A charger", charger],
  ["A converter", converter],
  ["A panel", panel],
  ["A way of a panel", way],
  ["A box", box],
  ["A hole of a box (`holes`)", hole],
  ["A thing in a box (`contents`)", content],
  ["A fitting of a box (`fittings`)", fitting],
  ["A box to buy (`box catalogue`)", catalogueBox],
  ["A piece of gear", gearItem],
  ["`leads` of gear", leads],
  ["A place on a face (`at`)", placeKeys],
  ["A row (`row`)", rowKeys],
  ["A hole in a face (`hole`)", holeKeys],
  ["A reference point", referenceKeys],
  ["`measured` of a reference point", measuredPair],
  ["A face", faceKeys],
  ["A zone of a face (`zones`)", zone],
  ["An opening of a face (`openings`)", opening],
  ["A hole without gear (`holes` of a face)", faceHole],
  ["`marks`", marks],
  ["`float`", floatKeys],
  ["A weight (`hull`, `people`, `other`)", weightKeys],
  ["A run", run],
  ["`slack` of a run", slack],
  ["A waypoint", waypoint],
  ["`opening` of a waypoint", openingKeys],
  ["A leg (`legs` of the plan)", leg],
  ["`near` of a leg", near],
  ["A fuse or breaker (`main`, `fuse`)", longProtection],
  ["A switch (`switch`, `master`)", switchSection],
  ["A corner", corner],
  ["An outing", outing],
  ["A stretch of time (`on` of an outing)", period],
  ["`stock`", stock],
  ["`wire` in `stock`", stockWire],
  ["`bought`", bought],
  ["`wire` in `bought`", boughtWire],
  ["`prices`", priceSections],
  ["`wire` in `prices`", priceKeys],
  ["`parts` in `prices`", partPrice],
  ["`free hours`", freeKeys],
  ["A step done (`work done`)", doneKeys],
  ["A note on a step (`work notes`)", noteKeys],
  ["A photo (`photos`)", photoKeys],
  ["A reading (`readings`)", readingKeys],
  ["`meter` of a reading", meterKeys],
  ["`as built`", builtKeys],
  ["A cable as built (`lengths`)", builtLengthKeys],
  ["A hole as drilled (`holes`)", builtHoleKeys],
  ["A hole of a box as drilled (`entries`)", builtEntryKeys],
  ["A joint as made (`joints`)", builtJointKeys],
  ["A fuse or breaker as fitted (`ratings`)", builtRatingKeys],
  ["A finished project (`projects`)", projectKeys],
];

/** All keys of the plan format as Markdown tables, one a section, from the same description the reader uses. */
export function planKeyTables(): string {
  return sections.map(([title, { keys }]) => `### ${title}\n\n${table(keys)}\n`).join("\n");
}

function table(keys: Keys): string {
  const rows = Object.values(keys).map(
    ({ written, shape, presence, says }) =>
      `| \`${written}\` | ${presence === "required" ? "yes" : ""} | ${shape.label} | ${says} |`,
  );
  return ["| key | needed | written as | meaning |", "|---|---|---|---|", ...rows].join("\n");
}
