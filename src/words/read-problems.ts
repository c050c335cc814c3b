import { limits } from "../core/plan/source/limits.js";
import type { ReadProblemWords, ReadSaid } from "./problems/problem-words.js";
import { grouped, readTeller } from "./problems/told.js";
import { expectedInEnglish } from "./read-expected.js";
import { yamlInEnglish } from "./yaml-problems.js";

const count = (value: number) => grouped(value, ",");
const unreadable = ({ found, expected }: ReadSaid) => `${found} cannot be read. Expected ${expected}.`;

const inEnglish: ReadProblemWords = {
  item: (no) => `no. ${no}`,
  where: (line, column) => `line ${line}, column ${column}`,
  quoted: (text) => `“${text}”`,
  form: { list: "a list", section: "a section with keys" },
  codes: {
    "not utf-8": () => "The file is not UTF-8 text from here on; save it as UTF-8.",
    "too large": () => `The file is too large; a plan may have ${limits.maxBytes / 1024 / 1024} MB.`,
    "too deep": () =>
      `Sections lie too deep in one another; a plan needs no more than ${limits.maxDepth} levels.`,
    "too many values": () => `The plan holds too much; it may have ${count(limits.maxValues)} values.`,
    "too many aliases": () =>
      `Too many aliases (*name); a plan may have ${count(limits.maxAliases)}, and none that multiply.`,
    "too much gear": ({ bare }) =>
      `${bare} pieces of gear, counts added up; a plan may have ${count(limits.maxGear)}.`,
    "more problems": () => "There are more problems after these; mend these first.",
    "several documents": () => "A second document starts here (---); a plan file holds one.",
    empty: () => "The file is empty. A plan starts with “skiffloom: 1”, a name and the rules.",
    tag: ({ found }) => `The tag ${found} is not used in plans; leave it out.`,
    "merge key": () => "“<<” does not merge in YAML 1.2; write the keys out, or use *name for a whole value.",
    "unknown alias": ({ bare }) => `*${bare} stands for nothing: no &${bare} comes before it.`,
    "alias in itself": ({ bare }) => `*${bare} stands inside its own &${bare}.`,
    "key not a word": () => "A key must be a plain word or words here.",
    "bad name": ({ found }) =>
      `${found} cannot be a name: no “ / ” in it, no blank or slash at an end, ${limits.maxNameLength} letters at most, and not a word with a meaning of its own.`,
    "duplicate key": ({ found, firstLine }) =>
      `${found} is written twice; the first is on line ${firstLine}.`,
    "unknown key": ({ found, guessed, expected }) =>
      `There is no key ${found} here.${guessed ? "" : ` Known are ${expected}.`}`,
    "missing key": ({ found }) => `The key ${found} is missing.`,
    "wrong form": ({ form, expected }) => `Expected ${expected}, found ${form}.`,
    "nothing written": ({ expected }) =>
      `Nothing is written here. Expected ${expected}; to leave it out, delete the line.`,
    "not one of": ({ found, expected }) => `${found} is none of ${expected}.`,
    "number needed": ({ found, expected }) => `Expected ${expected} without a unit, found ${found}.`,
    "other unit": ({ found, expected }) =>
      `${found} has another unit than the reading it belongs to; expected ${expected}.`,
    "out of limits": ({ found, expected }) => `${found} is out of limits: it must be ${expected}.`,
    "both keys": ({ expected }) => `Write one of ${expected}, not both.`,
    "neither key": ({ expected }) => `One of ${expected} is needed.`,
    "newer format": ({ bare, expected }) =>
      `The plan is written in format ${bare}; this program reads up to ${expected}. It was left as it is; a newer Skiffloom is needed.`,
    "no such format": ({ bare, expected }) => `There is no format ${bare}; write “skiffloom: ${expected}”.`,
    "names alike": ({ found, firstLine }) =>
      `${found} looks like the name on line ${firstLine} and is another: they differ in letters that cannot be told apart, spelt out here in brackets. Write both the same way, or give each a name of its own.`,
    "name used twice": ({ found, firstLine }) =>
      `${found} is already the name of something on line ${firstLine}; give each thing its own.`,
    "unknown place": ({ found }) => `Nothing in the plan is called ${found}.`,
    "unknown way": ({ found }) => `There is no way ${found}.`,
    "unknown outlet": ({ found, expected }) =>
      `${found} does not exist; the outlets of a converter are ${expected}.`,
    "no outlets": ({ found }) => `${found} does not exist: only panels, boxes and converters have outlets.`,
    "ambiguous way": ({ found, expected }) =>
      `${found} is the name of several ways; write one of ${expected}.`,
    "unknown battery": ({ found }) => `There is no battery called ${found}.`,
    "unknown waypoint": ({ found }) => `There is no waypoint called ${found}.`,
    "unknown gear": ({ found }) => `There is no gear called ${found}.`,
    "unknown face": ({ found }) => `There is no face called ${found}.`,
    "unknown reference": ({ found }) => `There is no reference point called ${found}.`,
    "unknown line": ({ found, guessed, expected }) =>
      `There is no line called ${found} here.${guessed ? "" : ` Known are ${expected}.`}`,
    "one side only": ({ found }) => `${found} is on one side of the boat only: it has no pair.`,
    "odd pair": ({ bare }) => `A pair needs as many on each side; ${bare} is odd.`,
    itself: ({ found }) => `${found} is connected with itself.`,
    "wrong count": ({ bare, expected }) => `${bare} lengths; expected ${expected}.`,
    "ends before it begins": () => "It begins after it ends.",
    "after the end": ({ found }) => `${found} is after the end of the outing.`,
  },
  faults: {
    empty: unreadable,
    "no number": unreadable,
    "no unit": ({ found, expected }) => `${found} has no unit. Expected ${expected}.`,
    "unknown unit": ({ found, expected }) => `The unit of ${found} is not known. Expected ${expected}.`,
    "wrong kind": ({ found, kind, expected }) => `${found} is ${kind}. Expected ${expected}.`,
    comma: ({ found, expected }) =>
      `${found} has a comma; write a point for decimals and nothing between thousands. Expected ${expected}.`,
    order: ({ found, expected }) =>
      `The parts of ${found} do not go together in this order. Expected ${expected}.`,
    absurd: ({ found, expected }) => `${found} is too large to be meant. Expected ${expected}.`,
    "not made": ({ found, expected }) => `There is no conductor of size ${found}. Expected ${expected}.`,
  },
  meant: (nearest, sure) => (sure ? `Did you mean “${nearest}”?` : `Perhaps “${nearest}”?`),
  expected: expectedInEnglish,
  yaml: yamlInEnglish,
};

/** A plan's problems in English, by line and as sentences. */
export const { line: readProblemLine, sentence: readProblemSentence } = readTeller(inEnglish);
