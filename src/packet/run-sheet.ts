import type { LayoutFigures } from "../core/parts/layout-types.js";
import type { Shows } from "../core/plan/model/plan.js";
import type { LegFigures, PointFigures } from "../core/route/plan-legs.js";
import type { RunRoute } from "../core/route/plan-routes.js";
import { cutWords, mmWords, roundLengthWords, shortSlackWords, supportWords } from "../words/layout-words.js";
import { listed } from "../words/listed.js";
import { lengthWords } from "../words/numbers.js";
import type { PaperWords } from "../words/paper/paper-words.js";
import type { Paper } from "./page.js";
import { heading, paragraph, space } from "./piece.js";
import { flowing, type Section } from "./section.js";
import { type Cell, type Column, type Row, table } from "./table.js";

type RunWords = PaperWords["layout"]["runs"];

const runColumns = ({ run }: RunWords): readonly Column[] => [
  { heading: run.run, share: 44 },
  { heading: run.way, share: 66 },
  { heading: run.length, share: 28, align: "right" },
  { heading: run.start, share: 50 },
  { heading: run.end, share: 50 },
  { heading: run.cut, share: 28, align: "right" },
];
const legColumns = ({ leg }: RunWords): readonly Column[] => [
  { heading: leg.leg, share: 34 },
  { heading: leg.way, share: 50 },
  { heading: leg.length, share: 28, align: "right" },
  { heading: leg.lies, share: 76 },
  { heading: leg.bundle, share: 20, align: "right" },
  { heading: leg.held, share: 36 },
];
const pointColumns = ({ point }: RunWords): readonly Column[] => [
  { heading: point.point, share: 34 },
  { heading: point.passes, share: 110 },
  { heading: point.bundle, share: 20, align: "right" },
  { heading: point.looked, share: 80 },
];

/** How every run lies, with its slack; then what lies together on each leg, where it is held, and what each point asks. */
export function runSheet({ routes }: LayoutFigures, shows: Shows, paper: Paper, words: PaperWords): Section {
  const say = words.layout.runs;
  const widthMm = paper.right - paper.left;
  const legs = routes.legs.filter(({ ofRun }) => !ofRun);
  const alone = routes.legs.filter(({ ofRun }) => ofRun);
  const intro = say.intro(shows.lengths === "inches", roundLengthWords(routes.slackM * 1000, shows));
  const soft = (text: string) => paragraph({ text, sizePt: 9.5, colour: "soft", maxLines: 3 }, widthMm);
  return flowing(
    say.title,
    say.subtitle(routes.runs.length, routes.supports + routes.points.length),
    routes.runs.length === 0
      ? []
      : [
          soft(intro),
          space(2),
          ...table(
            runColumns(say),
            routes.runs.map((run) => runRow(run, shows, words)),
            widthMm,
          ),
          ...(legs.length === 0 ? [] : [heading(say.together, widthMm)]),
          ...(legs.length === 0
            ? []
            : table(
                legColumns(say),
                legs.map((leg) => legRow(leg, shows, words)),
                widthMm,
              )),
          ...(routes.points.length === 0 ? [] : [heading(say.points, widthMm)]),
          ...(routes.points.length === 0
            ? []
            : table(
                pointColumns(say),
                routes.points.map((point) => pointRow(point, words)),
                widthMm,
              )),
          ...(alone.length === 0 ? [] : [heading(say.alone, widthMm)]),
          ...(alone.length === 0
            ? []
            : [
                {
                  ...paragraph({ text: say.aloneNote, sizePt: 9.5, colour: "soft" }, widthMm, 1),
                  keepWithNext: true,
                },
              ]),
          ...(alone.length === 0
            ? []
            : table(
                legColumns(say),
                alone.map((leg) => legRow(leg, shows, words)),
                widthMm,
              )),
        ],
    paper,
  );
}

function runRow(
  { run, points, cut, problem }: RunRoute,
  shows: Shows,
  { layout: { runs: words }, of }: PaperWords,
): Row {
  const [from = "", ...rest] = points;
  const past = rest.slice(0, -1);
  const to = rest.at(-1) ?? "";
  const small = (text: string): Cell => ({ words: [{ text, sizePt: 9.5 }] });
  const direct = words.direct(from, to);
  const way = past.length === 0 ? direct : words.past(from, listed(past, of.layout.joining), to);
  return {
    cells: [
      { words: [{ text: run, weight: "semibold" }] },
      small(problem === undefined ? way : words.noWay(direct)),
      lengthWords(cut.routeM, shows),
      small(shortSlackWords(cut.start, shows, of.layout) || words.none),
      small(shortSlackWords(cut.end, shows, of.layout) || words.none),
      { words: [{ text: cutWords(cut.cutMm, shows), weight: "semibold" }] },
    ],
  };
}

function legRow(leg: LegFigures, shows: Shows, { layout: { runs: words }, of }: PaperWords): Row {
  return {
    cells: [
      { words: [{ text: leg.leg, weight: "semibold" }] },
      words.direct(leg.from, leg.to),
      lengthWords(leg.lengthM, shows),
      {
        words: [
          leg.ofRun
            ? { text: words.notKnown, sizePt: 9.5, colour: "soft" }
            : { text: listed(leg.runs, of.layout.joining), sizePt: 9.5, maxLines: 4 },
        ],
      },
      mmWords(leg.bundleMm),
      supportWords(leg, shows, of.layout),
    ],
  };
}

function pointRow(
  { point, runs, bundleMm, checks }: PointFigures,
  { layout: { runs: words }, of }: PaperWords,
): Row {
  const looked = checks.map(({ check, state }) => `${words.checks[check]}: ${words.states[state]}`);
  return {
    cells: [
      { words: [{ text: point, weight: "semibold" }] },
      { words: [{ text: listed(runs, of.layout.joining), sizePt: 9.5, maxLines: 4 }] },
      mmWords(bundleMm),
      { words: [{ text: looked.join("; ") || words.nothing, sizePt: 9.5 }] },
    ],
  };
}
