import { entryOf, type Written, type WrittenSection } from "../../../core/plan/source/written.js";
import type { ListId } from "./list-specs.js";
import { cellText, valueAt } from "./written-text.js";

/** One thing of a list, as it stands in the plan. */
export interface ListRow {
  /** Told apart by this; a wire on hand by its number. */
  readonly key: string;
  /** Thing the core's edits name, and what stands before its keys: `stock`, `wire / 2 / `. */
  readonly at: string;
  readonly before: string;
  readonly name: string;
  readonly node: Written;
}

/** Rows of a list in the order of the plan. */
export function rowsOf(root: WrittenSection, list: ListId): ListRow[] {
  switch (list) {
    case "ways":
      return namedIn(entryOf(root, "panels")?.value).flatMap(({ key: panel, node }) =>
        namedIn(valueAt(node, "ways"), `${panel} / `),
      );
    case "wire": {
      const wire = valueAt(root, "stock / wire");
      if (wire?.kind !== "list") return [];
      return wire.items.map((node, index) => {
        const number = String(index + 1);
        return { key: number, at: "stock", before: `wire / ${number} / `, name: number, node };
      });
    }
    case "items":
      return namedIn(valueAt(root, "stock / parts")).map((row) => ({
        ...row,
        at: "stock",
        before: `parts / ${row.name}`,
      }));
    default:
      return namedIn(entryOf(root, list)?.value);
  }
}

function namedIn(section: Written | undefined, before = ""): ListRow[] {
  if (section?.kind !== "section") return [];
  return section.entries.map(({ key, value }) => {
    const name = `${before}${key}`;
    return { key: name, at: name, before: "", name, node: value };
  });
}

/** What is written in a cell; empty where nothing is. */
export function textOf(row: ListRow, key: string): string {
  if (key === "name") return row.name;
  return cellText(row.before.startsWith("parts / ") ? row.node : valueAt(row.node, key));
}

/** Names that may stand in a cell that names something else. */
export function namesAmong(root: WrittenSection, among: "places" | "ways" | "batteries"): string[] {
  if (among === "batteries") return rowsOf(root, "batteries").map(({ name }) => name);
  const places = (["batteries", "panels", "boxes", "gear", "chargers"] as const).flatMap((list) =>
    rowsOf(root, list).map(({ name }) => name),
  );
  if (among === "places") return places;
  const ports = rowsOf(root, "converters").flatMap(({ name }) => [`${name} / in`, `${name} / out`]);
  return [...places, ...ports, ...rowsOf(root, "ways").map(({ name }) => name)];
}
