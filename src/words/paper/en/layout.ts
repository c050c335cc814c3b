import type { FaceName } from "../../../core/box/face.js";
import type { RouteCheck } from "../../../core/route/checks.js";
import { counted } from "../../numbers.js";
import { faceWords } from "../../template-words.js";

const checks: Readonly<Record<RouteCheck["check"], string>> = {
  bend: "room to bend",
  chafe: "its edge",
  opening: "width of the hole",
  "wet exhaust": "wet exhaust",
  "dry exhaust": "dry exhaust",
  "hot surface": "heat",
  "fuel part": "fuel",
};
const states: Readonly<Record<RouteCheck["state"], string>> = {
  holds: "holds",
  fails: "does not do",
  unchecked: "not checked",
};

/** Boxes, runs, cuts, ends, flags and what to buy. */
export const layout = {
  boxes: {
    title: (box: string): string => `Box: ${box}`,
    template: (face: FaceName): string => `Template of the ${faceWords[face]}, seen from outside`,
    notLaidOut: "not laid out",
    holes: (count: number): string => counted(count, "hole"),
    casing: "casing of a panel",
    drilled: "drilled already",
    lidOff: (scale: string): string => `Lid off, ${scale}; numbers as on the template of each face`,
    order: "In this order",
    clamp:
      "Clamp the box, never hold it in the hand: a step drill grabs. Wear eye protection. The lid stays on while you drill: it keeps the box square. Try each gland in its hole before you go on to the next face.",
    stands: (onWall: boolean, water: string): string =>
      `It ${onWall ? "hangs on a wall, lid towards you" : "stands on a floor, lid up"}${water}.`,
    waterUnknown: "; its IP code is not told: whether it keeps water out was not checked",
    water: (numerals: string): string => `; water numeral of its IP code ${numerals}`,
    numerals: (jets: number, other: number): string => `${jets} and ${other}`,
    measures: { inside: "inside", boss: "corner posts", "lid lip": "lid lip" },
    spares: (count: number): string =>
      `${counted(count, "spare entry", "spare entries")}, closed with a plug.`,
    contents:
      "Contents are screwed to the base before the lid goes on; room to bend is kept behind each gland.",
    unmeasured: (what: string): string => `Not measured, so not checked: ${what}. Measure before you drill.`,
    asTheyAre: "Its holes are taken as they are.",
    heads: {
      face: "Face",
      number: "No.",
      comes: "Comes in",
      gland: "Gland",
      hole: "Hole,\u00a0mm",
      along: "Along, inside,\u00a0mm",
      up: "Up from the base,\u00a0mm",
      nut: "Nut, corner to corner,\u00a0mm",
    },
    plug: "plug",
  },
  runs: {
    title: "Run sheet",
    subtitle: (cables: number, clips: number): string =>
      `${counted(cables, "cable")}, ${counted(clips, "clip or tie", "clips and ties")}`,
    intro: (inches: boolean, slack: string): string =>
      `Cut lengths hold the slack and are rounded up to ${inches ? "the inch" : "10\u00a0mm"}: do not take it off again. It lets a box be drawn out and worked on, gear be drawn off its hole, and an end be made once more. ${slack} in all.`,
    together: "What lies together",
    points: "Points that are passed",
    alone: "Runs that have only a length",
    aloneNote: "No way is told for these: what they lie beside and what they come near was not checked.",
    run: {
      run: "Run",
      way: "From, past, to",
      length: "Way",
      start: "Slack at its start",
      end: "Slack at its end",
      cut: "Cut",
    },
    leg: {
      leg: "Leg",
      way: "From, to",
      length: "Length",
      lies: "Lies on it",
      bundle: "Bundle",
      held: "Held",
    },
    point: { point: "Point", passes: "Passes it", bundle: "Bundle", looked: "Looked at" },
    direct: (from: string, to: string): string => `${from} to ${to}`,
    past: (from: string, past: string, to: string): string => `${from}, past ${past}, to ${to}`,
    noWay: (way: string): string => `${way}: no way found along the legs`,
    none: "none",
    notKnown: "not known",
    checks,
    states,
    nothing: "nothing to look at",
  },
  cuts: {
    title: "Cut list",
    count: (count: number): string => counted(count, "piece"),
    intro: (trim: string): string =>
      `Cut in this order: what lies on the shelf first, its old end cut back to bright copper (${trim}), and of each length the longest piece first. Put the flags on both ends before a piece leaves its length, and measure twice: the list has no wire for a slip.`,
    heads: {
      from: "Cut from",
      piece: "Piece",
      ends: "From, to",
      colours: "Colours",
      length: "Length",
    },
    nothingLeft: "Nothing is left of it.",
    others: (count: number): string =>
      `${counted(count, "more piece comes", "more pieces come")} from this length on another day: keep the rest whole.`,
    keep: (length: string): string => `${length} is left: back on the shelf.`,
    scrap: (length: string): string => `${length} is left: too short to keep.`,
  },
  ends: {
    title: "Terminations",
    subtitle: (ends: number, places: number): string =>
      `${counted(ends, "conductor end")} at ${counted(places, "place")}`,
    intro:
      "Strip to the figure, no strand nicked. A terminal takes the conductors its colour and range say, nothing else. Pull figures are the least a crimp of that size holds for one minute on a test piece; one that stays in the boat is pulled with four fifths of it at most. Measure the barrel you bought: its depth decides how far to strip. Not listed here: the two ends at a fuse holder that sits in a lead, as the main's does, and the wires inside a panel between buses, fuses and switches; the shopping list has both, of the kind their makers ask for.",
    heads: {
      run: "Run",
      conductor: "Conductor",
      size: "Size",
      terminal: "Terminal or joint",
      with: "With it in the joint",
      strip: "Strip",
      sleeve: "Sleeve, cut",
      tool: "Tool",
      pull: "Pull",
    },
    folded: ", folded",
    finding: "There is a finding about this end: see Findings.",
    itsLead: "its lead",
    single: "Places where one cable ends",
    atPlace: (place: string): string => `at ${place}`,
    beside: (names: string): string => `beside ${names}`,
    across: (names: string): string => `across from ${names}`,
  },
  flags: {
    title: "Wire flags",
    count: (count: number): string => counted(count, "flag"),
    intro:
      "Print on label paper at 100 %, cut along the lines, fold at the middle round the wire so that the halves stick together, and cover with clear sleeve or tape where it gets wet. Each piece has two: both go on before it is cut.",
    here: (place: string): string => `here ${place}`,
    there: (place: string): string => `to ${place}`,
  },
  shopping: {
    title: "Shopping list",
    count: (count: number): string => counted(count, "item"),
    heads: {
      item: "Item",
      buy: "Buy",
      price: "Price",
      needed: "Needed",
      spare: "Spare",
      onHand: "On hand",
      left: "Left over",
      for: "For",
    },
    noPrice: "not known",
    pricesWanting: (without: number, all: number): string =>
      `${without} of ${all} items have no price yet: write what you pay into the column. Prices put into the plan are added up here.`,
    seeCuts: (pieces: number): string => `${counted(pieces, "piece")}: see the cut list`,
    shelf: "From the shelf",
    currencies: (all: string): string => `Prices are in ${all}: no total is made of two currencies.`,
    noTotal: "Nothing on it has a price.",
    total: (total: string): string => `Total: ${total}.`,
    without: (items: string): string => ` Not in it, for want of a price: ${items}.`,
  },
};
