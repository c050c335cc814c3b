import type { CompletePlan } from "../plan/completed.js";
import type { FormCheck, SurveyForm } from "../plan/model/form.js";
import type { FormFigures, LaidForm } from "./figures.js";
import { unfairIn } from "./form/fair-survey.js";
import type { Form } from "./form/form.js";
import { reaches } from "./form/line.js";
import { nextForStarting } from "./form/next-for-starting.js";
import { type NextMeasurement, nextMeasurements } from "./form/next-measurement.js";
import { contradictions } from "./form/redundant.js";
import type { TapeSurvey } from "./form/survey.js";
import { bentBy, measuredLines } from "./lay-form.js";
import type { HullProblem } from "./problem.js";

/** How many figures to measure next are told. */
const told = 6;

/** A laid form with what is wrong with its measurements, and what to measure next. */
export function planForm(
  { source, marks }: CompletePlan,
  laid: LaidForm | undefined,
): FormFigures | undefined {
  const { craft } = source;
  if (laid === undefined) return undefined;
  switch (craft.form?.kind) {
    case undefined:
    case "offsets":
      return { ...laid, next: [] };
    case "survey":
      return ofSurvey(craft.form, laid, marks.formSpreadM);
    case "starting form": {
      const bent = bentBy(craft.form, craft);
      return {
        ...laid,
        next: bent ? nextForStarting(craft.form.shape, bent.scale, bent.measured, told) : [],
      };
    }
  }
}

function ofSurvey(given: SurveyForm, laid: LaidForm, sigmaM: number): FormFigures {
  // stations out of order would make nonsense of fairness
  if (laid.form === undefined) return { ...laid, next: [] };
  const survey = { ...measuredLines(given), sigmaM };
  return {
    ...laid,
    next: nextOf(survey),
    problems: [...laid.problems, ...unfairIn(survey), ...checkProblems(laid.form, given.checks, sigmaM)],
  };
}

function nextOf(survey: TapeSurvey): NextMeasurement[] {
  const measured = (list: readonly (number | undefined)[]) =>
    list.filter((one) => one !== undefined).length >= 2;
  return survey.lines.some((line) => measured(line.heightsM)) ? nextMeasurements(survey, told) : [];
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
