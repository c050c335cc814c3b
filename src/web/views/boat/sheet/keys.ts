import type { KeyboardEvent } from "react";
import type { Shows } from "../../../../core/plan/model/plan.js";
import { nudgeM } from "../model/length-text.js";
import type { Spot2 } from "../model/paper.js";

/** What a key asks of the drawing. */
export type KeyWish =
  | { readonly do: "nudge"; readonly byMm: Spot2 }
  | { readonly do: "go"; readonly step: 1 | -1 }
  | { readonly do: "select" | "mark" | "let go" | "zoom in" | "zoom out" | "whole boat" };

const arrows: Readonly<Record<string, Spot2>> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, -1],
  ArrowDown: [0, 1],
};

export function wishOf(event: KeyboardEvent, shows: Shows): KeyWish | undefined {
  if (event.ctrlKey || event.metaKey) return undefined;
  const arrow = arrows[event.key];
  if (arrow) {
    const mm = nudgeM(shows, event.shiftKey ? "far" : event.altKey ? "fine" : "plain") * 1000;
    return { do: "nudge", byMm: [arrow[0] * mm, arrow[1] * mm] };
  }
  switch (event.key) {
    // a screen reader may take the page keys for a page of text
    case "PageDown":
    case "n":
    case "N":
      return { do: "go", step: 1 };
    case "PageUp":
    case "p":
    case "P":
      return { do: "go", step: -1 };
    case "Enter":
    case " ":
      return { do: "select" };
    case "m":
    case "M":
      return { do: "mark" };
    case "Escape":
      return { do: "let go" };
    case "+":
    case "=":
      return { do: "zoom in" };
    case "-":
      return { do: "zoom out" };
    case "0":
      return { do: "whole boat" };
    default:
      return undefined;
  }
}
