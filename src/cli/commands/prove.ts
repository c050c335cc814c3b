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
import { beyondWords } from "../../words/beyond-words.js";
import { editProblemSentence } from "../../words/edit-problems.js";
import { decimals, hours, percent } from "../../words/numbers.js";
import { english } from "../../words/proof/english.js";
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
import { proof } from "../../words/screen/en/proof.js";
import { expectedWords, howWords, sectionWords, settingWords } from "../../words/test-sheet.js";
import { cardWordLines } from "../../words/water-card.js";
import { readArguments } from "../arguments.js";
import { writeWhole } from "../files.js";
import { loadFigures } from "../load.js";
import { momentAsked } from "../moment.js";
import { print, printJson } from "../print.js";
import { exit, InputProblem } from "../problem.js";
import { textTable } from "../table.js";
import { harmless, paint, type Terminal, terminal, wrap } from "../terminal.js";

export const help = `skiffloom prove PLAN [--sheet | --water] [--json]
skiffloom prove PLAN --mended PLACE [--note TEXT] [--now WHEN]
skiffloom prove PLAN --battery NAME --shows 12.4 [--with 3.2 | --on GEAR] [--use 2]

Compares the readings in the plan with what a sound boat would show, ranks what may be wrong,
and says what to measure next. Readings that were taken when a project was finished are what
later ones are compared with: a joint that ages shows.

  --sheet     the test sheet: every reading to take, what to expect, what to stop for
  --water     the card for the water: switches, fuses, hours left, what to turn off first
  --mended    put a mend of this stretch, fuse, cable, gear or battery on record: readings taken through it
              before are no longer held against the boat, and what proves the mend is asked for
  --battery   hours left in a battery, from the volts it --shows, with so many amperes on
              (--with) or this gear on (--on "side lights, sounder"); left out: at rest.
              At a use of so many amperes from now (--use; left out: what was on)
  --json      the same as data (docs/json.md)

Ends with status 0 when every reading is as expected and every mend proven, 1 when one is not, 2 when the plan can't be read.
Take meters to live circuits only where you know what you do; batteries can weld and burn.`;

export function run(words: readonly string[]): number {
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
      battery: "value",
      shows: "value",
      with: "value",
      on: "value",
      use: "value",
      mended: "value",
      note: "value",
      now: "value",
    },
  });
  if (values.mended !== undefined) putMend(path, values.mended, values);
  const { figures, circuit } = loadFigures(path);
  const json = switches.has("json");
  const screen = terminal();
  if (values.battery !== undefined) return batteryRun({ figures, circuit }, values.battery, values, json);
  if (switches.has("water")) {
    const card = waterCard(figures);
    if (json) printJson({ skiffloom: "water card", version: 1, ...card });
    else print(cardWordLines(card).flatMap((line) => wrap(harmless(line), screen.width)));
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
  if (path === "-") throw new InputProblem(["a plan from standard input can't be written back"]);
  const { plan, document, figures, circuit } = loadFigures(path);
  const bench = benchOf(figures.plan, circuit);
  if (!isMendable(bench, figures.plan, place)) {
    const names = [...bench.branchOf.keys(), ...plan.gear.map(({ name }) => name)];
    const nearest = nearestOf(place, names);
    throw new InputProblem([
      `nothing in the circuit is called ${harmless(place)}${nearest === undefined ? "" : `; did you mean '${harmless(nearest)}'?`}`,
    ]);
  }
  const edited = editSound({ plan, document }, mendEdits([place], momentAsked(now), note));
  if (!edited.ok) throw new InputProblem([harmless(editProblemSentence(edited.problem))]);
  writeWhole(path, edited.text, true);
}

function sectionLines(section: SheetSection, screen: Terminal): string[] {
  if (section.tests.length === 0) return [];
  const rows = section.tests.map((test) => [
    english.sheet.tests[test.test],
    expectedWords(test),
    settingWords(test),
    howWords(test),
  ]);
  const columns = ["test", "expect", "instrument", "where and how"].map((heading) => ({
    heading,
    align: "left" as const,
  }));
  const stops = [...new Set(section.tests.map(({ stop }) => stop))].map((stop) => {
    const names = section.tests
      .filter((one) => one.stop === stop)
      .map(({ test }) => english.sheet.tests[test]);
    return `${[...new Set(names)].join("; ")}. ${english.sheet.stops[stop]}`;
  });
  return [
    "",
    paint(harmless(sectionWords(section)), "strong", screen),
    ...textTable(columns, rows, screen),
    ...stops.flatMap((line) => wrap(line, screen.width).map((row) => paint(row, "quiet", screen))),
  ];
}

function diagnosisLines(
  { judged, again, idleMends, meterShare, faults, next, changes, agedFaults }: Diagnosis,
  screen: Terminal,
): string[] {
  const set = (text: string) => wrap(harmless(text), screen.width);
  const ranked = (suspects: readonly Suspect[]) =>
    suspects.flatMap((suspect) => {
      const [first = "", ...rest] = wrap(harmless(suspectSentence(suspect)), screen.width - 9);
      const lead = probabilityWords(suspect.probability).padStart(7);
      return [`${lead}  ${first}`, ...rest.map((row) => `         ${row}`)];
    });
  if (judged.length === 0)
    return set(
      "The plan has no readings. `skiffloom prove PLAN --sheet` says what to read; write what the meter shows under `readings`.",
    );
  const columns = [
    { heading: "reading", align: "left" },
    { heading: "shows", align: "right" },
    { heading: "a sound boat", align: "left" },
    { heading: "", align: "left" },
  ] as const;
  const rows = judged.map((one) => [
    takenWords(one),
    readingWords(one.taken.kind, one.taken.value),
    one.band ? bandWords(one.taken.kind, one.band) : "",
    verdictSentence(one),
  ]);
  const aged = changes.filter(({ changed }) => changed);
  return [
    ...textTable(columns, rows, screen),
    ...(meterShare === undefined ? [] : ["", ...set(meterWords(meterShare))]),
    ...idleMends.flatMap(({ at, why }) => set(english.proving.idleMends[why](branchWords(at)))),
    ...(again.length === 0
      ? []
      : [
          "",
          paint(proof.again, "strong", screen),
          ...again.flatMap((probe) => set(probeWords(probe))),
          ...set(proof.againHint),
        ]),
    ...(aged.length === 0
      ? []
      : [
          "",
          paint("Changed since", "strong", screen),
          ...aged.flatMap((change) => set(changeSentence(change))),
          ...ranked(agedFaults?.suspects.slice(0, 3) ?? []),
        ]),
    ...(faults
      ? [
          "",
          paint("What may be wrong, likeliest first", "strong", screen),
          ...ranked(suspectsShown(faults.suspects)),
          ...(faults.explained ? [] : set(proof.unexplained)),
          ...(faults.notApart.length > 1 && faults.suspects[0]?.kind !== "well"
            ? set(proof.notApart(faults.notApart.length))
            : []),
        ]
      : []),
    ...(next.length > 0
      ? [
          "",
          paint("What to measure next", "strong", screen),
          ...next.slice(0, 3).flatMap((one) => set(`${nextWords(one)} (tells ${decimals(one.bits, 1)} bit)`)),
        ]
      : faults
        ? ["", ...set(proof.nothingMore)]
        : []),
  ];
}

function batteryRun(
  { figures: { plan }, circuit }: Pick<ReturnType<typeof loadFigures>, "figures" | "circuit">,
  name: string,
  values: Readonly<Record<string, string | undefined>>,
  json: boolean,
): number {
  const battery = plan.batteries.find((one) => one.name === name);
  if (!battery) throw new InputProblem([`the plan has no battery ${harmless(name)}`]);
  const number = (flag: string, usual: number): number => {
    const text = values[flag];
    if (text === undefined) return usual;
    const value = Number(text.replace(/ ?[VA]$/i, ""));
    if (text.trim() === "" || !(value >= 0 && value < 1000))
      throw new InputProblem([`--${flag} must be a number, got ${harmless(text)}`]);
    return value;
  };
  if (values.shows === undefined) throw new InputProblem(["--battery needs the volts it --shows"]);
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
    print(wrap(`${harmless(name)}: ${beyondWords[left.beyond]}`, terminal().width));
    return exit.fine;
  }
  print([
    `${harmless(name)}: about ${percent(left.charge, 0)} charged (${percent(left.chargeLow, 0)} to ${percent(left.chargeHigh, 0)})`,
    Number.isFinite(left.hoursToReserve)
      ? `${hours(left.hoursToReserve)} to its reserve (${hours(left.hoursLow)} to ${hours(left.hoursHigh)}), ${hours(left.hoursToEmpty)} until it is empty`
      : "nothing drawn: it lasts",
  ]);
  return exit.fine;
}

/** Single pieces of a list of gear as people write it, groups by their own name. */
function gearNamed(plan: CompletePlan, list: string): string[] {
  return list.split(",").flatMap((part) => {
    const name = part.trim();
    const pieces = plan.gear.filter((piece) => piece.name === name || piece.group === name);
    if (pieces.length === 0) throw new InputProblem([`the plan has no gear ${harmless(name)}`]);
    return pieces.map((piece) => piece.name);
  });
}
