import { longProtection, switchSection } from "../core/plan/schema/common.js";
import { ambient, conductors, craft, showsKeys } from "../core/plan/schema/craft.js";
import type { Keys } from "../core/plan/schema/fields.js";
import { gearItem, leads } from "../core/plan/schema/gear.js";
import { corner, outing, period } from "../core/plan/schema/outings.js";
import { box, panel, way } from "../core/plan/schema/panels.js";
import { planKeys } from "../core/plan/schema/plan.js";
import { run } from "../core/plan/schema/runs.js";
import { priceKeys, stockWire } from "../core/plan/schema/stock.js";
import { battery, charger, converter } from "../core/plan/schema/supply.js";

const sections: readonly (readonly [string, { readonly keys: Keys }])[] = [
  ["The plan", planKeys],
  ["`shows`", showsKeys],
  ["`craft`", craft],
  ["`ambient`", ambient],
  ["`conductors`", conductors],
  ["A battery", battery],
  ["A charger", charger],
  ["A converter", converter],
  ["A panel", panel],
  ["A way of a panel", way],
  ["A box", box],
  ["A piece of gear", gearItem],
  ["`leads` of gear", leads],
  ["A run", run],
  ["A fuse or breaker (`main`, `fuse`)", longProtection],
  ["A switch (`switch`, `master`)", switchSection],
  ["A corner", corner],
  ["An outing", outing],
  ["A stretch of time (`on` of an outing)", period],
  ["`wire` in `stock`", stockWire],
  ["`wire` in `prices`", priceKeys],
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
