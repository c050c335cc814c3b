import type { Shows } from "../../../core/plan/model/plan.js";
import type { AtSpot } from "../../../drawing/circuit-map/at-spot.js";
import type { TreeNode } from "../../../drawing/one-line/tree.js";
import { amps, lengthWords, marked, percent, volts } from "../../../words/numbers.js";
import type { ScreenWords } from "../../../words/screen/en.js";

/** Name of a thing as the map shows it; a way without its panel, what stands elsewhere with the sign for it. */
export function nameOf({ kind, name, refers }: TreeNode, words: Pick<ScreenWords, "circuits">): string {
  if (refers) return words.circuits.refers[refers.as](refers.to);
  return kind === "way" ? name.split(" / ").slice(1).join(" / ") : name;
}

/** What is selected when one takes hold of a thing. */
export const selectionOf = ({ name, refers }: TreeNode): string => refers?.to ?? name;

interface Shown {
  readonly voltageV?: number | undefined;
  readonly currentA?: number | undefined;
  readonly dropShare?: number | undefined;
  readonly inTurn?: boolean | undefined;
}

/** Voltage, current and drop in one line; in brackets what holds in its own turn only; empty where nothing is known. */
export const figuresLine = ({ voltageV, currentA, dropShare, inTurn }: Shown): string => {
  const said = [
    ...(voltageV === undefined ? [] : [volts(voltageV)]),
    ...(currentA === undefined ? [] : [amps(currentA)]),
    ...(dropShare === undefined ? [] : [`−${percent(dropShare)}`]),
  ].join(" · ");
  return inTurn === true && said !== "" ? `(${said})` : said;
};

/** Size of a run and the length to cut of it, each by itself. */
export const runParts = (
  run: NonNullable<AtSpot["run"]>,
  { circuits }: Pick<ScreenWords, "circuits">,
  shows: Shows,
): readonly string[] => [
  ...(run.size === undefined ? [] : [run.size.replaceAll(" ", "\u00a0")]),
  circuits.cut(lengthWords(run.cutM, shows)),
];

/** Size of a run and the length to cut of it. */
export const runLine = (...of: Parameters<typeof runParts>): string => runParts(...of).join(" · ");

/** Everything about a thing of the map in words, for those who do not see it. */
export function spoken(
  node: TreeNode,
  at: AtSpot,
  words: Pick<ScreenWords, "circuits" | "slip">,
  shows: Shows,
): string {
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
    at.inTurn ? slip.inTurn : "",
    at.run?.device?.ratingA === undefined
      ? ""
      : `${circuits.devices[at.run.device.kind]} ${marked(at.run.device.ratingA, "A")}`,
    at.run ? circuits.through(at.run.name, runParts(at.run, words, shows).join(", ")) : "",
  ];
  return parts.filter((part) => part !== "").join(", ");
}
