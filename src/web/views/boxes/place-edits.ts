import type { Placed } from "../../../core/box/entry-rules.js";
import type { BoxFigures } from "../../../core/box/plan-boxes.js";
import type { Edit } from "../../../core/plan/edits/edit.js";
import { keyText } from "../../../core/plan/edits/value.js";

const mm = (value: number) => `${Number(value.toFixed(2))} mm`;
const at = ({ x, y }: Pick<Placed, "x" | "y">) => `[${mm(x)}, ${mm(y)}]`;

/** A hole's name may not hold the sign that parts a place from its port. */
const nameOf = (id: string) => id.replaceAll(" / ", ", ");

/**
 * Edits that put an entry where it was dragged. A box whose holes the tool has placed so far gets all of them as they lie, with
 * this one moved, since its holes are the owner's from then on.
 */
export function placeEdits({ box, from, layout }: BoxFigures, moved: Placed): Edit[] {
  const name = nameOf(moved.id);
  if (from === "drilled")
    return [{ edit: "set field", at: box, field: `holes / ${name} / at`, to: at(moved) }];
  const entries = layout?.entries.map((entry) => (entry.id === moved.id ? moved : entry)) ?? [];
  const holes = entries.map(
    (entry) => `${keyText(nameOf(entry.id))}: {on: ${entry.on}, at: ${at(entry)}, hole: ${mm(entry.holeMm)}}`,
  );
  return [{ edit: "set field", at: box, field: "holes", to: `{${holes.join(", ")}}` }];
}
