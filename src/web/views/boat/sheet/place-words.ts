import type { Point } from "../../../../core/hull/vector.js";
import type { Shows } from "../../../../core/plan/model/plan.js";
import { lengthWords } from "../../../../words/numbers.js";
import type { ScreenWords } from "../../../../words/screen/en.js";
import type { Snap } from "../model/snap.js";
import type { BoatThing } from "../model/things.js";

type BoatWords = ScreenWords["boat"];

/** Nearer the centreline than this is on it [m]. */
const centreM = 0.0005;

/** `620 mm forward, 120 mm to port, 60 mm up`. */
export function placeWords(at: Point, shows: Shows, words: BoatWords): string {
  const [forward, toPort, up] = at;
  const length = (lengthM: number) => lengthWords(Math.abs(lengthM), shows);
  const off =
    Math.abs(toPort) < centreM
      ? words.centreline
      : toPort > 0
        ? words.port(length(toPort))
        : words.starboard(length(toPort));
  return [words.forward(lengthWords(forward, shows)), off, words.up(lengthWords(up, shows))].join(", ");
}

/** What a screen reader says of a thing in the drawing. */
export function thingWords(thing: BoatThing, at: Point, shows: Shows, words: BoatWords): string {
  const place = placeWords(at, shows, words);
  const on = thing.face ? `${place}, ${words.onFace(thing.face.name)}` : place;
  return words.label(thing.name, words.kinds[thing.kind], on);
}

export function snapWords({ to }: Snap, words: BoatWords): string {
  return to.what === "centreline" ? words.snap.centreline : words.snap[to.what](to.name);
}
