import type { KeyboardEvent } from "react";
import type { CircuitMap } from "../../../drawing/circuit-map/lay-out.js";

interface MapHands {
  readonly map: CircuitMap;
  readonly here: number;
  readonly go: (index: number) => void;
  readonly take: (index: number) => void;
  readonly letGo: () => void;
  readonly zoom: (how: "larger" | "smaller" | "fit") => void;
}

const zooms = { "+": "larger", "=": "larger", "-": "smaller", "0": "fit" } as const;
const isZoom = (key: string): key is keyof typeof zooms => Object.hasOwn(zooms, key);

/** The keys of the map: along it, into it and out of it, to follow and to let go, larger and smaller. */
export function onMapKey(event: KeyboardEvent, { map, here, go, take, letGo, zoom }: MapHands): void {
  if (event.ctrlKey || event.metaKey || event.altKey) return;
  const { key } = event;
  if (isZoom(key)) zoom(zooms[key]);
  else if (key === "Enter" || key === " ") take(here);
  else if (key === "Escape") letGo();
  else {
    const to = step(map, here, key);
    if (to === undefined) return;
    go(to);
  }
  event.preventDefault();
}

function step({ spots }: CircuitMap, here: number, key: string): number | undefined {
  const last = spots.length - 1;
  switch (key) {
    case "ArrowDown":
      return Math.min(here + 1, last);
    case "ArrowUp":
      return Math.max(here - 1, 0);
    case "ArrowLeft":
      return Math.max(spots[here]?.parent ?? 0, 0);
    case "ArrowRight":
      return spots[here + 1]?.parent === here ? here + 1 : here;
    case "Home":
      return 0;
    case "End":
      return last;
    default:
      return undefined;
  }
}
