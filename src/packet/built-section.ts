import type { Figures } from "../core/figures-types.js";
import type { FaceName } from "../core/plan/model/layout.js";
import type { Shows } from "../core/plan/model/plan.js";
import type { JudgedReading } from "../core/proving/taken/judge.js";
import { standing } from "../core/work/differences.js";
import type { WorkFigures } from "../core/work/plan-work.js";
import { plannedHoles } from "../core/work/planned-holes.js";
import { boreWords } from "../words/hull-words.js";
import type { LayoutWords } from "../words/layout/english.js";
import { lengthWords, marked } from "../words/numbers.js";
import type { PaperWords } from "../words/paper/paper-words.js";
import { pathWords } from "../words/path-words.js";
import type { ProofWords } from "../words/proof/proof-words.js";
import { branchWords, pointWords, readingWords, verdictSentence } from "../words/proving.js";
import { stepTitles } from "../words/work-words.js";
import type { Paper } from "./page.js";
import { heading, type Piece, paragraph, space } from "./piece.js";
import { flowing, type Section } from "./section.js";
import { type Column, type Row, table } from "./table.js";

/** What was really built beside what the plan wants, with room to write by hand what is not on record yet. */
type BuiltWords = PaperWords["work"]["built"];

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

const cableColumns = ({ heads }: BuiltWords): readonly Column[] => [
  { heading: heads.run, share: 44 },
  { heading: heads.from, share: 36 },
  { heading: heads.to, share: 36 },
  { heading: heads.plannedLength, share: 28, align: "right" },
  { heading: heads.asBuilt, share: 28, align: "right", hand: "write" },
  { heading: heads.plannedConductor, share: 26 },
  { heading: heads.asBuilt, share: 24, hand: "write" },
  { heading: heads.how, share: 62, hand: "write" },
];

type Built = ReturnType<typeof standing>;
const how = (
  one: { readonly measured: boolean; readonly when?: string } | undefined,
  { measured, asSaid }: BuiltWords,
): string =>
  one === undefined
    ? ""
    : [one.measured ? measured : asSaid, one.when ?? ""].filter((word) => word !== "").join(", ");

function cableRows({ plan, sizes }: Figures, { lengths }: Built, shows: Shows, words: BuiltWords): Row[] {
  const known = new Map(lengths.map((one) => [one.run, one]));
  const rows = plan.runs.map((run): Row => {
    const one = known.get(run.name);
    known.delete(run.name);
    const size =
      sizes.choices.find((choice) => choice.run === run.group || choice.run === run.name)?.size.key ?? "";
    return {
      cells: [
        { words: [{ text: run.name, weight: "semibold" }] },
        run.from.port === undefined ? run.from.place : `${run.from.place} / ${run.from.port}`,
        run.to.port === undefined ? run.to.place : `${run.to.place} / ${run.to.port}`,
        lengthWords(run.lengthM, shows),
        one === undefined ? "" : lengthWords(one.lengthM, shows),
        size,
        one?.size?.key ?? "",
        how(one, words),
      ],
    };
  });
  const gone = [...known.values()].map(
    (one): Row => ({
      cells: [
        { words: [{ text: one.run, weight: "semibold" }] },
        "",
        "",
        words.notInPlan,
        lengthWords(one.lengthM, shows),
        "",
        one.size?.key ?? "",
        how(one, words),
      ],
    }),
  );
  return [...rows, ...gone];
}

const holeColumns = ({ heads }: BuiltWords): readonly Column[] => [
  { heading: heads.hole, share: 38 },
  { heading: heads.face, share: 32 },
  { heading: heads.plannedPlace, share: 54 },
  { heading: heads.asBuilt, share: 54, hand: "write" },
  { heading: heads.size, share: 34, align: "right" },
  { heading: heads.behind, share: 40 },
  { heading: heads.how, share: 60, hand: "write" },
];

function holeRows(
  { plan }: Figures,
  { facts }: WorkFigures,
  { holes }: Built,
  shows: Shows,
  { work: { built: words }, of }: PaperWords,
): Row[] {
  const { sides } = of.labels;
  const known = new Map(holes.map((one) => [one.hole, one]));
  const rows = plannedHoles(plan).map((wanted): Row => {
    const one = known.get(wanted.hole);
    known.delete(wanted.hole);
    const at = wanted.at ?? facts.holes?.get(wanted.hole)?.at;
    const cutMm =
      facts.holes?.get(wanted.hole)?.cutMm ?? (wanted.sizeM === undefined ? undefined : wanted.sizeM * 1000);
    const behind = one?.behind ?? facts.holes?.get(wanted.hole)?.behind ?? "";
    return {
      cells: [
        { words: [{ text: wanted.hole, weight: "semibold" }] },
        `${wanted.on}, ${sides[wanted.side]}`,
        wanted.there ? words.thereBefore : at === undefined ? words.inRow : of.record.place(at, shows),
        one === undefined ? "" : of.record.place(one.at, shows),
        `${cutMm === undefined ? "–" : boreWords(cutMm)} / ${one === undefined ? "      " : boreWords(one.sizeM * 1000)}`,
        behind,
        how(one, words),
      ],
    };
  });
  const gone = [...known.values()].map(
    (one): Row => ({
      cells: [
        { words: [{ text: one.hole, weight: "semibold" }] },
        `${one.on}, ${sides[one.side]}`,
        words.notInPlan,
        of.record.place(one.at, shows),
        `– / ${boreWords(one.sizeM * 1000)}`,
        one.behind ?? "",
        how(one, words),
      ],
    }),
  );
  return [...rows, ...gone];
}

const entryColumns = ({ heads }: BuiltWords): readonly Column[] => [
  { heading: heads.box, share: 34 },
  { heading: heads.for, share: 44 },
  { heading: heads.side, share: 24 },
  { heading: heads.along, share: 40 },
  { heading: heads.size, share: 40, align: "right" },
  { heading: heads.how, share: 62, hand: "write" },
];

function entryRows(
  { facts }: WorkFigures,
  { entries }: Built,
  { work: { built: words }, of }: PaperWords,
): Row[] {
  const { faces } = of.layout;
  const at = (on: FaceName, [along, base]: readonly [number, number]) =>
    [faces[on], `${boreWords(along * 1000)}, ${boreWords(base * 1000)}`] as const;
  const left = [...entries];
  const rows = [...(facts.entries ?? [])].flatMap(([box, list]) =>
    list.map((wanted): Row => {
      const index = left.findIndex((one) => one.box === box && one.run === wanted.run);
      const [one] = index < 0 ? [] : left.splice(index, 1);
      const [side, place] =
        one !== undefined
          ? at(one.on, one.atM)
          : wanted.on !== undefined && wanted.atM !== undefined
            ? at(wanted.on, wanted.atM)
            : ["", ""];
      return {
        cells: [
          { words: [{ text: box, weight: "semibold" }] },
          wanted.run,
          side,
          place,
          `${boreWords(wanted.holeMm)} / ${one === undefined ? "      " : boreWords(one.holeM * 1000)}`,
          how(one, words),
        ],
      };
    }),
  );
  return [
    ...rows,
    ...left.map(
      (one): Row => ({
        cells: [
          one.box,
          one.run,
          ...at(one.on, one.atM),
          `– / ${boreWords(one.holeM * 1000)}`,
          how(one, words),
        ],
      }),
    ),
  ];
}

const jointColumns = ({ heads }: BuiltWords): readonly Column[] => [
  { heading: heads.run, share: 50 },
  { heading: heads.startPlanned, share: 40 },
  { heading: heads.asMade, share: 40, hand: "write" },
  { heading: heads.endPlanned, share: 40 },
  { heading: heads.asMade, share: 40, hand: "write" },
  { heading: heads.when, share: 36, hand: "write" },
];

function jointRows({ plan }: Figures, { joints }: Built, { joint }: LayoutWords): Row[] {
  const said = (kind: string | undefined) => (kind === undefined ? "" : joint(kind));
  return plan.runs.map((run): Row => {
    const [start, end] = (["start", "end"] as const).map((which) =>
      joints.find((one) => one.at === run.name && one.end === which),
    );
    return {
      cells: [
        { words: [{ text: run.name, weight: "semibold" }] },
        said(run.jointAtStart),
        said(start?.kind),
        said(run.jointAtEnd),
        said(end?.kind),
        end?.when ?? start?.when ?? "",
      ],
    };
  });
}

const deviceColumns = ({ heads }: BuiltWords): readonly Column[] => [
  { heading: heads.device, share: 70 },
  { heading: heads.planned, share: 30, align: "right" },
  { heading: heads.fitted, share: 30, align: "right", hand: "write" },
  { heading: heads.when, share: 60, hand: "write" },
];

function deviceRows(
  { protection }: Figures,
  { ratings }: Built,
  { work: { built: words }, of }: PaperWords,
): Row[] {
  return protection.map(({ id, ratingA, spare }): Row => {
    const one = ratings.find(({ device }) => device === id);
    return {
      cells: [
        { words: [{ text: pathWords(id, of.findings.path), weight: "semibold" }] },
        spare ? words.noneYet : marked(ratingA, "A"),
        one === undefined ? "" : marked(one.ratingA, "A"),
        one?.when ?? "",
      ],
    };
  });
}

const projectColumns = ({ heads }: BuiltWords): readonly Column[] => [
  { heading: heads.project, share: 50 },
  { heading: heads.finished, share: 36 },
  { heading: heads.note, share: 120 },
];

const readingColumns = ({ heads }: BuiltWords): readonly Column[] => [
  { heading: heads.at, share: 62 },
  { heading: heads.against, share: 62 },
  { heading: heads.on, share: 44 },
  { heading: heads.shown, share: 28, align: "right" },
  { heading: heads.when, share: 36 },
  { heading: heads.note, share: 56 },
];

const mendColumns = ({ heads }: BuiltWords): readonly Column[] => [
  { heading: heads.what, share: 80 },
  { heading: heads.when, share: 36 },
  { heading: heads.note, share: 90 },
];

/** @param judged Readings of the project in hand: those that a mend has taken back are said to be so. */
function readingRows(
  { readings, projects }: Figures["plan"]["source"]["work"],
  judged: readonly JudgedReading[],
  words: BuiltWords,
  proof: ProofWords,
): Row[] {
  const mended = new Map(
    judged.flatMap((one) => (one.mended ? [[one.taken, verdictSentence(one, proof)] as const] : [])),
  );
  return [...projects.flatMap((project) => project.readings), ...readings].map(
    (one): Row => ({
      cells: [
        one.against === undefined ? branchWords(one.at, proof) : pointWords(one.at, proof.proving.points),
        one.against === undefined ? "" : pointWords(one.against, proof.proving.points),
        [...one.withOn, ...(one.lifted ?? []).map((id) => words.without(branchWords(id, proof)))].join(", "),
        readingWords(one.kind, one.value, proof),
        one.when ?? "",
        [...(mended.has(one) ? [mended.get(one)] : []), ...(one.note ? [one.note] : [])].join("; "),
      ],
    }),
  );
}
