import type { Edit } from "../edits/edit.js";
import { keyText, valueText } from "../edits/value.js";
import type { Outing } from "../model/outing.js";
import type { NewGear } from "./answers.js";
import { flowGear } from "./gear-keys.js";
import { periodText } from "./new-outing.js";
import { wayText } from "./new-ways.js";

/** Where gear that is added takes its current from: a way that is there, a way more of a panel, or a battery with a fuse of its own. */
export type Feed =
  | { readonly from: "way"; readonly way: string }
  | { readonly from: "new way"; readonly panel: string }
  | { readonly from: "battery"; readonly battery: string; readonly beforeMain: boolean };

/**
 * Gear with all it takes to be fed: itself, its way where it gets one of its own, its cable, and its part of an outing, so that the
 * battery is asked for it too. Sizes and fuses are left to be worked out. Names that are taken get a letter behind.
 */
export function gearEdits(
  item: NewGear,
  feed: Feed,
  isTaken: (name: string) => boolean,
  outing?: Outing,
): Edit[] {
  const name = item.name.trim();
  const free = (wanted: string, before = "") => {
    const letters = ["", " b", " c", " d", " e"];
    return `${wanted}${letters.find((letter) => !isTaken(`${before}${wanted}${letter}`)) ?? ""}`;
  };
  const gear: Edit = { edit: "add", kind: "gear", name, as: `{${flowGear(item).join(", ")}}` };
  const own = feed.from === "new way" ? `${feed.panel} / ${free(name, `${feed.panel} / `)}` : undefined;
  const from = own ?? (feed.from === "way" ? feed.way : feed.from === "battery" ? feed.battery : "");
  const fused =
    feed.from !== "battery"
      ? []
      : ["fuse: {rating: work out, from source: 5 in}", ...(feed.beforeMain ? ["before main: true"] : [])];
  const cable = [
    `from: ${keyText(from)}`,
    `to: ${keyText(name)}`,
    ...((item.count ?? 1) === 1 ? [] : ["reaches: each"]),
    `length: ${valueText(item.cable) ?? JSON.stringify(item.cable)}`,
    ...fused,
  ];
  return [
    gear,
    ...(own === undefined
      ? []
      : [{ edit: "add", kind: "way", name: own, as: wayText(item.role === "bilge pump") } as const]),
    { edit: "add", kind: "run", name: free(`${name} cable`), as: `{${cable.join(", ")}}` },
    ...(outing === undefined ? [] : [onOuting(item, outing)]),
  ];
}

/** Hours an outing must last for what a role does on a usual one to fit into it. */
const usualH = 3;

function onOuting(item: NewGear, { name, lastsH, on }: Outing): Edit {
  const period = lastsH < usualH ? `{what: ${keyText(item.name.trim())}}` : periodText(item);
  return {
    edit: "set field",
    at: `outings / ${name}`,
    field: on.length === 0 ? "on" : `on / ${on.length + 1}`,
    to: on.length === 0 ? `[${period}]` : period,
  };
}
