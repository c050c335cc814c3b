import { useMemo } from "react";
import type { Shows } from "../../../../core/plan/model/plan.js";
import { lengthWords } from "../../../../words/numbers.js";
import { useWordsOfBoat } from "../../../words/boat.js";
import type { Drag } from "../drag.js";
import type { Hand } from "../hand.js";
import { type Paper, viewNames } from "../model/paper.js";
import { courseOf } from "../model/runs.js";
import { type BoatScene, placeIn } from "../model/scene.js";
import { useRunFigures } from "../run-figures.js";
import { useInHand } from "../use-drag.js";
import { DragLines } from "./drag-lines.js";
import { snapWords } from "./place-words.js";
import { RunLine } from "./run-lines.js";
import { ThingMark } from "./thing-mark.js";
import type { Zoom } from "./zoom.js";

interface LayerProps {
  readonly scene: BoatScene;
  readonly shows: Shows;
  readonly runsShown: boolean;
  readonly paper: Paper;
  readonly hand: Hand;
  readonly zoom: Zoom;
}

/** What is in the hand and what hangs on it, on a sheet of its own above the drawing, so that nothing below is drawn anew at each step. */
export function DragLayer({ hand, ...around }: LayerProps) {
  const drag = useInHand(hand);
  return drag && <Layer drag={drag} {...around} />;
}

function Layer(props: Omit<LayerProps, "hand"> & { drag: Drag }) {
  const { scene, shows, runsShown, paper, drag, zoom } = props;
  const words = useWordsOfBoat().boat;
  const { strengths, labels } = useRunFigures();
  const lead = drag.lead.name;
  const key = [...drag.moves.keys()].join("\n");
  const [things, runs] = useMemo(() => {
    const names = new Set(key.split("\n"));
    return [
      scene.things.filter(({ name }) => names.has(name)),
      scene.runs.drawn.filter(({ stops }) => stops.some((stop) => names.has(stop))),
    ];
  }, [scene, key]);
  const at = (name: string) => placeIn(scene, drag.moves, name);
  return (
    <svg className="boat-hand" aria-hidden="true">
      <g ref={zoom.hold}>
        {viewNames.map((view) => (
          <g
            key={view}
            transform={`translate(${paper.origins[view][0]} ${paper.origins[view][1]})`}
            className={`hand-${view}`}
          >
            {runsShown &&
              view !== "section" &&
              runs.map((run) => (
                <RunLine
                  key={run.name}
                  run={run}
                  course={courseOf(run, at)}
                  view={view}
                  selected={false}
                  strength={strengths?.get(run.name)}
                  label={view === "plan" ? labels?.get(run.name) : undefined}
                />
              ))}
            {things.map((thing) => {
              const here = at(thing.name);
              return (
                here && (
                  <ThingMark
                    key={thing.name}
                    thing={thing}
                    at={here}
                    view={view}
                    selected={thing.name === lead}
                    marked={false}
                    moving={false}
                  />
                )
              );
            })}
            {drag.view === view && (
              <DragLines
                at={drag.at}
                view={view}
                snaps={drag.snaps}
                paper={paper}
                sayLength={(lengthM) => lengthWords(lengthM, shows)}
                saySnap={(snap) => snapWords(snap, words)}
              />
            )}
          </g>
        ))}
      </g>
    </svg>
  );
}
