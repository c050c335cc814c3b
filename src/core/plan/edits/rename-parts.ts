import type { Locator } from "./locate.js";
import type { Step } from "./step.js";
import { keyText } from "./value.js";

/** Kinds of things that are bought under the name they have in the plan. */
const boughtByName = ["battery", "charger", "converter", "gear", "box", "catalogue box"];

/** Steps that carry a new name to what is on hand, what was bought and what it costs: the thing is still the same. */
export function partRenameSteps(locator: Locator, kind: string, old: string, to: string): Step[] {
  if (!boughtByName.includes(kind)) return [];
  const counted = ["stock", "bought"].flatMap((section): Step[] => {
    const path = (item: string) => [section, "parts", item];
    const moves = locator.node(path(old)) !== undefined && locator.node(path(to)) === undefined;
    return moves ? [{ do: "rename", path: path(old), to }] : [];
  });
  const prices = locator.node(["prices", "parts"]);
  const priced = prices?.kind === "list" ? [...prices.items.keys()] : [];
  return [
    ...counted,
    ...priced.flatMap((index): Step[] => {
      const path = ["prices", "parts", index, "item"];
      const item = locator.node(path);
      return item?.kind === "scalar" && item.text === old ? [{ do: "set", path, to: keyText(to) }] : [];
    }),
  ];
}
