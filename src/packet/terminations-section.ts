import type { LayoutFigures } from "../core/parts/layout-types.js";
import type { Shows } from "../core/plan/model/plan.js";
import type { EndFigures } from "../core/terminations/plan-terminations.js";
import { sleeveWords, terminalWords } from "../words/layout-words.js";
import { counted, sizeWords } from "../words/numbers.js";
import type { Paper } from "./page.js";
import { paragraph, space } from "./piece.js";
import { flowing, type Section } from "./section.js";
import { type Column, groupedTable, type Row } from "./table.js";

const columns: readonly Column[] = [
  { heading: "Run, conductor", share: 47 },
  { heading: "Size", share: 19 },
  { heading: "Terminal or joint", share: 42 },
  { heading: "With it in the joint", share: 38 },
  { heading: "Strip", share: 15, align: "right" },
  { heading: "Sleeve, cut", share: 24 },
  { heading: "Tool", share: 51 },
  { heading: "Pull", share: 14, align: "right" },
];

/** Every conductor end, place by place: what goes on it, how far it is stripped, with what tool, and the pull it must hold. */
export function terminationsSection({ terminations }: LayoutFigures, shows: Shows, paper: Paper): Section {
  const widthMm = paper.right - paper.left;
  const { ends } = terminations;
  const places = [...new Set(ends.map(({ at }) => at.place))];
  const intro =
    "Strip to the figure, no strand nicked. A terminal takes the conductors its colour and range say, nothing else. Pull figures are the least a crimp of that size holds for one minute on a test piece; one that stays in the boat is pulled with four fifths of it at most. Measure the barrel you bought: its depth decides how far to strip. Not listed here: the two ends at a fuse holder that sits in a lead, as the main's does, and the wires inside a panel between buses, fuses and switches; the shopping list has both, of the kind their makers ask for.";
  return flowing(
    "Terminations",
    `${counted(ends.length, "conductor end")} at ${counted(places.length, "place")}`,
    ends.length === 0
      ? []
      : [
          paragraph({ text: intro, sizePt: 9.5, colour: "soft", maxLines: 5 }, widthMm),
          space(1.5),
          ...groupedTable(
            columns,
            places.map((name) => ({
              name,
              rows: alike(ends.filter(({ at }) => at.place === name)).map((group) =>
                row(group, terminations, shows),
              ),
            })),
            widthMm,
          ),
        ],
    paper,
  );
}

/** Out and return of one run that are made the same way share a line. */
function alike(ends: readonly EndFigures[]): EndFigures[][] {
  const groups = new Map<string, EndFigures[]>();
  for (const end of ends) {
    const made = [
      end.at.run,
      end.at.end,
      end.at.size.key,
      end.at.circuits.join(),
      terminalWords(end),
      end.stripMm,
    ];
    const key = JSON.stringify([...made, sleeveWords(end), end.joint?.replace(/ \/ (out|return)$/, "")]);
    const list = groups.get(key);
    if (list) list.push(end);
    else groups.set(key, [end]);
  }
  return [...groups.values()];
}

function row(group: readonly EndFigures[], { joints }: LayoutFigures["terminations"], shows: Shows): Row {
  const [end] = group;
  if (end === undefined) throw new RangeError("a group of ends must not be empty");
  const { at, stripMm, tool, pull, problems } = end;
  const legs = group.map((one) => [one.at.leg, one.at.colour].filter((part) => part !== undefined).join(" "));
  const joint = joints.find(({ id, kind }) => id === end.joint && kind === end.kind);
  const circuit = at.circuits.length === 1 ? "" : `${at.circuits.join(", ")}; `;
  return {
    cells: [
      {
        words: [
          { text: at.run, weight: "semibold" },
          { text: `${circuit}${legs.join(", ")}`, sizePt: 9.5, colour: "soft" },
        ],
      },
      sizeWords(at.size, shows),
      terminalWords(end),
      { words: [{ text: joint === undefined ? "" : partnerWords(end, joint), sizePt: 9.5, maxLines: 8 }] },
      stripMm > 0
        ? `${stripMm}\u00a0mm${end.barrel?.kind === "insulated" && end.barrel.folded ? ", folded" : ""}`
        : "–",
      { words: [{ text: sleeveWords(end) || "–", sizePt: 9.5 }] },
      { words: [{ text: tool, sizePt: 9.5 }] },
      pull === undefined ? "–" : pullWords(pull, shows),
    ],
    ...(problems.length > 0
      ? {
          note: {
            text: "There is a finding about this end: see Findings.",
            sizePt: 9.5,
            colour: "accent",
          } as const,
        }
      : {}),
  };
}

/** Which conductors share the joint, and on which side of a butt. */
function partnerWords(end: EndFigures, joint: LayoutFigures["terminations"]["joints"][number]): string {
  const own = joint.sides.findIndex((side) => side.some((member) => member.end?.id === end.at.id));
  const name = (member: (typeof joint.sides)[number][number]) => member.end?.run ?? "its lead";
  const same = (joint.sides[own] ?? []).filter((member) => member.end?.id !== end.at.id).map(name);
  const across = joint.sides.filter((_, index) => index !== own).flatMap((side) => side.map(name));
  return [
    ...(same.length > 0 ? [`beside ${same.join(", ")}`] : []),
    ...(across.length > 0 ? [`across from ${across.join(", ")}`] : []),
  ].join("; ");
}

const pullWords = ({ lbf, minN }: NonNullable<EndFigures["pull"]>, shows: Shows): string =>
  shows.lengths === "inches" ? `${lbf}\u00a0lbf` : `${Math.round(minN)}\u00a0N`;
