import { type ComponentType, useCallback, useMemo, useRef, useState } from "react";
import { boatLengthWords } from "../../../words/numbers.js";
import { usePlan, useShows } from "../../app/context.js";
import { useSelection } from "../../app/place.js";
import { useWordsOfBoat } from "../../words/boat.js";
import { broughtAboard, freeAmidships, inRow, mirror } from "./model/arrange.js";
import { stationWithin } from "./model/hull-at.js";
import { movedInView } from "./model/paper.js";
import type { BoatScene } from "./model/scene.js";
import type { BoatThing } from "./model/things.js";
import { RunFiguresProvider } from "./run-figures.js";
import { BoatSheet, type SheetHandle } from "./sheet/boat-sheet.js";
import { placeWords } from "./sheet/place-words.js";
import { FormNote } from "./tools/form-note.js";
import { LayerPanel } from "./tools/layer-panel.js";
import { MeasuresLine } from "./tools/measures-line.js";
import { SectionSlider } from "./tools/section-slider.js";
import { Toolbar } from "./tools/toolbar.js";
import { Unplaced } from "./tools/unplaced.js";
import { WhereList } from "./tools/where-list.js";
import { useDrag } from "./use-drag.js";
import { useLayers } from "./use-layers.js";
import { useScene } from "./use-scene.js";

interface BoatStage {
  readonly stage: "survey" | "gear" | "layout";
  /** What stands beside the drawing at this stage, in place of what has no place yet; it comes with its own view. */
  readonly beside?: ComponentType<{ readonly scene: BoatScene }>;
}

/** The boat to scale with everything on it: to look at, to move things about, to see what follows from it. */
export function BoatView({ stage, beside }: BoatStage) {
  const scene = useScene();
  const words = useWordsOfBoat();
  if (!scene) return <p className="hint">{words.shell.workingOut}</p>;
  return <Boat scene={scene} stage={stage} {...(beside && { beside })} />;
}

function Boat({ scene, stage, beside: Beside }: BoatStage & { readonly scene: BoatScene }) {
  const { boat: words, shell } = useWordsOfBoat();
  const { lengths, conductors, paper: paperSize } = useShows();
  const shows = useMemo(() => ({ lengths, conductors, paper: paperSize }), [lengths, conductors, paperSize]);
  const readOnly = usePlan((state) => state.readOnly !== undefined || !state.reading.ok);
  const [selected, select] = useSelection();
  const [said, setSaid] = useState("");
  const [several, setSeveral] = useState(false);
  const [marked, setMarked] = useState<ReadonlySet<string>>(new Set());
  const [cutAt, setCutAt] = useState<number>();
  const sheet = useRef<SheetHandle>(undefined);
  const paper = useRef<HTMLDivElement>(null);
  const hold = useCallback((handle: SheetHandle | undefined) => {
    sheet.current = handle;
  }, []);
  const hand = useDrag({
    scene,
    shows,
    put: ({ lead, at }, taken) =>
      setSaid(taken ? words.moved(lead.name, placeWords(at, shows, words)) : words.notMoved(lead.name)),
  });
  const choice = useLayers({ runs: stage !== "survey", zones: stage === "survey" });
  const { form } = scene.drawn;
  const selectedAt = selected === undefined ? undefined : scene.byName.get(selected)?.at;
  const sectionM = stationWithin(scene.drawn, cutAt ?? selectedAt?.[0] ?? (form.fromM + form.toM) / 2);
  const choose = (name: string | undefined) => {
    select(name);
    // the focus stays on the drawing: that something opened beside it is said
    if (name !== undefined) setSaid(shell.slipOf(name));
  };
  const toggleMark = (name: string) => {
    const next = new Set(marked);
    if (!next.delete(name)) next.add(name);
    setMarked(next);
    setSaid(words.markedCount(next.size));
  };
  const unplaced = scene.things.filter(({ at, index, kind }) => !at && index === 0 && kind !== "waypoint");
  const placePieces = (thing: BoatThing, at: readonly [number, number, number], heightKnown: boolean) => {
    const pieces = scene.things.filter(({ group }) => group === thing.group);
    const moves = broughtAboard(scene, pieces, at, heightKnown);
    const taken = hand.place(moves);
    const first = moves.get(thing.name);
    if (taken && first) {
      setSaid(words.moved(thing.name, placeWords(first, shows, words)));
      select(thing.name);
    } else setSaid(words.notMoved(thing.name));
  };
  const bring = (thing: BoatThing, clientX: number, clientY: number) => {
    const there = sheet.current?.placeAt(clientX, clientY);
    if (!there) return false;
    const { spot, view, paper } = there;
    const origin = paper.origins[view];
    const from = [view === "section" ? sectionM : 0, 0, 0] as const;
    const at = movedInView(view, from, [spot[0] - origin[0], spot[1] - origin[1]]);
    placePieces(thing, at, view !== "plan");
    return true;
  };
  const targets = targetsOf(scene, marked, selected);
  const onFace = targets.some(({ face }) => face !== undefined);
  const [row, over] =
    onFace || readOnly ? [] : [inRow(targets), targets.length > 0 ? mirror(targets) : undefined];
  const why = onFace ? words.onFaceRow : row ? undefined : over ? words.rowNeeds : words.mirrorNeeds;
  const title = useMemo(
    () => [
      words.lengthBoat(boatLengthWords(form.toM - form.fromM, shows), boatLengthWords(beamOf(scene), shows)),
      ...(scene.drawn.outline ? [words.outline] : []),
    ],
    [words, form, scene, shows],
  );
  return (
    <RunFiguresProvider scene={scene} choice={choice}>
      <div className="boat-view" data-stage={stage}>
        <h2 className="away">{words.drawing(scene.plan.source.name)}</h2>
        {scene.drawn.outline && <FormNote outline={scene.drawn.outline} />}
        <Toolbar
          zoom={() => sheet.current?.zoom}
          readOnly={readOnly}
          several={several}
          setSeveral={setSeveral}
          markedCount={marked.size}
          clearMarks={() => setMarked(new Set())}
          row={row && (() => void hand.place(row))}
          mirror={over && (() => void hand.place(over))}
          why={why}
        />
        <div className="boat-desk">
          <div className="boat-main">
            <div className="boat-paper" ref={paper} onPointerDown={hand.expect}>
              <BoatSheet
                scene={scene}
                shows={shows}
                layers={choice.shown}
                sectionM={sectionM}
                title={title}
                selected={selected}
                select={choose}
                marked={marked}
                several={several}
                toggleMark={toggleMark}
                hand={hand}
                hold={hold}
              />
              <MeasuresLine scene={scene} hand={hand} shows={shows} />
              <p className="away" role="status">
                {said}
              </p>
            </div>
            {scene.things.length === 0 && <p className="hint">{words.empty}</p>}
            <SectionSlider drawn={scene.drawn} xM={sectionM} setXM={setCutAt} shows={shows} />
            <LayerPanel choice={choice} scene={scene} ofRuns={stage !== "survey"} />
          </div>
          {Beside ? (
            <Beside scene={scene} />
          ) : (
            <Unplaced
              things={unplaced}
              readOnly={readOnly}
              selected={selected}
              select={select}
              bring={bring}
              placeAmidships={(thing) => {
                placePieces(thing, [freeAmidships(scene), 0, 0], false);
                showPaper(paper.current);
              }}
            />
          )}
        </div>
        <WhereList scene={scene} shows={shows} runsShown={choice.shown.runs} select={select} />
        <details>
          <summary>{words.keys}</summary>
          <p>{words.howTo}</p>
        </details>
      </div>
    </RunFiguresProvider>
  );
}

/** Where the drawing is out of sight, as on a phone, what was placed is shown. */
function showPaper(paper: HTMLElement | null): void {
  const box = paper?.getBoundingClientRect();
  if (box && (box.bottom < innerHeight * 0.3 || box.top > innerHeight * 0.5))
    paper?.scrollIntoView({ block: "start" });
}

/** What row and mirror act on: what is marked, else all pieces alike with the selected one. */
function targetsOf(
  scene: BoatScene,
  marked: ReadonlySet<string>,
  selected: string | undefined,
): readonly BoatThing[] {
  const chosen = scene.things.filter(({ name }) => marked.has(name));
  if (chosen.length > 0) return chosen;
  const of = selected === undefined ? undefined : (scene.byName.get(selected)?.group ?? selected);
  return scene.things.filter(({ group }) => group === of);
}

function beamOf({ drawn }: BoatScene): number {
  const sheer = drawn.form.lines.at(-1);
  return 2 * Math.max(0, ...(sheer?.points ?? []).map(([, y]) => Math.abs(y)));
}
