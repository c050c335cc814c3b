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
  { heading: heads.run, share: 34 },
  { heading: heads.conductor, share: 33 },
  { heading: heads.size, share: 20 },
  { heading: heads.terminal, share: 38 },
  { heading: heads.with, share: 37 },
  { heading: heads.strip, share: 17, align: "right" },
  { heading: heads.sleeve, share: 20 },
  { heading: heads.tool, share: 50 },
  { heading: heads.pull, share: 18, align: "right" },
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
            byPlace(places, ends, say.single).map(({ name, groups }) => ({
              name,
              rows: groups.map((group) => row(group, terminations, shows, words, name === say.single)),
            })),
            widthMm,
            words.frame.continued,
          ),
        ],
    paper,
  );
}

/** Ends by place, those made alike together; places with no more than one line stand together at the end: each needs no heading of its own. */
function byPlace(places: readonly string[], ends: readonly EndFigures[], single: string) {
  const all = places.map((name) => ({ name, groups: alike(ends.filter(({ at }) => at.place === name)) }));
  const alone = all.filter(({ groups }) => groups.length === 1);
  if (alone.length < 2) return all;
  const rest = all.filter(({ groups }) => groups.length > 1);
  return [...rest, { name: single, groups: alone.flatMap(({ groups }) => groups) }];
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
  tellsPlace: boolean,
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
          ...(tellsPlace ? [{ text: words.atPlace(at.place), sizePt: 9, colour: "soft" } as const] : []),
        ],
      },
      { words: [{ text: `${circuit}${legs.join(", ")}`, sizePt: 9, colour: "soft", maxLines: 4 }] },
      sizeWords(at.size, shows),
      { words: [{ text: terminalWords(end, of.layout), maxLines: 6 }] },
      {
        words: [{ text: joint === undefined ? "" : partnerWords(end, joint, words), sizePt: 9, maxLines: 8 }],
      },
      stripMm > 0
        ? `${stripMm}\u00a0mm${end.barrel?.kind === "insulated" && end.barrel.folded ? words.folded : ""}`
        : "–",
      { words: [{ text: sleeveWords(end, of.layout) || "–", sizePt: 9, maxLines: 8 }] },
      { words: [{ text: of.layout.tool(tool), sizePt: 9, maxLines: 6 }] },
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
