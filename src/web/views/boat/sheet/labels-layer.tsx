import { memo, useMemo } from "react";
import { useSame } from "../../../parts/use-same.js";
import { type Box, type SetLabel, setLabels, type WantedLabel } from "../model/labels.js";
import { boxOf, onPaper, type Paper, project, type ViewName } from "../model/paper.js";
import type { BoatThing } from "../model/things.js";
import { useRunFigures } from "../run-figures.js";
import { middleOf, unspoken } from "./path.js";
import type { RunWithCourse } from "./run-lines.js";

interface LabelsProps {
  readonly paper: Paper;
  readonly view: ViewName;
  readonly things: readonly BoatThing[];
  readonly runs: readonly RunWithCourse[];
  readonly pxPerMm: number;
  readonly selected: string | undefined;
  readonly moving: ReadonlySet<string> | undefined;
}

const weights: Readonly<Record<BoatThing["kind"], number>> = {
  battery: 5,
  panel: 5,
  box: 4,
  converter: 4,
  charger: 3,
  gear: 3,
  waypoint: 1,
};

/** Before the name of a run, to tell it from a thing; no name begins so. */
const runKey = "/ ";

/** Names beside the marks and figures beside the runs, where there is room for them. */
export const LabelsWithFigures = memo(function LabelsWithFigures(props: LabelsProps) {
  return <LabelsLayer {...props} figures={useRunFigures().labels} />;
});

/** Names beside the marks, and figures beside the runs where there are any, where there is room for them. */
export const LabelsLayer = memo(function LabelsLayer(
  props: LabelsProps & { figures?: ReadonlyMap<string, string> | undefined },
) {
  const { view, things, runs, figures, moving } = props;
  const byName = useMemo(() => new Map(things.map((thing) => [thing.name, thing])), [things]);
  // where they find room depends on how long they are, and not on what they say
  const letters = useSame(figures && new Map([...figures].map(([run, text]) => [run, text.length])));
  const labels = useRoom(props, letters);
  const spots = useMemo(
    () =>
      new Map(
        runs.map(({ run, course }) => [run.name, middleOf(course.map((point) => project(view, point)))]),
      ),
    [runs, view],
  );
  if (labels.length === 0) return null;
  return (
    <g className="labels" {...unspoken}>
      {labels.map((label) => {
        const { key } = label;
        const run = key.startsWith(runKey) ? key.slice(runKey.length) : undefined;
        const at = byName.get(key)?.at;
        const spot = run === undefined ? at && project(view, at) : spots.get(run);
        if (!spot || moving?.has(key)) return null;
        const text = run === undefined ? key : figures?.get(run);
        return <Label key={key} label={label} x={spot[0]} y={spot[1]} run={run} text={text ?? ""} />;
      })}
    </g>
  );
});

const Label = memo(function Label(props: {
  label: SetLabel;
  x: number;
  y: number;
  run: string | undefined;
  text: string;
}) {
  const { label, x, y, run, text } = props;
  return (
    <g transform={`translate(${x} ${y})`}>
      <text
        className={run === undefined ? "still" : "still run-label"}
        data-run-label={run}
        x={label.dx}
        y={label.dy}
        textAnchor={label.anchor}
      >
        {text}
      </text>
    </g>
  );
});

/** Finds the labels their room. @param letters How long the figures of the runs are. */
function useRoom(
  { paper, view, things, runs, pxPerMm, selected }: LabelsProps,
  letters: ReadonlyMap<string, number> | undefined,
): readonly SetLabel[] {
  return useMemo(() => {
    const wanted = things.flatMap((thing): WantedLabel[] => {
      if (!thing.at) return [];
      const [x, y] = onPaper(paper, view, thing.at);
      const { name, kind } = thing;
      const weight = name === selected ? 9 : weights[kind];
      return [{ key: name, letters: name.length, x: x * pxPerMm, y: y * pxPerMm, clearPx: 9, weight }];
    });
    const origin = paper.origins[view];
    for (const { run, course } of letters ? runs : []) {
      const long = letters?.get(run.name);
      const at = middleOf(course.map((point) => project(view, point)));
      if (long === undefined || !at) continue;
      const [x, y] = [(origin[0] + at[0]) * pxPerMm, (origin[1] + at[1]) * pxPerMm];
      wanted.push({ key: `${runKey}${run.name}`, letters: long, x, y, clearPx: 2, weight: 7 });
    }
    // a small sheet holds few words; zooming in makes room for more
    const most = Math.max(6, Math.round((paper.widthMm * pxPerMm) / 45));
    const { within, title } = roomOf(paper, view, pxPerMm);
    return setLabels(wanted, within, [title], most);
  }, [things, runs, letters, paper, view, pxPerMm, selected]);
}

/** The part of the sheet that a view has for labels, and where its title stands [px]. */
function roomOf(
  paper: Paper,
  view: ViewName,
  pxPerMm: number,
): { readonly within: Box; readonly title: Box } {
  const { middle, half } = boxOf(paper, view);
  const room = paper.gapMm / 2;
  const within = {
    left: view === "section" && paper.beside ? (middle[0] - half[0] - room) * pxPerMm : 0,
    right:
      view === "section" || !paper.beside
        ? paper.widthMm * pxPerMm
        : (middle[0] + half[0] + room * 1.6) * pxPerMm,
    top: (middle[1] - half[1] - room) * pxPerMm,
    bottom: (middle[1] + half[1] + room) * pxPerMm,
  };
  const titleTop = (middle[1] - half[1]) * pxPerMm;
  const titleLeft = (view === "section" ? middle[0] : middle[0] - half[0]) * pxPerMm;
  const [before, after] = view === "section" ? [75, 75] : [0, 50];
  return {
    within,
    title: {
      left: titleLeft - before,
      right: titleLeft + after,
      top: titleTop - 34,
      bottom: titleTop - 6,
    },
  };
}
