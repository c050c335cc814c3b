import { limits } from "../core/plan/source/limits.js";
import type { ReadProblem } from "../core/plan/source/problem.js";
import { expectedWords, kindWords } from "./read-expected.js";
import { yamlSentence } from "./yaml-problems.js";

/** One problem of a plan file as it is shown: `line 12, column 9, gear / bilge pump / draws: …`. */
export function readProblemLine(problem: ReadProblem): string {
  const path = problem.path.map((step) => (typeof step === "number" ? `no. ${step + 1}` : step)).join(" / ");
  const where = `line ${problem.line}, column ${problem.column}`;
  return `${where}${path === "" ? "" : `, ${path}`}: ${readProblemSentence(problem)}`;
}

/** What is wrong and what would be right, in a sentence or two. */
export function readProblemSentence(problem: ReadProblem): string {
  return [statement(problem), hint(problem)].filter((part) => part !== "").join(" ");
}

function statement(problem: ReadProblem): string {
  const found = `“${problem.found ?? ""}”`;
  const expected = problem.expected === undefined ? "" : expectedWords(problem.expected);
  switch (problem.code) {
    case "not utf-8":
      return "The file is not UTF-8 text from here on; save it as UTF-8.";
    case "too large":
      return `The file is too large; a plan may have ${limits.maxBytes / 1024 / 1024} MB.`;
    case "too deep":
      return `Sections lie too deep in one another; a plan needs no more than ${limits.maxDepth} levels.`;
    case "too many values":
      return `The plan holds too much; it may have ${grouped(limits.maxValues)} values.`;
    case "too many aliases":
      return `Too many aliases (*name); a plan may have ${grouped(limits.maxAliases)}, and none that multiply.`;
    case "too much gear":
      return `${problem.found} pieces of gear, counts added up; a plan may have ${grouped(limits.maxGear)}.`;
    case "more problems":
      return "There are more problems after these; mend these first.";
    case "yaml":
      return yamlSentence(problem.yaml?.code ?? "", problem.yaml?.detail ?? "");
    case "several documents":
      return "A second document starts here (---); a plan file holds one.";
    case "empty":
      return "The file is empty. A plan starts with “skiffloom: 1”, a name and the rules.";
    case "tag":
      return `The tag ${found} is not used in plans; leave it out.`;
    case "merge key":
      return "“<<” does not merge in YAML 1.2; write the keys out, or use *name for a whole value.";
    case "unknown alias":
      return `*${problem.found} stands for nothing: no &${problem.found} comes before it.`;
    case "alias in itself":
      return `*${problem.found} stands inside its own &${problem.found}.`;
    case "key not a word":
      return "A key must be a plain word or words here.";
    case "bad name":
      return `${found} cannot be a name: no “ / ” in it, no blank or slash at an end, ${limits.maxNameLength} letters at most, and not a word with a meaning of its own.`;
    case "duplicate key":
      return `${found} is written twice; the first is on line ${problem.firstLine}.`;
    case "unknown key":
      return `There is no key ${found} here.${problem.nearest === undefined ? ` Known are ${expected}.` : ""}`;
    case "missing key":
      return `The key ${found} is missing.`;
    case "wrong form":
      return `Expected ${expected}, found ${foundForm(problem)}.`;
    case "nothing written":
      return `Nothing is written here. Expected ${expected}; to leave it out, delete the line.`;
    case "not one of":
      return `${found} is none of ${expected}.`;
    case "quantity":
      return quantityStatement(problem, expected);
    case "number needed":
      return `Expected ${expected} without a unit, found ${found}.`;
    case "other unit":
      return `${found} has another unit than the reading it belongs to; expected ${expected}.`;
    case "out of limits":
      return `${found} is out of limits: it must be ${expected}.`;
    case "both keys":
      return `Write one of ${expected}, not both.`;
    case "neither key":
      return `One of ${expected} is needed.`;
    case "newer format":
      return `The plan is written in format ${problem.found}; this program reads up to ${expected}. It was left as it is; a newer Skiffloom is needed.`;
    case "no such format":
      return `There is no format ${problem.found}; write “skiffloom: ${expected}”.`;
    case "name used twice":
      return `${found} is already the name of something on line ${problem.firstLine}; give each thing its own.`;
    case "unknown place":
      return `Nothing in the plan is called ${found}.`;
    case "unknown way":
      return `There is no way ${found}.`;
    case "unknown outlet":
      return `${found} does not exist; the outlets of a converter are ${expected}.`;
    case "no outlets":
      return `${found} does not exist: only panels, boxes and converters have outlets.`;
    case "ambiguous way":
      return `${found} is the name of several ways; write one of ${expected}.`;
    case "unknown battery":
      return `There is no battery called ${found}.`;
    case "unknown waypoint":
      return `There is no waypoint called ${found}.`;
    case "unknown gear":
      return `There is no gear called ${found}.`;
    case "unknown face":
      return `There is no face called ${found}.`;
    case "unknown reference":
      return `There is no reference point called ${found}.`;
    case "unknown line":
      return `There is no line called ${found} here.${problem.nearest === undefined ? ` Known are ${expected}.` : ""}`;
    case "one side only":
      return `${found} is on one side of the boat only: it has no pair.`;
    case "odd pair":
      return `A pair needs as many on each side; ${problem.found} is odd.`;
    case "itself":
      return `${found} is connected with itself.`;
    case "wrong count":
      return `${problem.found} lengths; expected ${expected}.`;
    case "ends before it begins":
      return "It begins after it ends.";
    case "after the end":
      return `${found} is after the end of the outing.`;
    default:
      return problem.code satisfies never;
  }
}

function quantityStatement(problem: ReadProblem, expected: string): string {
  const found = `“${problem.found ?? ""}”`;
  switch (problem.fault) {
    case "no unit":
      return `${found} has no unit. Expected ${expected}.`;
    case "unknown unit":
      return `The unit of ${found} is not known. Expected ${expected}.`;
    case "wrong kind":
      return `${found} is ${kindWords(problem.foundKind ?? "length")}. Expected ${expected}.`;
    case "comma":
      return `${found} has a comma; write a point for decimals and nothing between thousands. Expected ${expected}.`;
    case "order":
      return `The parts of ${found} do not go together in this order. Expected ${expected}.`;
    case "absurd":
      return `${found} is too large to be meant. Expected ${expected}.`;
    case "not made":
      return `There is no conductor of size ${found}. Expected ${expected}.`;
    default:
      return `${found} cannot be read. Expected ${expected}.`;
  }
}

function hint({ code, nearest }: ReadProblem): string {
  if (nearest === undefined) return "";
  return code === "unknown gear" || code.startsWith("unknown ") || code === "not one of"
    ? `Did you mean “${nearest}”?`
    : `Perhaps “${nearest}”?`;
}

function foundForm({ found }: ReadProblem): string {
  return found === "list" ? "a list" : found === "section" ? "a section with keys" : `“${found ?? ""}”`;
}

function grouped(count: number): string {
  return String(count).replace(/\B(?=(\d{3})+$)/g, ",");
}
