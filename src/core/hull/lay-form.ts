import type { OffsetsForm, StartingForm, SurveyForm } from "../plan/model/form.js";
import type { Craft } from "../plan/model/plan.js";
import type { LaidForm } from "./figures.js";
import { formFrom } from "./form/form.js";
import { type OffsetNotation, parseOffsets } from "./form/offsets.js";
import { type FormMeasurement, isOpen, type Scale, startingLines } from "./form/starting-form.js";
import { formOfTape, type MeasuredLines } from "./form/survey.js";
import type { HullProblem } from "./problem.js";

/** The form that a plan describes; undefined where it describes none. */
export function layForm(craft: Craft): LaidForm | undefined {
  const { form } = craft;
  switch (form?.kind) {
    case undefined:
      return undefined;
    case "survey":
      return { source: "survey", open: form.open, ...formOfTape(measuredLines(form)) };
    case "offsets":
      return fromOffsets(form);
    case "starting form":
      return fromStarting(form, craft);
  }
}

/** What the tape said, as the form is made of it. */
export function measuredLines({ stationsM, lines }: SurveyForm): MeasuredLines {
  return {
    stationsM,
    lines: lines.map(({ name, corner, above, halfBreadthsM, heightsM }) => ({
      name,
      knuckle: corner,
      above,
      heightsM,
      ...(halfBreadthsM === undefined ? {} : { halfBreadthsM }),
    })),
  };
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

function fromOffsets(given: OffsetsForm): LaidForm {
  const { lines, problems } = parseOffsets(given.text, offsetNotation(given.numbers));
  const about = { source: "offsets", open: given.open } as const;
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

/** A starting form's size, and what bends it. */
interface Bent {
  readonly scale: Scale;
  /** Figures of places on the boat, each once. */
  readonly measured: readonly FormMeasurement[];
}

/** @returns undefined while the boat has no length or no beam. */
export function bentBy({ measured, depthM }: StartingForm, { lengthM, beamM }: Craft): Bent | undefined {
  if (lengthM === undefined || beamM === undefined || !(lengthM > 0 && beamM > 0)) return undefined;
  const figures = measured
    .filter(({ atM }) => atM >= 0 && atM <= lengthM)
    .flatMap(({ line, atM, halfBreadthM, heightM }): FormMeasurement[] => [
      ...(halfBreadthM === undefined
        ? []
        : [{ line, atM, coordinate: "half-breadth" as const, valueM: halfBreadthM }]),
      ...(heightM === undefined ? [] : [{ line, atM, coordinate: "height" as const, valueM: heightM }]),
    ]);
  const once = figures.filter(
    (one, i) =>
      figures.findIndex(
        (other) => other.line === one.line && other.coordinate === one.coordinate && other.atM === one.atM,
      ) === i,
  );
  return { scale: { lengthM, beamM, depthM }, measured: once };
}

function fromStarting(given: StartingForm, craft: Craft): LaidForm {
  const about = { source: "starting form", open: given.open ?? isOpen(given.shape) } as const;
  const bent = bentBy(given, craft);
  if (bent === undefined) return { ...about, problems: [] };
  const { lengthM } = bent.scale;
  const built = formFrom(startingLines(given.shape, bent.scale, bent.measured));
  const beyond = given.measured.filter(({ atM }) => !(atM >= 0 && atM <= lengthM));
  return {
    ...about,
    ...(built.form === undefined ? {} : { form: built.form }),
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
