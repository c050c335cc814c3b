import type { Placed } from "../../../core/box/entry-rules.js";
import { entryKey } from "../../../core/box/layout.js";
import type { BoxFigures } from "../../../core/box/plan-boxes.js";
import type { Edit } from "../../../core/plan/edits/edit.js";
import { keyText } from "../../../core/plan/edits/value.js";

const mm = (value: number) => `${Number(value.toFixed(2))} mm`;
const at = ({ x, y }: Pick<Placed, "x" | "y">) => `[${mm(x)}, ${mm(y)}]`;

/**
 * Edits that put an entry where it was dragged. In a drilled box the hole's own place is put right; in any other the entry gets a place
 * of its own and is still to be drilled. A box that was chosen from the catalogue stays that one: the places are made for it.
 */
export function placeEdits({ box, from, bought }: BoxFigures, moved: Placed): Edit[] {
  const set = (field: string, to: string): Edit => ({ edit: "set field", at: box, field, to });
  if (from === "drilled") return [set(`holes / ${moved.own ?? entryKey(moved.id)} / at`, at(moved))];
  return [
    ...(bought === undefined ? [] : [set("catalogue box", keyText(bought.name))]),
    set(`entries / ${entryKey(moved.id)}`, `{on: ${moved.on}, at: ${at(moved)}}`),
  ];
}

/** Edits that let the tool place all entries again, and choose the box again where it is one to buy. */
export function placeAgainEdits({ box, bought }: BoxFigures): Edit[] {
  return ["entries", ...(bought === undefined ? [] : ["catalogue box"])].map((field) => ({
    edit: "remove field",
    at: box,
    field,
  }));
}
