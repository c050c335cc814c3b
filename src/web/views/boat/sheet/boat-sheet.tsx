import { type KeyboardEvent, useCallback, useEffect, useId, useMemo, useRef, useState } from "react";
import type { Shows } from "../../../../core/plan/model/plan.js";
import { useWordsOfBoat } from "../../../words/boat.js";
import type { Hand } from "../hand.js";
import {
  onPaper,
  type Paper,
  paperOf,
  type Spot2,
  type ViewName,
  viewAt,
  viewNames,
} from "../model/paper.js";
import { type BoatScene, placeIn } from "../model/scene.js";
import type { BoatThing } from "../model/things.js";
import { useNamesInHand } from "../use-drag.js";
import { useGestures } from "../use-gestures.js";
import type { ShownLayers } from "../use-layers.js";
import { DragLayer } from "./drag-layer.js";
import { wishOf } from "./keys.js";
import { asChoices, asNothing } from "./path.js";
import { SheetView } from "./sheet-view.js";
import { TitleBlock } from "./title-block.js";
import { useWindow } from "./use-window.js";
import { Zoom } from "./zoom.js";

/** What the sheet tells and is told. */
export interface SheetProps {
  readonly scene: BoatScene;
  readonly shows: Shows;
  readonly layers: ShownLayers;
  readonly sectionM: number;
  /** Lines under her name in the corner of the sheet. */
  readonly title: readonly string[];
  readonly selected: string | undefined;
  readonly select: (name: string | undefined) => void;
  readonly marked: ReadonlySet<string>;
  /** Taps mark instead of selecting. */
  readonly several: boolean;
  readonly toggleMark: (name: string) => void;
  readonly hand: Hand;
  /** So that the tools can zoom, and things can be brought in from beside the sheet. */
  readonly hold: (handle: SheetHandle | undefined) => void;
}

export interface SheetHandle {
  readonly zoom: Zoom;
  /** The place of the boat under a place of the screen, and the view it is in; undefined beside the sheet. */
  readonly placeAt: (
    clientX: number,
    clientY: number,
  ) => { readonly spot: Spot2; readonly view: ViewName; readonly paper: Paper } | undefined;
}

/** So near holds on [px]. */
const snapPx = 8;

/** The boat to scale: profile over plan, and a section. */
export function BoatSheet(props: SheetProps) {
  const { scene, shows, selected, select, marked, several, toggleMark, hand, hold } = props;
  const words = useWordsOfBoat().boat;
  const svg = useRef<SVGSVGElement>(null);
  const helpId = useId();
  const size = useWindow(svg);
  const paper = useMemo(() => paperOf(scene.drawn, size.beside), [scene.drawn, size.beside]);
  const [pxPerMm, setPxPerMm] = useState(1);
  const [zoom] = useState(() => new Zoom(() => setPxPerMm(zoom.lie.pxPerMm)));
  const [reached, setReached] = useState<{ readonly name: string; readonly view: ViewName }>();
  useEffect(() => {
    if (size.widthPx === 0) return;
    zoom.fitTo([size.widthPx, size.heightOf(paper)], [paper.widthMm, paper.heightMm]);
    setPxPerMm(zoom.lie.pxPerMm);
  }, [zoom, size, paper]);
  useEffect(() => () => zoom.stop(), [zoom]);
  useEffect(() => {
    hold({
      zoom,
      placeAt: (clientX, clientY) => {
        const box = svg.current?.getBoundingClientRect();
        if (!box || clientX < box.left || clientX > box.right || clientY < box.top || clientY > box.bottom)
          return undefined;
        const spot = zoom.toSheet([clientX - box.left, clientY - box.top]);
        return { spot, view: viewAt(paper, spot), paper };
      },
    });
    return () => hold(undefined);
  }, [hold, zoom, paper]);

  const placed = useMemo(() => scene.things.filter(({ at }) => at !== undefined), [scene]);
  const markedThings = placed.filter(({ name }) => marked.has(name));
  const near = useMemo(
    () => ({ xM: props.sectionM, withinM: Math.max(0.25, (paper.reach.toM - paper.reach.fromM) / 10) }),
    [props.sectionM, paper],
  );
  const inHand = useNamesInHand(hand);
  const moving = useMemo(() => (inHand === undefined ? undefined : new Set(inHand.split("\n"))), [inHand]);
  const shownIn = useCallback(
    (view: ViewName, { at }: BoatThing) =>
      view !== "section" || (at !== undefined && Math.abs(at[0] - near.xM) <= near.withinM),
    [near],
  );
  const focusOn = (name: string, view: ViewName) =>
    svg.current
      ?.querySelector<SVGGElement>(`[data-thing=${CSS.escape(name)}][data-view=${view}]`)
      ?.focus({ preventScroll: true });

  useGestures(svg, zoom, {
    thingAt: (spotPx, withinPx) => {
      let best: { name: string; view: ViewName } | undefined;
      let least = withinPx;
      for (const view of viewNames)
        for (const thing of placed) {
          const at = shownIn(view, thing) ? placeIn(scene, hand.now()?.moves, thing.name) : undefined;
          if (!at) continue;
          const [x, y] = zoom.toWindow(onPaper(paper, view, at));
          // of two at one place the selected one comes first
          const off = Math.hypot(x - spotPx[0], y - spotPx[1]) - (thing.name === selected ? 4 : 0);
          if (off < least) [best, least] = [{ name: thing.name, view }, off];
        }
      return best;
    },
    held: (name) => name === selected || marked.has(name),
    take: (name, view) => {
      const thing = scene.byName.get(name);
      return thing !== undefined && hand.start(thing, asView(view), markedThings);
    },
    move: ([x, y], free) =>
      hand.move([x / zoom.lie.pxPerMm, y / zoom.lie.pxPerMm], free ? 0 : snapPx / zoom.lie.pxPerMm / 1000),
    drop: hand.drop,
    cancel: hand.cancel,
    tap: (name, view, more) => {
      if (name === undefined) return;
      setReached({ name, view: asView(view) });
      // in another view it takes the focus only once it is the one that is told of
      requestAnimationFrame(() => focusOn(name, asView(view)));
      if (several || more) toggleMark(name);
      else select(name);
    },
  });

  const order = placed;
  const here =
    order.find(({ name }) => name === (reached?.name ?? selected)) ??
    order.find(({ name }) => name === selected) ??
    order[0];
  const view: ViewName = reached?.view ?? "plan";
  const hereView = here && !shownIn(view, here) ? "plan" : view;
  const onKeyDown = (event: KeyboardEvent) => {
    const wish = wishOf(event, shows);
    if (!wish) return;
    event.preventDefault();
    if (wish.do === "zoom in") zoom.by(1.4);
    else if (wish.do === "zoom out") zoom.by(1 / 1.4);
    else if (wish.do === "whole boat") zoom.whole();
    else if (wish.do === "let go") {
      if (hand.now()) hand.cancel();
      else select(undefined);
    } else if (here && wish.do === "nudge") hand.nudge(here, hereView, wish.byMm, markedThings);
    else if (here && wish.do === "select") select(here.name);
    else if (here && wish.do === "mark") toggleMark(here.name);
    else if (wish.do === "go") {
      const at = here ? order.indexOf(here) : -1;
      const next = order[(at + wish.step + order.length) % order.length];
      if (!next?.at) return;
      const nextView = shownIn(hereView, next) ? hereView : "plan";
      setReached({ name: next.name, view: nextView });
      zoom.show(onPaper(paper, nextView, next.at));
      requestAnimationFrame(() => focusOn(next.name, nextView));
    }
  };

  return (
    <>
      <p id={helpId} className="away">
        {words.howTo}
      </p>
      <svg
        ref={svg}
        className="boat-sheet"
        {...asChoices}
        aria-label={words.drawing(scene.plan.source.name)}
        aria-describedby={helpId}
        data-keeps-focus=""
        style={{ height: size.heightOf(paper) }}
        onKeyDown={onKeyDown}
        onFocus={({ target }) => {
          const { thing, view: seenIn } = target instanceof SVGElement ? target.dataset : {};
          if (thing !== undefined && thing !== here?.name) setReached({ name: thing, view: asView(seenIn) });
        }}
      >
        <g ref={zoom.hold} {...asNothing}>
          <TitleBlock paper={paper} name={scene.plan.source.name} lines={props.title} />
          {viewNames.map((one) => (
            <SheetView
              key={one}
              scene={scene}
              shows={shows}
              layers={props.layers}
              sectionM={props.sectionM}
              selected={selected}
              marked={marked}
              paper={paper}
              view={one}
              near={near}
              placed={placed}
              pxPerMm={pxPerMm}
              told={hereView === one}
              reached={here && hereView === one ? here.name : undefined}
              moving={moving}
            />
          ))}
        </g>
      </svg>
      <DragLayer
        scene={scene}
        shows={shows}
        runsShown={props.layers.runs}
        paper={paper}
        hand={hand}
        zoom={zoom}
      />
    </>
  );
}

const asView = (view: string | undefined): ViewName => viewNames.find((one) => one === view) ?? "plan";
