import { type RefObject, useEffect, useRef, useState } from "react";
import { useShows } from "../../app/context.js";
import { useShorten } from "../../parts/use-shorten.js";
import { useWordsOfCircuits } from "../../words/circuits.js";
import { Frames } from "./frames.js";
import { RunWords } from "./run-words.js";
import { NarrowSpot, WideSpot } from "./spot-view.js";
import { selectionOf, spoken } from "./spot-words.js";
import type { MapPicture } from "./use-map.js";
import { onMapKey } from "./use-map-keys.js";
import { showAboveSlip, useHands, useSteady } from "./use-window.js";
import { Wires } from "./wires.js";

/** The map as a tree one moves in: pan with the fingers or the mouse, choose with a tap or with Enter. */
export function MapView(props: {
  picture: MapPicture;
  pxOfMm: number;
  scroller: RefObject<HTMLDivElement | null>;
  selected: string | undefined;
  select: (name: string | undefined) => void;
  zoom: (how: "larger" | "smaller" | "fit" | number) => void;
}) {
  const { picture, pxOfMm, scroller, selected, select, zoom } = props;
  const { map } = picture;
  const words = useWordsOfCircuits();
  const shows = useShows();
  const shorten = useShorten();
  const drawing = useRef<SVGSVGElement>(null);
  const [hereId, setHere] = useState<string>();
  const found = map.spots.findIndex(({ id }) => id === hereId);
  const chosen = map.spots.findIndex(({ node }) => node.kind !== "reference" && node.name === selected);
  const here = Math.max(found >= 0 ? found : chosen, 0);
  useHands(scroller, zoom);
  useSteady(scroller, map, pxOfMm, map.spots[chosen]?.id);
  useTaps(drawing, select, setHere);
  useEffect(() => {
    if (chosen < 0) return;
    const spot = drawing.current?.querySelector(`[data-spot="${chosen}"]`);
    if (spot && map.shape === "narrow") showAboveSlip(spot);
    else spot?.scrollIntoView({ block: "nearest", inline: "nearest" });
  }, [chosen, map.shape]);
  const go = (index: number) => {
    setHere(map.spots[index]?.id);
    drawing.current?.querySelector<SVGGElement>(`[data-spot="${index}"]`)?.focus();
  };
  const take = (index: number) => {
    const spot = map.spots[index];
    if (spot) select(selectionOf(spot.node));
  };
  const letGo = () => select(undefined);
  const Spot = map.shape === "wide" ? WideSpot : NarrowSpot;
  const { widthMm, heightMm } = map;
  return (
    <div className="map-window" data-shape={map.shape} ref={scroller}>
      <svg
        ref={drawing}
        className="map"
        {...treeRole}
        aria-label={words.circuits.map}
        aria-describedby="map-hint"
        viewBox={`0 0 ${widthMm} ${heightMm}`}
        style={{ width: widthMm * pxOfMm, height: heightMm * pxOfMm }}
        onKeyDown={(event) => onMapKey(event, { map, here, go, take, letGo, zoom })}
      >
        <Frames map={map} />
        <Wires map={map} traced={picture.traced} />
        {map.shape === "wide" &&
          map.spots.map((spot, index) => (
            <RunWords key={spot.id} spot={spot} at={picture.at[index] ?? nothing} shorten={shorten} />
          ))}
        {map.spots.map((spot, index) => {
          const at = picture.at[index] ?? nothing;
          const level = picture.levels[index];
          const label = spoken(spot.node, at, words, shows);
          const finding = level && `, ${words.circuits.withFinding(words.findings.levels[level].name)}`;
          return (
            <g
              key={spot.id}
              className="spot"
              role="treeitem"
              aria-level={spot.depth + 1}
              aria-selected={selectionOf(spot.node) === selected}
              tabIndex={index === here ? 0 : -1}
              data-spot={index}
              data-name={selectionOf(spot.node)}
              data-lit={picture.traced[index]?.out === true || picture.traced[index]?.back === true}
              transform={`translate(${spot.x} ${spot.down})`}
              onFocus={() => setHere(spot.id)}
            >
              {/* its name; a label beside it would make this a description too, and all be read out twice */}
              <title>{`${label}${finding ?? ""}`}</title>
              <rect className="spot-edge" x={-1} y={-6.5} width={spot.widthMm} height={13} rx={0.8} />
              <Spot
                spot={spot}
                at={at}
                role={picture.roles[index] ?? "other"}
                level={level}
                shorten={shorten}
              />
            </g>
          );
        })}
      </svg>
    </div>
  );
}

const treeRole = { role: "tree" } as const;
const nothing = { devices: [] } as const;

/** A tap on a thing or on the words of a run chooses it; on bare paper it lets go. */
function useTaps(
  drawing: RefObject<SVGSVGElement | null>,
  select: (name: string | undefined) => void,
  onSpot: (id: string | undefined) => void,
): void {
  const hands = useRef({ select, onSpot });
  hands.current = { select, onSpot };
  useEffect(() => {
    const { current } = drawing;
    const tap = (event: MouseEvent) => {
      if (!(event.target instanceof Element)) return;
      const run = event.target.closest<SVGElement>("[data-run]")?.dataset.run;
      const spot = event.target.closest<SVGElement>("[data-name]");
      if (spot) spot.focus({ preventScroll: true });
      hands.current.select(spot?.dataset.name ?? run);
    };
    current?.addEventListener("click", tap);
    return () => current?.removeEventListener("click", tap);
  }, [drawing]);
}
