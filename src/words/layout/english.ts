import type { DrillTool } from "../../core/box/drill-order.js";
import type { FaceName } from "../../core/box/face.js";
import type { PartKind } from "../../core/parts/parts-list.js";
import type { SlackPart } from "../../core/way/slack.js";
import { joinedInEnglish } from "../listed.js";
import { counted } from "../numbers.js";
import { faceWords } from "../template-words.js";

const slack: Readonly<Record<SlackPart["why"], string>> = {
  owner: "yours",
  "draw out": "to draw it out",
  "work beside": "to work beside it",
  "off its hole": "off its hole",
  "at panel": "at the panel",
  "at battery": "at the battery",
  "make again": "to make the end again",
};
const shortSlack: Readonly<Record<SlackPart["why"], string>> = {
  owner: "yours",
  "draw out": "to draw out",
  "work beside": "to work",
  "off its hole": "off its hole",
  "at panel": "in panel",
  "at battery": "at the post",
  "make again": "spare",
};
const partKinds: Readonly<Record<PartKind, string>> = {
  conductor: "Wire",
  terminal: "Terminals",
  joint: "Joints",
  sleeve: "Sleeve",
  gland: "Glands and plugs",
  fuse: "Fuses and breakers",
  "fuse holder": "Fuse holders",
  box: "Boxes",
  switch: "Switches",
  bus: "Buses and strips",
  tie: "Clips and ties",
  sealant: "Sealant",
  tape: "Tape",
  label: "Labels",
  gear: "Gear",
  other: "Other",
};
const faces: Readonly<Record<FaceName, string>> = faceWords;
const tools: Readonly<Record<DrillTool, string>> = {
  punch: "punch",
  "twist drill": "twist drill",
  "step drill": "step drill",
  "hole saw": "hole saw",
  "deburring tool": "deburring tool",
};

/** What is said of boxes, cuts, ends and parts in English. */
export const layoutInEnglish = {
  joining: joinedInEnglish,
  slack,
  shortSlack,
  partKinds,
  faces,
  supports: {
    enclosed: "enclosed all along",
    ends: "at its ends",
    every: (count: number, apart: string) => `${counted(count, "clip")}, every ${apart}`,
  },
  box: {
    noGland: (cable: string, size: string) => `no gland of the series holds ${cable} (${size})`,
    notRound: (cable: string) => `${cable} is flat, and a round seal leaks beside it`,
    wall: (wall: string, size: string) => `its wall of ${wall} is too thick for the thread of ${size}`,
    tooMany: (room: number) => `room for ${room} entries only`,
    tooLarge: (entries: string) => `no face is large enough for ${entries}`,
    tooTall: (content: string) => `${content} does not go under its lid`,
    noRoom: (content: string) => `no room for ${content}`,
    noBend: (face: FaceName) => `no room for conductors to bend behind the ${faces[face]}`,
    noHole: (size: string, cable: string) => `no hole of ${size} for ${cable}`,
  },
  why: {
    nothing: "Neither its inside nor a catalogue of boxes is in the plan.",
    none: (largest: string, why: string) =>
      `No box of the catalogue takes it all. The largest, ${largest}: ${why}.`,
    inside: (size: string, wall: string, material: string) => `inside ${size}, wall ${wall}, ${material}`,
    doesNot: (why: string) => `It does not do: ${why}.`,
    drilled: "drilled already",
    noPrice: "price not known",
    smaller: (id: string, why: string) => `The next smaller, ${id}, does not do: ${why}.`,
  },
  passing: {
    holds: (through: string, size: string) => `With its glands on${size} it passes ${through}.`,
    bare: (through: string, size: string) =>
      `It passes ${through} only bare: with its glands on${size} it is too large. Fit them in place.`,
    fails: (through: string, size: string) =>
      `It does not pass ${through}, with its glands${size} or without.`,
    unchecked: (what: string, through: string) => `Whether ${what} passes ${through} was not checked.`,
  },
  drill: {
    punch: (count: number, face: FaceName, held: string) =>
      `Punch ${count > 1 ? `${count} centres` : "the centre"} on the ${faces[face]}${held}`,
    deburr: (count: number, face: FaceName) =>
      `Deburr ${count > 1 ? `${count} holes` : "1 hole"} on the ${faces[face]}, both sides`,
    drill: (count: number, size: string, face: FaceName, tool: DrillTool, held: string) =>
      `Drill ${count > 1 ? `${count} holes` : "1 hole"} of ${size} on the ${faces[face]} with a ${tools[tool]}${held}`,
    held: { "lid on": "lid on", "block behind wall": "block behind wall" },
  },
  from: {
    offcut: (length: string, number: number | undefined) =>
      `offcut of ${length}${number === undefined ? "" : `, no. ${number}`}`,
    spool: (length: string) => `spool of ${length} on hand`,
    new: (length: string, number: number) => `new spool of ${length}, no. ${number}`,
    "by length": (length: string) => `${length} cut off in the shop`,
  },
  cut: {
    tooLong: (piece: string, length: string, longest: string) =>
      `${piece} is ${length}; the longest to be had is ${longest}. Buy a longer spool, or join it in a box on the way.`,
    notEnough: (needed: string, onHand: string) =>
      `${needed} is needed; the ${onHand} on hand does not do, and none is sold.`,
    negative: (stock: string) => `${stock} has a count below zero.`,
    noPrice: (stock: string) => `${stock} has no price.`,
    none: "not to be had in these lengths",
    cheapest: "proven: nothing costs less",
    leastWire: "proven: nothing takes less wire",
    found: "the best found; a better one could exist",
  },
  buy: {
    pieces: (count: number) => counted(count, "piece"),
    unlisted: (count: number) => `${count}, not on any price list`,
    nothing: "nothing to buy",
    spools: (times: number, length: string) => `${times} × spool of ${length}`,
    cutOff: (length: string) => `${length} cut off`,
  },
  bought: {
    more: (had: string, more: string) => `${had} bought, ${more} more wanted`,
    over: (had: string, over: string) => `${had} bought, ${over} more than the list asks for`,
    notWanted: "Bought, and no longer on the list",
    gone: "no longer on the list",
  },
  cores: (count: number) => `${count}\u00a0cores`,
  end: {
    lug: (size: string) => `lug ${size}`,
    tab: (size: string) => `tab ${size}\u00a0mm`,
    noStud: "stud not told",
    noTab: "tab not told",
    steps: (one: string, other: string) => `${one} to ${other}`,
    sleeve: (lined: boolean, from: number, to: number, length: number) =>
      `${lined ? "lined " : ""}${from} to ${to}\u00a0mm, ${length}\u00a0mm long`,
  },
  /** An entry of a box: the cable it is for, or `spare 1`. */
  entry: (id: string): string => id,
  /** A name with the side that the hull's figures put behind it: `end port`. */
  sided: (name: string): string => name,
  /** Names of parts; those of the owner's own lists stay in any language. */
  part: (name: string, _kind: PartKind): string => name,
  /** What a part is for, by name: clips and flags are for all runs. */
  use: (name: string, _kind: PartKind): string => name,
  wire: (kind: string): string => kind,
  tool: (tool: string): string => tool,
  material: (material: string): string => material,
  joint: (kind: string): string => kind,
  colour: (colour: string): string => colour,
  leg: (leg: string): string => leg,
};

export type LayoutWords = typeof layoutInEnglish;
