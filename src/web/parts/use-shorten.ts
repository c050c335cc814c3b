import { useMemo } from "react";
import type { Weight } from "../../drawing/shapes.js";

export type Shorten = (words: string, roomMm: number, sizeMm: number, weight?: Weight) => string;

const measuredPx = 32;

/** Shortens words to a room, as the type of this browser runs; the whole words belong in a title beside. */
export function useShorten(): Shorten {
  return useMemo(() => {
    const ink = document.createElement("canvas").getContext("2d");
    const face = getComputedStyle(document.body).fontFamily;
    const known = new Map<string, string>();
    const widthMm = (words: string, sizeMm: number) =>
      ink ? (ink.measureText(words).width * sizeMm) / measuredPx : words.length * sizeMm * 0.55;
    return (words, roomMm, sizeMm, weight = "regular") => {
      const key = `${weight} ${sizeMm} ${roomMm} ${words}`;
      const before = known.get(key);
      if (before !== undefined) return before;
      if (ink) ink.font = `${weight === "semibold" ? 600 : 400} ${measuredPx}px ${face}`;
      const shown = shortened(words, (part) => widthMm(part, sizeMm) <= roomMm);
      known.set(key, shown);
      return shown;
    };
  }, []);
}

function shortened(words: string, fits: (part: string) => boolean): string {
  if (fits(words)) return words;
  const signs = Array.from(words);
  let [least, most] = [0, signs.length];
  while (least < most) {
    const middle = Math.ceil((least + most) / 2);
    if (fits(`${signs.slice(0, middle).join("")}…`)) least = middle;
    else most = middle - 1;
  }
  return `${signs.slice(0, least).join("").trimEnd()}…`;
}
