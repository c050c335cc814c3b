import type { Figures } from "../core/figures-types.js";
import type { Shows } from "../core/plan/model/plan.js";
import { standing } from "../core/work/differences.js";
import type { WorkFigures } from "../core/work/plan-work.js";
import type { PaperWords } from "../words/paper/paper-words.js";
import { branchWords } from "../words/proving.js";
import { stepTitles } from "../words/work-words.js";
import type { BuiltWords } from "./built/built.js";
import { cableColumns, cableRows } from "./built/cables.js";
import { deviceColumns, deviceRows, jointColumns, jointRows } from "./built/ends-and-devices.js";
import { entryColumns, entryRows } from "./built/entries.js";
import { holeColumns, holeRows } from "./built/holes.js";
import { mendColumns, projectColumns, readingColumns, readingRows } from "./built/record.js";
import type { Paper } from "./page.js";
import { heading, type Piece, paragraph, space } from "./piece.js";
import { flowing, type Section } from "./section.js";
import { type Column, type Row, table } from "./table.js";

/** What was really built beside what the plan wants, with room to write by hand what is not on record yet. */
export function builtSection(
  figures: Figures,
  work: WorkFigures,
  shows: Shows,
  paper: Paper,
  words: PaperWords,
): Section {
  const say = words.work.built;
  const { record: told, steps, proof } = words.of;
  const widthMm = paper.right - paper.left;
  const { plan } = figures;
  const record = plan.source.work;
  const built = standing(record.asBuilt);
  const part = (
    title: string,
    columns: (words: BuiltWords) => readonly Column[],
    rows: readonly Row[],
  ): Piece[] =>
    rows.length === 0 ? [] : [heading(title, widthMm), ...table(columns(say), rows, widthMm), space(3)];
  const title = stepTitles(work.step.values(), steps);
  const said = [
    ...work.asBuilt.differences.map((one) => told.difference(one, shows)),
    ...work.asBuilt.problems.map((one) => told.tick(one, title)),
  ];
  const count =
    record.workDone.length + record.projects.reduce((sum, { workDone }) => sum + workDone.length, 0);
  const pieces = [
    paragraph({ text: say.explanation, colour: "soft", sizePt: 9.5 }, widthMm, 3),
    ...(said.length === 0
      ? []
      : [
          heading(say.otherwise, widthMm),
          ...said.map((sentence) => paragraph({ text: `• ${sentence}`, maxLines: 4 }, widthMm, 1)),
          space(3),
        ]),
    ...part(say.cables, cableColumns, cableRows(figures, built, shows, say)),
    ...part(say.holes, holeColumns, holeRows(figures, work, built, shows, words)),
    ...part(say.entries, entryColumns, entryRows(work, built, words)),
    ...part(say.joints, jointColumns, jointRows(figures, built, words.of.layout)),
    ...part(say.devices, deviceColumns, deviceRows(figures, built, words)),
    ...part(say.readings, readingColumns, readingRows(record, figures.readings ?? [], say, proof)),
    ...part(
      say.mends,
      mendColumns,
      record.mends.map(({ at, when, note }) => ({
        cells: [branchWords(at, proof), when ?? "", note ?? ""],
      })),
    ),
    ...part(
      say.projects,
      projectColumns,
      record.projects.map(({ name, finished, note }) => ({ cells: [name, finished ?? "", note ?? ""] })),
    ),
  ];
  const subtitle = count === 0 ? say.nothing : say.onRecord(count);
  return flowing(say.title, subtitle, pieces, paper);
}
