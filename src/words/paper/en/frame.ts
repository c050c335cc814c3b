import { counted } from "../../numbers.js";
import { shell } from "../../screen/en/shell.js";

const scopes: Readonly<Record<"tonight" | "project", string>> = { tonight: "tonight", project: "project" };

/** What stands on every page, and on the first one. */
export const frame = {
  /** A drawing to those who hear a page: what it is, and the words in it. */
  drawn: (what: string, words: string, more: number): string =>
    words === ""
      ? `Drawing: ${what}.`
      : `Drawing: ${what}. Written in it: ${words}${more > 0 ? `; and ${more} more` : ""}.`,
  /** Joined to the name of the plan, as the title of the document. */
  packet: (plan: string): string => `${plan}: electrical packet`,
  scopes,
  sheetOf: (title: string, sheet: number, of: number): string => `${title}, sheet ${sheet} of ${of}`,
  pageOf: (page: number, of: number): string => `page ${page} of ${of}`,
  continued: " (continued)",
  planningAid: shell.planningAid,
  more: (count: number): string => ` and ${count} more`,
  planMark: (mark: string): string => `plan ${mark}`,
  boat: "The boat",
  inTheWay: "What stands in the way",
  inThisPacket: "In this packet",
  nothingFound: "No rule found anything. Read what was assumed and what nobody checked.",
  nothingInTheWay: (unchecked: number): string =>
    unchecked === 0
      ? "No rule stops the work or asks for mending first. To know:"
      : `No rule stops the work, but ${counted(unchecked, "matter")} could not be checked. Look there first:`,
  moreFindings: (count: number, page: number | undefined): string =>
    `and ${count} more under Findings${page === undefined ? "" : `, page ${page}`}`,
  doFirst: "Do first",
  mendFirst: "Mend in the plan what stops the work, and print anew.",
  noStepLeft: "No step of the work is left.",
  allSteps: (steps: number, hours: string, page: number | undefined): string =>
    `${counted(steps, "step")}, ${hours} of your hands in all${page === undefined ? "" : `: page ${page}`}`,
  signed: ["Looked through by", "Licence or firm", "Date", "Signature"],
  made: (material: string | undefined, kind: string | undefined): string =>
    [material, kind].filter((word) => word !== undefined).join(" "),
  key: {
    hours: "Hours to reserve",
    noOuting: "no outing in the plan",
    notReached: "not reached by any outing",
    before: "before the outing ends",
    longer: "longer than the outing",
    on: (battery: string, outing: string, end: string): string => `${battery} on “${outing}”, ${end}`,
    drop: "Worst drop",
    noDrop: "no drop was worked out",
    at: (voltage: string, gear: string, limit: string): string => `${voltage} at ${gear}, limit ${limit}`,
    findings: "Findings",
  },
  facts: {
    battery: (count: number): string => (count === 1 ? "Battery" : "Batteries"),
    charger: (count: number): string => (count === 1 ? "Charger" : "Chargers"),
    converter: (count: number): string => (count === 1 ? "Converter" : "Converters"),
    panel: (count: number): string => (count === 1 ? "Panel" : "Panels"),
    box: (count: number): string => (count === 1 ? "Junction box" : "Junction boxes"),
    outing: (count: number): string => (count === 1 ? "Outing" : "Outings"),
    gear: "Gear",
    runs: "Runs",
    air: "Air",
    more: (count: number): string => `and ${count} more`,
    reserve: (share: string): string => `reserve ${share}`,
    charges: (kind: string, battery: string): string => `${kind}, for ${battery}`,
    kinds: { mains: "mains", solar: "solar", engine: "engine", converter: "converter" },
    converts: (voltage: string, current: string): string => `to ${voltage}, at most ${current}`,
    ways: (count: number): string => counted(count, "way"),
    withWays: (panel: string, ways: string): string => `${panel} with ${ways}`,
    pieces: (count: number, ways: string, devices: number): string =>
      `${counted(count, "piece")} on ${ways}; ${counted(devices, "fuse or breaker", "fuses and breakers")}`,
    cable: (count: number, length: string): string => `${counted(count, "run")}, ${length} of cable in all`,
    temperatures: (cold: number, hot: number, engine: number): string =>
      `${cold} to ${hot} °C, engine space ${engine} °C`,
  },
};
