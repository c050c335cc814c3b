import { memo, useMemo } from "react";
import type { Shows } from "../../../../core/plan/model/plan.js";
import { lengthWords } from "../../../../words/numbers.js";
import { useWordsOfBoat } from "../../../words/boat.js";
import type { Paper, ViewName } from "../model/paper.js";
import { courseOf } from "../model/runs.js";
import type { BoatScene } from "../model/scene.js";
import type { BoatThing } from "../model/things.js";
import type { ShownLayers } from "../use-layers.js";
import { useStillWater } from "../use-still-water.js";
import { FeatureMarks } from "./feature-marks.js";
import { HullLines, SectionLines } from "./hull-lines.js";
import { LabelsLayer, LabelsWithFigures } from "./labels-layer.js";
import { asNothing } from "./path.js";
import { thingWords } from "./place-words.js";
import { RunLines } from "./run-lines.js";
import { scaleTicks, stationsOf } from "./stations.js";
import { ThingMark } from "./thing-mark.js";
import { ViewFrame } from "./view-frame.js";
import { WaterLines } from "./water-lines.js";

interface SheetViewProps {
  readonly scene: BoatScene;
  readonly shows: Shows;
  readonly layers: ShownLayers;
  readonly sectionM: number;
  readonly selected: string | undefined;
  readonly marked: ReadonlySet<string>;
  readonly paper: Paper;
  readonly view: ViewName;
  readonly near: { readonly xM: number; readonly withinM: number };
  readonly placed: readonly BoatThing[];
  readonly pxPerMm: number;
  /** Of the three views one tells a screen reader of the things in it: that one is in. */
  readonly told: boolean;
  /** The thing that the tab key reaches, if it is in this view. */
  readonly reached: string | undefined;
  /** What is in the hand: it stays behind as a ghost while the layer above shows where it is. */
  readonly moving: ReadonlySet<string> | undefined;
}

/** One of the three views, at its place on the sheet. */
export const SheetView = memo(function SheetView(props: SheetViewProps) {
  const { scene, paper, view, near, layers, shows, selected, marked, moving, placed, sectionM } = props;
  const words = useWordsOfBoat().boat;
  const [x, y] = paper.origins[view];
  const { craft } = scene.plan.source;
  const stations = useMemo(() => stationsOf(craft.form, paper), [craft.form, paper]);
  const ticks = useMemo(() => scaleTicks(paper, shows), [paper, shows]);
  const things = useMemo(
    () =>
      view === "section"
        ? placed.filter(({ at }) => at !== undefined && Math.abs(at[0] - near.xM) <= near.withinM)
        : placed,
    [placed, view, near],
  );
  const title =
    view === "section" ? words.viewTitle.section(lengthWords(sectionM, shows)) : words.viewTitle[view];
  const water = useStillWater();
  const runs = useMemo(
    () =>
      scene.runs.drawn.map((run) => ({
        run,
        course: courseOf(run, (name) => scene.byName.get(name)?.at),
      })),
    [scene],
  );
  // figures of the runs stand beside them in one view only
  const Labels = view === "plan" ? LabelsWithFigures : LabelsLayer;
  return (
    <g {...asNothing} transform={`translate(${x} ${y})`} className={`view view-${view}`}>
      <ViewFrame paper={paper} view={view} title={title} ticks={ticks} sectionM={sectionM} />
      {view === "section" ? (
        <SectionLines drawn={scene.drawn} xM={sectionM} stationsM={stations} />
      ) : (
        <HullLines drawn={scene.drawn} paper={paper} view={view} stationsM={stations} />
      )}
      {layers.zones && (
        <FeatureMarks features={scene.features} view={view} {...(view === "section" ? { near } : {})} />
      )}
      {layers.water && typeof water === "object" && (
        <WaterLines drawn={scene.drawn} plane={water} paper={paper} view={view} sectionM={sectionM} />
      )}
      {layers.runs && view !== "section" && (
        <RunLines runs={runs} view={view} selected={selected} moving={moving} />
      )}
      {things.map((thing) => {
        const here = thing.at;
        return (
          here && (
            <ThingMark
              key={thing.name}
              thing={thing}
              at={here}
              view={view}
              label={props.told ? thingWords(thing, here, shows, words) : ""}
              selected={thing.name === selected}
              marked={marked.has(thing.name)}
              reached={thing.name === props.reached}
              moving={moving?.has(thing.name) ?? false}
            />
          )
        );
      })}
      <Labels
        paper={paper}
        view={view}
        things={layers.names ? things : none}
        runs={layers.runs ? runs : none}
        pxPerMm={props.pxPerMm}
        selected={selected}
        moving={moving}
      />
    </g>
  );
});

const none: readonly never[] = [];
