import type { LayoutFigures } from "../../core/parts/layout-types.js";
import type { Shows } from "../../core/plan/model/plan.js";
import type { RunRoute } from "../../core/route/plan-routes.js";
import { planTable } from "../../packet/files/tables.js";
import { cutWords, mmWords, roundLengthWords, slackWords, supportWords } from "../../words/layout-words.js";
import { counted, lengthWords } from "../../words/numbers.js";
import { paperInEnglish } from "../../words/paper/english.js";
import { readArguments } from "../arguments.js";
import { layoutFindingLines } from "../layout-findings.js";
import { loadWhole } from "../load-whole.js";
import { print, printFile, printJson } from "../print.js";
import { exit } from "../problem.js";
import { type Column, textTable } from "../table.js";
import { harmless, paint, type Terminal, terminal, wrap } from "../terminal.js";

export const help = `skiffloom routes PLAN [--slack] [--csv] [--json]

Prints how every run lies: what it passes, how long it is along the legs, the slack to work with, and what to
cut. Then what lies together on each leg, and where it is held.

A plan that says nothing of ways gets its cables' lengths as they are written. To have them worked out, name the
points cables pass (waypoints), the stretches between (legs), and lead a run along them:
  waypoints: {knee: {bend: 40 mm}}
  legs: {under the thwart: {from: helm, to: knee, length: 5 ft}, up the stem: {from: knee, to: fore box, length: 3 ft}}
  runs: {lamp trunk: {from: helm / lamps, to: fore box, along: [knee]}}

  --slack  why each end has the slack it has
  --csv    the runs as a table for a spreadsheet
  --json   everything as data (docs/json.md)`;

export function run(words: readonly string[]): number {
  const given = readArguments("routes", words, {
    plan: true,
    flags: { slack: "switch", csv: "switch", json: "switch" },
  });
  const whole = loadWhole(given.plan);
  const { figures, layout } = whole;
  const { shows, name } = figures.plan.source;
  const { routes } = layout;
  if (given.switches.has("json")) {
    const runs = routes.runs.map(({ cutMm, ...rest }) => ({ ...rest, cutMm: Object.fromEntries(cutMm) }));
    printJson({ skiffloom: "routes", version: 1, plan: { name }, routes: { ...routes, runs } });
    return exit.fine;
  }
  if (given.switches.has("csv")) {
    printFile(planTable("runs", whole, paperInEnglish));
    return exit.fine;
  }
  const screen = terminal();
  print([
    ...runLines(layout, shows, screen),
    ...(given.switches.has("slack") ? slackLines(routes.runs, shows, screen) : []),
    ...legLines(layout, shows, screen),
    ...layoutFindingLines(figures, ["ways"], screen),
  ]);
  return exit.fine;
}

const left = (heading: string): Column => ({ heading, align: "left" });
const right = (heading: string): Column => ({ heading, align: "right" });

function runLines({ routes }: LayoutFigures, shows: Shows, screen: Terminal): string[] {
  const rows = routes.runs.map((one) => [
    one.run,
    one.points[0] ?? "",
    one.points.at(-1) ?? "",
    one.problem === undefined ? one.points.slice(1, -1).join(", ") : "no way found",
    lengthWords(one.cut.routeM, shows),
    roundLengthWords(one.cut.slackM * 1000, shows),
    cutWords(one.cut.cutMm, shows),
  ]);
  const columns = [
    left("run"),
    left("from"),
    left("to"),
    left("past"),
    right("way"),
    right("slack"),
    right("cut"),
  ];
  return [
    paint("Runs", "strong", screen),
    ...textTable(columns, rows, screen),
    `${roundLengthWords(routes.slackM * 1000, shows)} of slack in all cables together; lengths to cut are rounded up to ${shows.lengths === "inches" ? "the inch" : "10 mm"}.`,
  ];
}

function slackLines(runs: readonly RunRoute[], shows: Shows, screen: Terminal): string[] {
  return [
    "",
    paint("Slack", "strong", screen),
    ...runs.flatMap(({ run: name, cut }) =>
      wrap(
        `${harmless(name)}: at its start ${slackWords(cut.start, shows)}; at its end ${slackWords(cut.end, shows)}.`,
        screen.width,
        2,
      ),
    ),
  ];
}

function legLines({ routes }: LayoutFigures, shows: Shows, screen: Terminal): string[] {
  const rows = routes.legs.map((leg) => [
    leg.leg,
    leg.from,
    leg.to,
    lengthWords(leg.lengthM, shows),
    counted(leg.runs.length, "run"),
    mmWords(leg.bundleMm),
    supportWords(leg, shows),
  ]);
  const columns = [
    left("leg, or run without legs"),
    left("from"),
    left("to"),
    right("length"),
    right("holds"),
    right("bundle"),
    right("supports"),
  ];
  return ["", paint("What lies together", "strong", screen), ...textTable(columns, rows, screen)];
}
