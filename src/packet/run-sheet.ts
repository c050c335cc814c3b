import type { LayoutFigures } from "../core/parts/layout-types.js";
import type { Shows } from "../core/plan/model/plan.js";
import type { RouteCheck } from "../core/route/checks.js";
import type { LegFigures, PointFigures } from "../core/route/plan-legs.js";
import type { RunRoute } from "../core/route/plan-routes.js";
import { cutWords, mmWords, roundLengthWords, shortSlackWords, supportWords } from "../words/layout-words.js";
import { counted, lengthWords } from "../words/numbers.js";
import { listed } from "../words/say.js";
import type { Paper } from "./page.js";
import { heading, paragraph, space } from "./piece.js";
import { flowing, type Section } from "./section.js";
import { type Cell, type Column, type Row, table } from "./table.js";

const runColumns: readonly Column[] = [
  { heading: "Run", share: 44 },
  { heading: "From, past, to", share: 70 },
  { heading: "Way", share: 24, align: "right" },
  { heading: "Slack at its start", share: 52 },
  { heading: "Slack at its end", share: 52 },
  { heading: "Cut", share: 24, align: "right" },
];
const legColumns: readonly Column[] = [
  { heading: "Leg", share: 34 },
  { heading: "From, to", share: 50 },
  { heading: "Length", share: 22, align: "right" },
  { heading: "Lies on it", share: 84 },
  { heading: "Bundle", share: 20, align: "right" },
  { heading: "Held", share: 34 },
];
const pointColumns: readonly Column[] = [
  { heading: "Point", share: 34 },
  { heading: "Passes it", share: 110 },
  { heading: "Bundle", share: 20, align: "right" },
  { heading: "Looked at", share: 80 },
];

/** How every run lies, with its slack; then what lies together on each leg, where it is held, and what each point asks. */
export function runSheet({ routes }: LayoutFigures, shows: Shows, paper: Paper): Section {
  const widthMm = paper.right - paper.left;
  const legs = routes.legs.filter(({ ofRun }) => !ofRun);
  const alone = routes.legs.filter(({ ofRun }) => ofRun);
  const intro = `Cut lengths hold the slack and are rounded up to ${shows.lengths === "inches" ? "the inch" : "10\u00a0mm"}: do not take it off again. It lets a box be drawn out and worked on, gear be drawn off its hole, and an end be made once more. ${roundLengthWords(routes.slackM * 1000, shows)} in all.`;
  const soft = (text: string) => paragraph({ text, sizePt: 9.5, colour: "soft", maxLines: 3 }, widthMm);
  return flowing(
    "Run sheet",
    `${counted(routes.runs.length, "cable")}, ${counted(routes.supports + routes.points.length, "clip or tie", "clips and ties")}`,
    routes.runs.length === 0
      ? []
      : [
          soft(intro),
          space(2),
          ...table(
            runColumns,
            routes.runs.map((run) => runRow(run, shows)),
            widthMm,
          ),
          ...(legs.length === 0 ? [] : [heading("What lies together", widthMm)]),
          ...(legs.length === 0
            ? []
            : table(
                legColumns,
                legs.map((leg) => legRow(leg, shows)),
                widthMm,
              )),
          ...(routes.points.length === 0 ? [] : [heading("Points that are passed", widthMm)]),
          ...(routes.points.length === 0
            ? []
            : table(
                pointColumns,
                routes.points.map((point) => pointRow(point)),
                widthMm,
              )),
          ...(alone.length === 0 ? [] : [heading("Runs that have only a length", widthMm)]),
          ...(alone.length === 0
            ? []
            : [
                paragraph(
                  {
                    text: "No way is told for these: what they lie beside and what they come near was not checked.",
                    sizePt: 9.5,
                    colour: "soft",
                  },
                  widthMm,
                  1,
                ),
              ]),
          ...(alone.length === 0
            ? []
            : table(
                legColumns,
                alone.map((leg) => legRow(leg, shows)),
                widthMm,
              )),
        ],
    paper,
  );
}

function runRow({ run, points, cut, problem }: RunRoute, shows: Shows): Row {
  const [from = "", ...rest] = points;
  const past = rest.slice(0, -1);
  const to = rest.at(-1) ?? "";
  const small = (text: string): Cell => ({ words: [{ text, sizePt: 9.5 }] });
  const way = past.length === 0 ? `${from} to ${to}` : `${from}, past ${listed(past)}, to ${to}`;
  return {
    cells: [
      { words: [{ text: run, weight: "semibold" }] },
      small(problem === undefined ? way : `${from} to ${to}: no way found along the legs`),
      lengthWords(cut.routeM, shows),
      small(shortSlackWords(cut.start, shows) || "none"),
      small(shortSlackWords(cut.end, shows) || "none"),
      { words: [{ text: cutWords(cut.cutMm, shows), weight: "semibold" }] },
    ],
  };
}

function legRow(leg: LegFigures, shows: Shows): Row {
  return {
    cells: [
      { words: [{ text: leg.leg, weight: "semibold" }] },
      `${leg.from} to ${leg.to}`,
      lengthWords(leg.lengthM, shows),
      {
        words: [
          leg.ofRun
            ? { text: "not known", sizePt: 9.5, colour: "soft" }
            : { text: listed(leg.runs), sizePt: 9.5, maxLines: 4 },
        ],
      },
      mmWords(leg.bundleMm),
      supportWords(leg, shows),
    ],
  };
}

const checkNames: Readonly<Record<RouteCheck["check"], string>> = {
  bend: "room to bend",
  chafe: "its edge",
  opening: "width of the hole",
  "wet exhaust": "wet exhaust",
  "dry exhaust": "dry exhaust",
  "hot surface": "heat",
  "fuel part": "fuel",
};
const states: Readonly<Record<RouteCheck["state"], string>> = {
  holds: "holds",
  fails: "does not do",
  unchecked: "not checked",
};

function pointRow({ point, runs, bundleMm, checks }: PointFigures): Row {
  const looked = checks.map(({ check, state }) => `${checkNames[check]}: ${states[state]}`);
  return {
    cells: [
      { words: [{ text: point, weight: "semibold" }] },
      { words: [{ text: listed(runs), sizePt: 9.5, maxLines: 4 }] },
      mmWords(bundleMm),
      { words: [{ text: looked.join("; ") || "nothing to look at", sizePt: 9.5 }] },
    ],
  };
}
