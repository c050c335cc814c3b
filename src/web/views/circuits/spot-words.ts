import type { Shows } from "../../../core/plan/model/plan.js";
import type { AtSpot } from "../../../drawing/circuit-map/at-spot.js";
import type { TreeNode } from "../../../drawing/one-line/tree.js";
import { amps, lengthWords, marked, percent, volts } from "../../../words/numbers.js";
import type { ScreenWords } from "../../../words/screen/en.js";

/** Name of a thing as the map shows it; a way without its panel, what stands elsewhere with the sign for it. */
export function nameOf({ kind, name, refers }: TreeNode, words: ScreenWords): string {
  if (refers) return words.circuits.refers[refers.as](refers.to);
  return kind === "way" ? name.split(" / ").slice(1).join(" / ") : name;
}

/** What is selected when one takes hold of a thing. */
export const selectionOf = ({ name, refers }: TreeNode): string => refers?.to ?? name;

type Shown = { readonly [figure in "voltageV" | "currentA" | "dropShare"]?: number | undefined };

/** Voltage, current and drop in one line; empty where nothing is known. */
export const figuresLine = ({ voltageV, currentA, dropShare }: Shown): string =>
  [
    ...(voltageV === undefined ? [] : [volts(voltageV)]),
    ...(currentA === undefined ? [] : [amps(currentA)]),
    ...(dropShare === undefined ? [] : [`−${percent(dropShare)}`]),
  ].join(" · ");

export const runLine = (run: NonNullable<AtSpot["run"]>, shows: Shows): string =>
  [
    ...(run.size === undefined ? [] : [run.size.replaceAll(" ", "\u00a0")]),
    lengthWords(run.lengthM, shows),
    ...(run.device?.ratingA === undefined ? [] : [marked(run.device.ratingA, "A")]),
  ].join(" · ");

/** Everything about a thing of the map in words, for those who do not see it. */
export function spoken(node: TreeNode, at: AtSpot, words: ScreenWords, shows: Shows): string {
  const { circuits, slip } = words;
  const parts = [
    nameOf(node, words),
    node.kind === "reference" ? "" : slip.kinds[node.kind],
    ...at.devices.map(({ kind, ratingA }) =>
      [circuits.devices[kind], ratingA === undefined ? "" : marked(ratingA, "A")].join(" ").trim(),
    ),
    at.voltageV === undefined ? "" : volts(at.voltageV),
    at.currentA === undefined ? "" : amps(at.currentA),
    at.dropShare === undefined ? "" : circuits.lost(percent(at.dropShare)),
    at.run ? circuits.through(at.run.name, runLine(at.run, shows)) : "",
  ];
  return parts.filter((part) => part !== "").join(", ");
}
