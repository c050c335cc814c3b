import type { Figures } from "../core/figures-types.js";
import type { Shows } from "../core/plan/model/plan.js";
import { standing } from "../core/work/differences.js";
import type { WorkFigures } from "../core/work/plan-work.js";
import { plannedHoles } from "../core/work/planned-holes.js";
import { differenceSentence, placeWords, tickProblemSentence } from "../words/difference-words.js";
import { boreWords } from "../words/hull-words.js";
import { counted, lengthWords, marked } from "../words/numbers.js";
import { branchWords } from "../words/proving.js";
import { shownWords } from "../words/reading-words.js";
import { stepTitles } from "../words/work-words.js";
import type { Paper } from "./page.js";
import { heading, type Piece, paragraph, space } from "./piece.js";
import { flowing, type Section } from "./section.js";
import { type Column, type Row, table } from "./table.js";

/** What was really built beside what the plan wants, with room to write by hand what is not on record yet. */
export function builtSection(figures: Figures, work: WorkFigures, shows: Shows, paper: Paper): Section {
  const widthMm = paper.right - paper.left;
  const { plan } = figures;
  const record = plan.source.work;
  const built = standing(record.asBuilt);
  const part = (title: string, columns: readonly Column[], rows: readonly Row[]): Piece[] =>
    rows.length === 0 ? [] : [heading(title, widthMm), ...table(columns, rows, widthMm), space(3)];
  const title = stepTitles(work.step.values());
  const said = [
    ...work.asBuilt.differences.map((one) => differenceSentence(one, shows)),
    ...work.asBuilt.problems.map((one) => tickProblemSentence(one, title)),
  ];
  const count =
    record.workDone.length + record.projects.reduce((sum, { workDone }) => sum + workDone.length, 0);
  const pieces = [
    paragraph({ text: explanation, colour: "soft", sizePt: 9.5 }, widthMm, 3),
    ...(said.length === 0
      ? []
      : [
          heading("Built otherwise than the plan wants", widthMm),
          ...said.map((words) => paragraph({ text: `• ${words}`, maxLines: 4 }, widthMm, 1)),
          space(3),
        ]),
    ...part("Cables", cableColumns, cableRows(figures, built, shows)),
    ...part(
      "Holes in the boat, and what lies behind them",
      holeColumns,
      holeRows(figures, work, built, shows),
    ),
    ...part("Holes of boxes and panels", entryColumns, entryRows(work, built)),
    ...part("Joints", jointColumns, jointRows(figures, built)),
    ...part("Fuses and breakers", deviceColumns, deviceRows(figures, built)),
    ...part("Readings", readingColumns, readingRows(record)),
    ...part(
      "Finished projects",
      projectColumns,
      record.projects.map(({ name, finished, note }) => ({ cells: [name, finished ?? "", note ?? ""] })),
    ),
  ];
  const subtitle = count === 0 ? "nothing on record yet" : `${counted(count, "step")} on record`;
  return flowing("As built", subtitle, pieces, paper);
}

const explanation =
  "Beside what the plan wants stands what was made: measured, or as the step said where it was ticked and nothing else is on record. An empty field is not on record: write it here by hand, then into the plan. What is not on record was not checked.";

const cableColumns: readonly Column[] = [
  { heading: "Run", share: 46 },
  { heading: "From", share: 40 },
  { heading: "To", share: 40 },
  { heading: "Planned length", share: 30, align: "right" },
  { heading: "As built", share: 30, align: "right" },
  { heading: "Planned conductor", share: 30 },
  { heading: "As built", share: 26 },
  { heading: "How and when", share: 44 },
];

type Built = ReturnType<typeof standing>;
const how = (one: { readonly measured: boolean; readonly when?: string } | undefined): string =>
  one === undefined
    ? ""
    : [one.measured ? "measured" : "as the step said", one.when ?? ""]
        .filter((word) => word !== "")
        .join(", ");

function cableRows({ plan, sizes }: Figures, { lengths }: Built, shows: Shows): Row[] {
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
        how(one),
      ],
    };
  });
  const gone = [...known.values()].map(
    (one): Row => ({
      cells: [
        { words: [{ text: one.run, weight: "semibold" }] },
        "",
        "",
        "not in the plan",
        lengthWords(one.lengthM, shows),
        "",
        one.size?.key ?? "",
        how(one),
      ],
    }),
  );
  return [...rows, ...gone];
}

const holeColumns: readonly Column[] = [
  { heading: "Hole", share: 40 },
  { heading: "Face", share: 34 },
  { heading: "Planned place", share: 60 },
  { heading: "As built", share: 60 },
  { heading: "Size, planned / built", share: 34, align: "right" },
  { heading: "Behind it", share: 46 },
  { heading: "How and when", share: 40 },
];

function holeRows({ plan }: Figures, { facts }: WorkFigures, { holes }: Built, shows: Shows): Row[] {
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
        `${wanted.on}, ${wanted.side}`,
        wanted.there ? "there before" : at === undefined ? "in a row: see its mark" : placeWords(at, shows),
        one === undefined ? "" : placeWords(one.at, shows),
        `${cutMm === undefined ? "–" : boreWords(cutMm)} / ${one === undefined ? "      " : boreWords(one.sizeM * 1000)}`,
        behind,
        how(one),
      ],
    };
  });
  const gone = [...known.values()].map(
    (one): Row => ({
      cells: [
        { words: [{ text: one.hole, weight: "semibold" }] },
        `${one.on}, ${one.side}`,
        "not in the plan",
        placeWords(one.at, shows),
        `– / ${boreWords(one.sizeM * 1000)}`,
        one.behind ?? "",
        how(one),
      ],
    }),
  );
  return [...rows, ...gone];
}

const entryColumns: readonly Column[] = [
  { heading: "Box or panel", share: 40 },
  { heading: "For", share: 50 },
  { heading: "Side", share: 22 },
  { heading: "Along, from base", share: 44 },
  { heading: "Size, planned / built", share: 40, align: "right" },
  { heading: "How and when", share: 46 },
];

function entryRows({ facts }: WorkFigures, { entries }: Built): Row[] {
  const at = (on: string, [along, base]: readonly [number, number]) =>
    [on, `${boreWords(along * 1000)}, ${boreWords(base * 1000)}`] as const;
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
          how(one),
        ],
      };
    }),
  );
  return [
    ...rows,
    ...left.map(
      (one): Row => ({
        cells: [one.box, one.run, ...at(one.on, one.atM), `– / ${boreWords(one.holeM * 1000)}`, how(one)],
      }),
    ),
  ];
}

const jointColumns: readonly Column[] = [
  { heading: "Run", share: 50 },
  { heading: "Start, planned", share: 40 },
  { heading: "As made", share: 40 },
  { heading: "End, planned", share: 40 },
  { heading: "As made", share: 40 },
  { heading: "When", share: 36 },
];

function jointRows({ plan }: Figures, { joints }: Built): Row[] {
  return plan.runs.map((run): Row => {
    const [start, end] = (["start", "end"] as const).map((which) =>
      joints.find((one) => one.at === run.name && one.end === which),
    );
    return {
      cells: [
        { words: [{ text: run.name, weight: "semibold" }] },
        run.jointAtStart,
        start?.kind ?? "",
        run.jointAtEnd,
        end?.kind ?? "",
        end?.when ?? start?.when ?? "",
      ],
    };
  });
}

const deviceColumns: readonly Column[] = [
  { heading: "Device", share: 70 },
  { heading: "Planned", share: 30, align: "right" },
  { heading: "Fitted", share: 30, align: "right" },
  { heading: "When", share: 60 },
];

function deviceRows({ protection }: Figures, { ratings }: Built): Row[] {
  return protection.map(({ id, ratingA, spare }): Row => {
    const one = ratings.find(({ device }) => device === id);
    return {
      cells: [
        { words: [{ text: id, weight: "semibold" }] },
        spare ? "none yet" : marked(ratingA, "A"),
        one === undefined ? "" : marked(one.ratingA, "A"),
        one?.when ?? "",
      ],
    };
  });
}

const projectColumns: readonly Column[] = [
  { heading: "Project", share: 50 },
  { heading: "Finished", share: 36 },
  { heading: "Note", share: 120 },
];

const readingColumns: readonly Column[] = [
  { heading: "At", share: 60 },
  { heading: "Against", share: 44 },
  { heading: "On", share: 60 },
  { heading: "Shown", share: 28, align: "right" },
  { heading: "When", share: 36 },
  { heading: "Note", share: 56 },
];

function readingRows({ readings, projects }: Figures["plan"]["source"]["work"]): Row[] {
  return [...projects.flatMap((project) => project.readings), ...readings].map(
    (one): Row => ({
      cells: [
        one.at,
        one.against ?? "",
        [...one.withOn, ...(one.lifted ?? []).map((id) => `without ${branchWords(id)}`)].join(", "),
        shownWords(one),
        one.when ?? "",
        one.note ?? "",
      ],
    }),
  );
}
