import type { CompletePlan } from "../plan/completed.js";
import type { FormCheck, OffsetsForm, StartingForm, SurveyForm } from "../plan/model/form.js";
import type { FormFigures } from "./figures.js";
import { type Form, formFrom } from "./form/form.js";
import { reaches } from "./form/line.js";
import { type NextMeasurement, nextMeasurements } from "./form/next-measurement.js";
import { type OffsetNotation, parseOffsets } from "./form/offsets.js";
import { contradictions } from "./form/redundant.js";
import { type FormMeasurement, isOpen, nextForStarting, startingLines } from "./form/starting-form.js";
import { surveyForm, type TapeSurvey } from "./form/survey.js";
import type { HullProblem } from "./problem.js";

/** The form that a plan describes, and what is wrong with its measurements; undefined where it describes none. */
export function planForm({ source, marks }: CompletePlan): FormFigures | undefined {
  const { form } = source.craft;
  switch (form?.kind) {
    case undefined:
      return undefined;
    case "survey":
      return fromSurvey(form, marks.formSpreadM);
    case "offsets":
      return fromOffsets(form);
    case "starting form":
      return fromStarting(form, source.craft.lengthM, source.craft.beamM);
  }
}

function fromSurvey(given: SurveyForm, sigmaM: number): FormFigures {
  const survey: TapeSurvey = {
    stationsM: given.stationsM,
    sigmaM,
    lines: given.lines.map(({ name, corner, above, halfBreadthsM, heightsM }) => ({
      name,
      knuckle: corner,
      above,
      heightsM,
      ...(halfBreadthsM === undefined ? {} : { halfBreadthsM }),
    })),
  };
  const { form, problems } = surveyForm(survey);
  return {
    source: "survey",
    open: given.open,
    ...(form === undefined ? {} : { form }),
    next: form === undefined ? [] : nextOf(survey),
    problems: [...problems, ...(form === undefined ? [] : checkProblems(form, given.checks, sigmaM))],
  };
}

function nextOf(survey: TapeSurvey): NextMeasurement[] {
  const measured = (list: readonly (number | undefined)[]) =>
    list.filter((one) => one !== undefined).length >= 2;
  return survey.lines.some((line) => measured(line.heightsM)) ? nextMeasurements(survey, 6) : [];
}

/** Readings that the form already implies; one at a station that its line does not reach is told as such. */
function checkProblems(form: Form, checks: readonly FormCheck[], sigmaM: number): HullProblem[] {
  const line = (name: string) => form.lines.find((one) => one.name === name);
  const off = (name: string, atM: number): HullProblem[] => {
    const found = line(name);
    if (found === undefined || reaches(found, atM)) return [];
    const limit = atM < found.fromM ? found.fromM : found.toM;
    return [{ problem: "off the line", at: name, figure: atM, limit, unit: "m", terms: { what: "check" } }];
  };
  return checks.flatMap((one): HullProblem[] => {
    const places: [string, number][] = [[one.line, one.atM]];
    if (one.kind === "girth") places.push([one.to, one.atM]);
    if (one.kind === "along") places.push([one.line, one.toM]);
    const lost = places.flatMap(([name, atM]) => off(name, atM));
    return lost.length > 0 ? lost : contradictions(form, [one], sigmaM);
  });
}

const units: Readonly<Record<OffsetsForm["numbers"], OffsetNotation>> = {
  mm: { unitM: 0.001 },
  m: { unitM: 1 },
  in: { unitM: 0.0254 },
  "feet-inches-eighths": "feet-inches-eighths",
};

/** How the numbers of a table are read, by the word for them. */
export function offsetNotation(numbers: OffsetsForm["numbers"]): OffsetNotation {
  return units[numbers];
}

function fromOffsets(given: OffsetsForm): FormFigures {
  const { lines, problems } = parseOffsets(given.text, offsetNotation(given.numbers));
  const about = { source: "offsets", open: given.open, next: [] } as const;
  if (lines.length < 2)
    return {
      ...about,
      problems: [
        ...problems,
        {
          problem: "too few stations",
          at: "craft",
          figure: lines.length,
          limit: 2,
          unit: "",
          terms: { what: "lines" },
        },
      ],
    };
  const built = formFrom(lines);
  return {
    ...about,
    ...(built.form === undefined ? {} : { form: built.form }),
    problems: [...problems, ...built.problems],
  };
}

function fromStarting(given: StartingForm, lengthM?: number, beamM?: number): FormFigures {
  const open = given.open ?? isOpen(given.shape);
  if (lengthM === undefined || beamM === undefined || !(lengthM > 0 && beamM > 0))
    return { source: "starting form", open, next: [], problems: [] };
  const scale = { lengthM, beamM, depthM: given.depthM };
  const within = given.measured.filter(({ atM }) => atM >= 0 && atM <= lengthM);
  const measured = within.flatMap(({ line, atM, halfBreadthM, heightM }): FormMeasurement[] => [
    ...(halfBreadthM === undefined
      ? []
      : [{ line, atM, coordinate: "half-breadth" as const, valueM: halfBreadthM }]),
    ...(heightM === undefined ? [] : [{ line, atM, coordinate: "height" as const, valueM: heightM }]),
  ]);
  const once = measured.filter(
    (one, i) =>
      measured.findIndex(
        (other) => other.line === one.line && other.coordinate === one.coordinate && other.atM === one.atM,
      ) === i,
  );
  const built = formFrom(startingLines(given.shape, scale, once));
  const beyond = given.measured.filter((one) => !within.includes(one));
  return {
    source: "starting form",
    open,
    ...(built.form === undefined ? {} : { form: built.form }),
    next: nextForStarting(given.shape, scale, once, 6),
    problems: [
      ...built.problems,
      ...beyond.map(
        ({ line, atM }): HullProblem => ({
          problem: "off the line",
          at: line,
          figure: atM,
          limit: lengthM,
          unit: "m",
          terms: { what: "measurement" },
        }),
      ),
    ],
  };
}
