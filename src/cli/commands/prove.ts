import type { CompletePlan } from "../../core/plan/completed.js";
import { editSound } from "../../core/plan/edits/edit-sound.js";
import { benchOf } from "../../core/proving/bench-network.js";
import { type Diagnosis, diagnose } from "../../core/proving/diagnose.js";
import { provingJson, sheetJson } from "../../core/proving/json.js";
import { testSheet } from "../../core/proving/sheet/sheet.js";
import type { SheetSection } from "../../core/proving/sheet/types.js";
import type { Suspect } from "../../core/proving/suspect.js";
import type { JudgedReading } from "../../core/proving/taken/judge.js";
import { isMendable } from "../../core/proving/taken/mended.js";
import { batteryCurrentA, batteryLeft } from "../../core/proving/water/battery-left.js";
import { waterCard } from "../../core/proving/water/card.js";
import { nearestOf } from "../../core/quantity/nearest.js";
import { mendEdits } from "../../core/work/work-edits.js";
import { decimals, hours, percent } from "../../words/numbers.js";
import {
  bandWords,
  branchWords,
  changeSentence,
  meterWords,
  nextWords,
  probabilityWords,
  probeWords,
  readingWords,
  suspectSentence,
  suspectsShown,
  takenWords,
  verdictSentence,
} from "../../words/proving.js";
import type { TerminalWords } from "../../words/terminal/english.js";
import { expectedWords, howWords, sectionWords, settingWords } from "../../words/test-sheet.js";
import { cardWordLines } from "../../words/water-card.js";
import { readArguments } from "../arguments.js";
import { writeWhole } from "../files.js";
import { type Screen, screenIn } from "../language.js";
import { loadFigures } from "../load.js";
import { momentAsked } from "../moment.js";
import { print, printJson } from "../print.js";
import { exit, InputProblem } from "../problem.js";
import { textTable } from "../table.js";
import { harmless, paint, wrap } from "../terminal.js";

export async function run(words: readonly string[], told: TerminalWords): Promise<number> {
  const {
    plan: path,
    switches,
    values,
  } = readArguments("prove", words, {
    plan: true,
    flags: {
      json: "switch",
      sheet: "switch",
      water: "switch",
      battery: "name",
      shows: "value",
      with: "value",
      on: "name",
      use: "value",
      mended: "name",
      note: "value",
      now: "value",
    },
  });
  if (values.mended !== undefined) putMend(path, values.mended, values);
  const { figures, circuit } = loadFigures(path);
  const json = switches.has("json");
  const screen = await screenIn(told);
  if (values.battery !== undefined)
    return batteryRun({ figures, circuit }, values.battery, values, json, screen);
  if (switches.has("water")) {
    const card = waterCard(figures);
    if (json) printJson({ skiffloom: "water card", version: 1, ...card });
    else
      print(
        cardWordLines(card, screen.paper.of.proof, told.electrics.water).flatMap((line) =>
          wrap(harmless(line), screen.width),
        ),
      );
    return exit.fine;
  }
  if (switches.has("sheet")) {
    const sheet = testSheet(benchOf(figures.plan, circuit), figures);
    if (json) printJson(sheetJson(sheet));
    else print(sheet.flatMap((section) => sectionLines(section, screen)));
    return exit.fine;
  }
  const diagnosis = diagnose(figures, circuit);
  if (json) printJson(provingJson(diagnosis));
  else print(diagnosisLines(diagnosis, screen));
  const fine = ({ verdict }: JudgedReading) => verdict === "within" || verdict === "before the mend";
  return diagnosis.judged.every(fine) && diagnosis.again.length === 0 ? exit.fine : exit.stops;
}

/** Writes a mend into the plan. */
function putMend(
  path: string,
  place: string,
  { note, now }: Readonly<Record<string, string | undefined>>,
): void {
  if (path === "-") throw new InputProblem(({ common }) => common.files.notBack);
  const { plan, document, figures, circuit } = loadFigures(path);
  const bench = benchOf(figures.plan, circuit);
  if (!isMendable(bench, figures.plan, place)) {
    const names = [...bench.branchOf.keys(), ...plan.gear.map(({ name }) => name)];
    const nearest = nearestOf(place, names);
    throw new InputProblem(({ electrics: { prove: say } }) =>
      harmless(`${say.noPlace(place)}${nearest === undefined ? "" : say.meant(nearest)}`),
    );
  }
  const edited = editSound({ plan, document }, mendEdits([place], momentAsked(now), note));
  if (!edited.ok) throw new InputProblem(({ problems }) => harmless(problems.edit(edited.problem)));
  writeWhole(path, edited.text, true);
}

function sectionLines(section: SheetSection, screen: Screen): string[] {
  if (section.tests.length === 0) return [];
  const { proof: words } = screen.paper.of;
  const { sheetHeads: heads } = screen.told.electrics.prove;
  const rows = section.tests.map((test) => [
    words.sheet.tests[test.test],
    expectedWords(test, words),
    settingWords(test, words),
    howWords(test, words),
  ]);
  const columns = [heads.test, heads.expect, heads.instrument, heads.how].map((heading) => ({
    heading,
    align: "left" as const,
  }));
  const stops = [...new Set(section.tests.map(({ stop }) => stop))].map((stop) => {
    const names = section.tests.filter((one) => one.stop === stop).map(({ test }) => words.sheet.tests[test]);
    return `${[...new Set(names)].join("; ")}. ${words.sheet.stops[stop]}`;
  });
  return [
    "",
    paint(harmless(sectionWords(section, words)), "strong", screen),
    ...textTable(columns, rows, screen),
    ...stops.flatMap((line) => wrap(line, screen.width).map((row) => paint(row, "quiet", screen))),
  ];
}

function diagnosisLines(
  { judged, again, idleMends, meterShare, faults, next, changes, agedFaults }: Diagnosis,
  screen: Screen,
): string[] {
  const { proof: words } = screen.paper.of;
  const { prove: say } = screen.told.electrics;
  const set = (text: string) => wrap(harmless(text), screen.width);
  const ranked = (suspects: readonly Suspect[]) =>
    suspects.flatMap((suspect) => {
      const [first = "", ...rest] = wrap(harmless(suspectSentence(suspect, words)), screen.width - 9);
      const lead = probabilityWords(suspect.probability).padStart(7);
      return [`${lead}  ${first}`, ...rest.map((row) => `         ${row}`)];
    });
  if (judged.length === 0) return set(say.noReadings);
  const columns = [
    { heading: say.heads.reading, align: "left" },
    { heading: say.heads.shows, align: "right" },
    { heading: say.heads.sound, align: "left" },
    { heading: "", align: "left" },
  ] as const;
  const rows = judged.map((one) => [
    takenWords(one, words),
    readingWords(one.taken.kind, one.taken.value, words),
    one.band ? bandWords(one.taken.kind, one.band, words) : "",
    verdictSentence(one, words),
  ]);
  const aged = changes.filter(({ changed }) => changed);
  return [
    ...textTable(columns, rows, screen),
    ...(meterShare === undefined ? [] : ["", ...set(meterWords(meterShare, words))]),
    ...idleMends.flatMap(({ at, why }) => set(words.proving.idleMends[why](branchWords(at, words)))),
    ...(again.length === 0
      ? []
      : [
          "",
          paint(say.again, "strong", screen),
          ...again.flatMap((probe) => set(probeWords(probe, words))),
          ...set(say.againHint),
        ]),
    ...(aged.length === 0
      ? []
      : [
          "",
          paint(say.changed, "strong", screen),
          ...aged.flatMap((change) => set(changeSentence(change, words))),
          ...ranked(agedFaults?.suspects.slice(0, 3) ?? []),
        ]),
    ...(faults
      ? [
          "",
          paint(say.suspects, "strong", screen),
          ...ranked(suspectsShown(faults.suspects)),
          ...(faults.explained ? [] : set(say.unexplained)),
          ...(faults.notApart.length > 1 && faults.suspects[0]?.kind !== "well"
            ? set(say.notApart(faults.notApart.length))
            : []),
        ]
      : []),
    ...(next.length > 0
      ? [
          "",
          paint(say.next, "strong", screen),
          ...next.slice(0, 3).flatMap((one) => set(say.tells(nextWords(one, words), decimals(one.bits, 1)))),
        ]
      : faults
        ? ["", ...set(say.nothingMore)]
        : []),
  ];
}

function batteryRun(
  { figures: { plan }, circuit }: Pick<ReturnType<typeof loadFigures>, "figures" | "circuit">,
  name: string,
  values: Readonly<Record<string, string | undefined>>,
  json: boolean,
  screen: Screen,
): number {
  const { prove: say } = screen.told.electrics;
  const battery = plan.batteries.find((one) => one.name === name);
  if (!battery) throw new InputProblem(({ electrics }) => electrics.prove.noBattery(harmless(name)));
  const number = (flag: string, usual: number): number => {
    const text = values[flag];
    if (text === undefined) return usual;
    const value = Number(text.replace(/ ?[VA]$/i, ""));
    if (text.trim() === "" || !(value >= 0 && value < 1000))
      throw new InputProblem(({ electrics }) => electrics.prove.number(flag, harmless(text)));
    return value;
  };
  if (values.shows === undefined) throw new InputProblem(({ electrics }) => electrics.prove.needsVolts);
  const onA =
    values.on === undefined ? 0 : batteryCurrentA(benchOf(plan, circuit), name, gearNamed(plan, values.on));
  const currentA = number("with", onA);
  const left = batteryLeft(plan, battery, {
    voltageV: number("shows", 0),
    currentA,
    useA: number("use", currentA),
  });
  if (json) {
    printJson({ skiffloom: "battery left", version: 1, battery: name, ...left });
    return exit.fine;
  }
  if (left.beyond) {
    print(wrap(`${harmless(name)}: ${say.beyond[left.beyond]}`, screen.width));
    return exit.fine;
  }
  print([
    say.charged(
      harmless(name),
      percent(left.charge, 0),
      percent(left.chargeLow, 0),
      percent(left.chargeHigh, 0),
    ),
    Number.isFinite(left.hoursToReserve)
      ? say.left(
          hours(left.hoursToReserve),
          hours(left.hoursLow),
          hours(left.hoursHigh),
          hours(left.hoursToEmpty),
        )
      : say.lasts,
  ]);
  return exit.fine;
}

/** Single pieces of a list of gear as people write it, groups by their own name. */
function gearNamed(plan: CompletePlan, list: string): string[] {
  return list.split(",").flatMap((part) => {
    const name = part.trim();
    const pieces = plan.gear.filter((piece) => piece.name === name || piece.group === name);
    if (pieces.length === 0)
      throw new InputProblem(({ electrics }) => electrics.prove.noGear(harmless(name)));
    return pieces.map((piece) => piece.name);
  });
}
