import type { LayoutFigures } from "../core/parts/layout-types.js";
import type { Shows } from "../core/plan/model/plan.js";
import type { EndFigures } from "../core/terminations/plan-terminations.js";
import { sleeveWords, terminalWords } from "../words/layout-words.js";
import { sizeWords } from "../words/numbers.js";
import type { PaperWords } from "../words/paper/paper-words.js";
import type { Paper } from "./page.js";
import { paragraph, space } from "./piece.js";
import { flowing, type Section } from "./section.js";
import { type Column, groupedTable, type Row } from "./table.js";

const columns = ({ heads }: PaperWords["layout"]["ends"]): readonly Column[] => [
  { heading: heads.run, share: 47 },
  { heading: heads.size, share: 19 },
  { heading: heads.terminal, share: 42 },
  { heading: heads.with, share: 38 },
  { heading: heads.strip, share: 15, align: "right" },
  { heading: heads.sleeve, share: 24 },
  { heading: heads.tool, share: 51 },
  { heading: heads.pull, share: 14, align: "right" },
];

/** Every conductor end, place by place: what goes on it, how far it is stripped, with what tool, and the pull it must hold. */
export function terminationsSection(
  { terminations }: LayoutFigures,
  shows: Shows,
  paper: Paper,
  words: PaperWords,
): Section {
  const say = words.layout.ends;
  const widthMm = paper.right - paper.left;
  const { ends } = terminations;
  const places = [...new Set(ends.map(({ at }) => at.place))];
  return flowing(
    say.title,
    say.subtitle(ends.length, places.length),
    ends.length === 0
      ? []
      : [
          paragraph({ text: say.intro, sizePt: 9.5, colour: "soft", maxLines: 5 }, widthMm),
          space(1.5),
          ...groupedTable(
            columns(say),
            places.map((name) => ({
              name,
              rows: alike(ends.filter(({ at }) => at.place === name)).map((group) =>
                row(group, terminations, shows, words),
              ),
            })),
            widthMm,
            words.frame.continued,
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

function row(
  group: readonly EndFigures[],
  { joints }: LayoutFigures["terminations"],
  shows: Shows,
  { layout: { ends: words }, of }: PaperWords,
): Row {
  const [end] = group;
  if (end === undefined) throw new RangeError("a group of ends must not be empty");
  const { at, stripMm, tool, pull, problems } = end;
  const { leg, colour } = of.layout;
  const legs = group.map(({ at: one }) =>
    [leg(one.leg), ...(one.colour === undefined ? [] : [colour(one.colour)])].join(" "),
  );
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
      terminalWords(end, of.layout),
      {
        words: [
          { text: joint === undefined ? "" : partnerWords(end, joint, words), sizePt: 9.5, maxLines: 8 },
        ],
      },
      stripMm > 0
        ? `${stripMm}\u00a0mm${end.barrel?.kind === "insulated" && end.barrel.folded ? words.folded : ""}`
        : "–",
      { words: [{ text: sleeveWords(end, of.layout) || "–", sizePt: 9.5 }] },
      { words: [{ text: of.layout.tool(tool), sizePt: 9.5 }] },
      pull === undefined ? "–" : pullWords(pull, shows),
    ],
    ...(problems.length > 0
      ? {
          note: {
            text: words.finding,
            sizePt: 9.5,
            colour: "accent",
          } as const,
        }
      : {}),
  };
}

/** Which conductors share the joint, and on which side of a butt. */
function partnerWords(
  end: EndFigures,
  joint: LayoutFigures["terminations"]["joints"][number],
  words: PaperWords["layout"]["ends"],
): string {
  const own = joint.sides.findIndex((side) => side.some((member) => member.end?.id === end.at.id));
  const name = (member: (typeof joint.sides)[number][number]) => member.end?.run ?? words.itsLead;
  const same = (joint.sides[own] ?? []).filter((member) => member.end?.id !== end.at.id).map(name);
  const across = joint.sides.filter((_, index) => index !== own).flatMap((side) => side.map(name));
  return [
    ...(same.length > 0 ? [words.beside(same.join(", "))] : []),
    ...(across.length > 0 ? [words.across(across.join(", "))] : []),
  ].join("; ");
}

const pullWords = ({ lbf, minN }: NonNullable<EndFigures["pull"]>, shows: Shows): string =>
  shows.lengths === "inches" ? `${lbf}\u00a0lbf` : `${Math.round(minN)}\u00a0N`;
