import type { LayoutFigures } from "../../core/parts/layout-types.js";
import type { Shows } from "../../core/plan/model/plan.js";
import type { RunRoute } from "../../core/route/plan-routes.js";
import { planTable } from "../../packet/files/tables.js";
import { cutWords, mmWords, roundLengthWords, slackWords, supportWords } from "../../words/layout-words.js";
import { lengthWords } from "../../words/numbers.js";
import { paperWords } from "../../words/paper/fetch.js";
import type { TerminalWords } from "../../words/terminal/english.js";
import { readArguments } from "../arguments.js";
import { type Screen, screenIn } from "../language.js";
import { layoutFindingLines } from "../layout-findings.js";
import { loadWhole } from "../load-whole.js";
import { print, printFile, printJson } from "../print.js";
import { exit } from "../problem.js";
import { left, right, textTable } from "../table.js";
import { harmless, paint, wrap } from "../terminal.js";

export async function run(words: readonly string[], told: TerminalWords): Promise<number> {
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
    printFile(planTable("runs", whole, await paperWords(told.language)));
    return exit.fine;
  }
  const screen = await screenIn(told);
  print([
    ...runLines(layout, shows, screen),
    ...(given.switches.has("slack") ? slackLines(routes.runs, shows, screen) : []),
    ...legLines(layout, shows, screen),
    ...layoutFindingLines(figures, ["ways"], screen),
  ]);
  return exit.fine;
}

function runLines({ routes }: LayoutFigures, shows: Shows, screen: Screen): string[] {
  const { routes: say } = screen.told.layout;
  const rows = routes.runs.map((one) => [
    one.run,
    one.points[0] ?? "",
    one.points.at(-1) ?? "",
    one.problem === undefined ? one.points.slice(1, -1).join(", ") : say.noWay,
    lengthWords(one.cut.routeM, shows),
    roundLengthWords(one.cut.slackM * 1000, shows),
    cutWords(one.cut.cutMm, shows),
  ]);
  const columns = [
    left(say.heads.run),
    left(say.heads.from),
    left(say.heads.to),
    left(say.heads.past),
    right(say.heads.way),
    right(say.heads.slack),
    right(say.heads.cut),
  ];
  return [
    paint(say.runs, "strong", screen),
    ...textTable(columns, rows, screen),
    ...wrap(
      say.inAll(roundLengthWords(routes.slackM * 1000, shows), shows.lengths === "inches"),
      screen.width,
    ),
  ];
}

function slackLines(runs: readonly RunRoute[], shows: Shows, screen: Screen): string[] {
  const { routes: say } = screen.told.layout;
  const { layout: words } = screen.paper.of;
  return [
    "",
    paint(say.slack, "strong", screen),
    ...runs.flatMap(({ run: name, cut }) =>
      wrap(
        say.ends(harmless(name), slackWords(cut.start, shows, words), slackWords(cut.end, shows, words)),
        screen.width,
        2,
      ),
    ),
  ];
}

function legLines({ routes }: LayoutFigures, shows: Shows, screen: Screen): string[] {
  const { routes: say } = screen.told.layout;
  const { legHeads: heads } = say;
  const rows = routes.legs.map((leg) => [
    leg.leg,
    leg.from,
    leg.to,
    lengthWords(leg.lengthM, shows),
    say.count(leg.runs.length),
    mmWords(leg.bundleMm),
    supportWords(leg, shows, screen.paper.of.layout),
  ]);
  const columns = [
    left(heads.leg),
    left(heads.from),
    left(heads.to),
    right(heads.length),
    right(heads.holds),
    right(heads.bundle),
    right(heads.supports),
  ];
  return ["", paint(say.together, "strong", screen), ...textTable(columns, rows, screen)];
}
