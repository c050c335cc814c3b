import { useMemo } from "react";
import { formFrom } from "../../../core/hull/form/form.js";
import { lineAt } from "../../../core/hull/form/line.js";
import { sectionAt } from "../../../core/hull/form/section.js";
import { startingLines } from "../../../core/hull/form/starting-form.js";
import type { Edit } from "../../../core/plan/edits/edit.js";
import { readQuantity } from "../../../core/quantity/read.js";
import { stationHeightMm, stationView } from "../../../drawing/hull/station-view.js";
import { surveyHeightMm, surveyView } from "../../../drawing/hull/survey-view.js";
import { surveyWords } from "../../../words/hull-words.js";
import { usePlan, useShows } from "../../app/context.js";
import { AddThing } from "../../parts/add-thing.js";
import { useWordsOfTape } from "../../words/tape.js";
import { lengthText } from "../boat/model/length-text.js";
import type { BoatScene } from "../boat/model/scene.js";
import { HerMeasures } from "../boat/survey/her-measures.js";
import { Drawing, widthMm } from "./drawing.js";
import { roundStations } from "./table.js";

/** A boat of nobody's, to show where the tape goes [m]. */
const shown = { lengthM: 4.4, beamM: 1.7, depthM: 0.7 } as const;

/** For one who has no form yet: how to measure, and two ways to begin. */
export function Begin({ scene }: { scene: BoatScene }) {
  const { tape } = useWordsOfTape();
  const shows = useShows();
  const { lengthM } = scene.plan.source.craft;
  return (
    <>
      <section className="tape-begin">
        <h3>{tape.begin}</h3>
        <div className="tape-pictures">
          <WhereToHold />
        </div>
        <ol>
          {tape.beginSteps.map((step) => (
            <li key={step}>{step}</li>
          ))}
        </ol>
        {lengthM !== undefined && (
          <p>
            {tape.stationsFor(roundStations(lengthM, shows).map((stationM) => surveyWords(stationM, shows)))}
          </p>
        )}
      </section>
      <section className="tape-shape">
        <h3>{tape.beginShape}</h3>
        <p className="hint">{tape.beginShapeHint}</p>
        <HerMeasures scene={scene} />
      </section>
      {scene.plan.source.craft.form === undefined && <EmptyTable scene={scene} />}
    </>
  );
}

function WhereToHold() {
  const { tape } = useWordsOfTape();
  const shows = useShows();
  const drawn = useMemo(() => {
    const { form } = formFrom(startingLines("vee-bottomed utility", shown));
    if (form === undefined) return undefined;
    const stations = roundStations(shown.lengthM, shows);
    const xM = stations[Math.floor(stations.length / 2)] ?? 0;
    const points = form.lines.map((line) => {
      const [, y, z] = lineAt(line, xM);
      return { line: line.name, half: { valueM: y, measured: true }, height: { valueM: z, measured: true } };
    });
    const highM = Math.max(...form.lines.flatMap((line) => line.points.map(([, , z]) => z)));
    const picture = { section: sectionAt(form, xM), points, halfM: shown.beamM / 2, lowM: 0, highM };
    const words = {
      centreline: tape.centreline,
      baseLine: tape.baseLine,
      length: (valueM: number) => surveyWords(valueM, shows),
    };
    const high = stationHeightMm(picture, widthMm, 64);
    const room = { left: 0, bottom: 0, widthMm, heightMm: high };
    const figures = { source: "starting form", open: true, problems: [], form } as const;
    const longMm = surveyHeightMm(form, widthMm, 60);
    return {
      section: stationView({ ...picture, now: { line: "chine", coordinate: "half-breadth" } }, words, room),
      boat: surveyView(figures, stations, () => false, { ...room, heightMm: longMm }, { xM, line: "chine" }),
    };
  }, [tape, shows]);
  if (drawn === undefined) return null;
  return (
    <>
      <Drawing shapes={drawn.section} label={tape.beginDrawing} />
      <Drawing shapes={drawn.boat} label={tape.beginStations} />
    </>
  );
}

/** Lines of an empty table from the keel up: which bend round to the next, and which are corners. */
const sections = {
  vee: [
    ["keel", true, "flat"],
    ["chine", true, "flat"],
    ["sheer", true, "flat"],
  ],
  round: [
    ["keel", false, "round"],
    ["bilge", false, "round"],
    ["topside", false, "round"],
    ["sheer", true, "flat"],
  ],
  plain: [
    ["keel", true, "flat"],
    ["sheer", true, "flat"],
  ],
} as const;
const sectionIds = Object.keys(sections) as (keyof typeof sections)[];

function EmptyTable({ scene }: { scene: BoatScene }) {
  const { tape } = useWordsOfTape();
  const { survey } = useWordsOfTape();
  const shows = useShows();
  const readOnly = usePlan((state) => state.readOnly !== undefined);
  const { lengthM } = scene.plan.source.craft;
  if (readOnly) return null;
  const edits = (answers: Readonly<Record<string, string>>): Edit[] => {
    const read = readQuantity(answers.length ?? "", "length");
    const kind = sectionIds.find((id) => id === answers.section) ?? "vee";
    const count = Math.max(2, Number(answers.count));
    if (!read.ok) return [];
    const whole = read.value.value;
    const stations = Array.from({ length: count }, (_, i) =>
      surveyWords((whole * i) / (count - 1), shows).replaceAll("\u00a0", " "),
    );
    const none = `[${stations.map(() => "none").join(", ")}]`;
    const lines = sections[kind].map(([name, corner, above], index) => {
      const keys = [
        ...(index === 0 ? [] : [`half-breadths: ${none}`]),
        `heights: ${none}`,
        ...(above === "round" ? ["above: round"] : []),
        ...(corner ? [] : ["corner: false"]),
      ];
      return `${name}: {${keys.join(", ")}}`;
    });
    const form = `{stations: [${stations.join(", ")}], lines: {${lines.join(", ")}}}`;
    return [
      ...(lengthM === undefined
        ? [{ edit: "set field", at: "craft", field: "length", to: answers.length ?? "" } as const]
        : []),
      { edit: "set field", at: "craft", field: "form", to: form },
    ];
  };
  return (
    <section className="tape-empty">
      <h3>{tape.beginTable}</h3>
      <p className="hint">{tape.beginTableHint}</p>
      <AddThing
        title={tape.beginAdd}
        asks={[
          {
            key: "length",
            label: survey.length,
            as: "length",
            start: lengthM === undefined ? "" : lengthText(lengthM, shows),
          },
          { key: "count", label: tape.countStations, as: "whole", start: "9" },
          {
            key: "section",
            label: tape.section,
            wide: true,
            as: sectionIds.map((id) => [id, tape.sections[id]] as const),
          },
        ]}
        edits={edits}
      />
    </section>
  );
}
