import { describe, expect, test } from "vitest";
import type { EditProblem } from "../../src/core/plan/edits/problem.js";
import { readPlan } from "../../src/core/plan/read.js";
import { type Expected, type ReadProblem, readCodes } from "../../src/core/plan/source/problem.js";
import { problemsInEnglish as english } from "../../src/words/problems/english.js";
import { editProblemsInSpanish } from "../../src/words/spanish/edit-problems.js";
import { problemsInSpanish as spanish } from "../../src/words/spanish/problems.js";
import { expectedInSpanish } from "../../src/words/spanish/read-expected.js";
import { readProblemsInSpanish } from "../../src/words/spanish/read-problems.js";
import { englishLeftIn, keysOf } from "./spanish.js";

const place = { line: 3, column: 7, path: ["gear", "bomba", 1, "draws"] };
const expected: Expected = { kind: "choice", of: ["uno", "dos", "ocho"] };

/** One problem of each kind there is, with and without something that was probably meant. */
const every: readonly ReadProblem[] = readCodes
  .flatMap((code): ReadProblem[] => {
    const problem = { ...place, code, found: "xyz", expected, firstLine: 2 };
    if (code === "yaml")
      return [...keysOf(readProblemsInSpanish.yaml.slips), "ANOTHER"].map((slip) => ({
        ...problem,
        yaml: { code: slip, detail: "xyz" },
      }));
    if (code !== "quantity") return [problem];
    return keysOf(readProblemsInSpanish.faults).map((fault) => ({ ...problem, fault, foundKind: "mass" }));
  })
  .flatMap((problem) => [problem, { ...problem, nearest: "qwz" }]);

const sound = (sentence: string) => {
  expect(sentence).toMatch(/^(«|\*xyz|xyz|\p{Lu}).*[.?]$/su);
  expect(englishLeftIn(sentence), sentence).toEqual([]);
  expect(sentence).not.toMatch(/undefined|null|[“”]| {2}/);
  // what opens a question or an exclamation in Spanish
  expect(sentence.split("?").length, sentence).toBe(sentence.split("¿").length);
};

describe("problems in Spanish", () => {
  test("each kind is a sentence of its own, and says what the English one says of the plan", () => {
    expect(every.length).toBeGreaterThan(2 * readCodes.length);
    for (const problem of every) {
      const [told, inEnglish] = [spanish.sentence(problem), english.sentence(problem)];
      sound(told);
      expect(told).not.toBe(inEnglish);
      for (const word of ["xyz", "qwz", "ocho"])
        if (problem.yaml?.code !== "ANOTHER")
          expect(told.includes(word), `${word} in ${told}`).toBe(inEnglish.includes(word));
    }
  });
  test("what would have been right is told in Spanish, whatever it is", () => {
    const rights: readonly Expected[] = [
      ...keysOf(expectedInSpanish.forms).map((form) => ({ kind: "form", form }) as const),
      ...keysOf(expectedInSpanish.kinds).map((of) => ({ kind: "quantity", of, example: "12 V" }) as const),
      ...keysOf(expectedInSpanish.limit).map((kind) => ({ kind, limit: "5 mm" }) as const),
      { kind: "count", of: [6, 8] },
    ];
    for (const right of rights)
      sound(spanish.sentence({ ...place, code: "wrong form", found: "list", expected: right }));
    expect(
      spanish.sentence({
        ...place,
        code: "wrong count",
        found: "7",
        expected: { kind: "count", of: [6, 8] },
      }),
    ).toBe("El número de longitudes es 7; se espera 6 u 8.");
  });
  test("a spoilt plan is told line by line", () => {
    const read = readPlan(
      "skiffloom: 1\nname: x\nrules: us\ncraft: {beam: '1,5 m'}\ngear:\n  bomba: {rol: bilge}\n",
    );
    expect(read.ok ? [] : read.problems.map(spanish.line)).toEqual([
      "línea 4, columna 15, craft / beam: «1,5 m» lleva una coma; escribe un punto para los decimales y nada entre los miles. Se espera una longitud como «790 mm». ¿Quizá «1.5 m»?",
      "línea 6, columna 10, gear / bomba: Falta la clave «draws».",
      "línea 6, columna 11, gear / bomba / rol: Aquí no hay ninguna clave «rol». ¿Querías decir «role»?",
    ]);
    expect(spanish.line({ ...place, code: "empty" })).toMatch(
      /^línea 3, columna 7, gear \/ bomba \/ n\.º 2 \/ draws: /,
    );
  });
  test("each reason why an edit was not made", () => {
    for (const code of keysOf(editProblemsInSpanish.codes)) {
      const problem: EditProblem = {
        code,
        edit: { edit: "remove", at: "bomba" },
        nearest: "qwz",
        ...(code === "result unsound" && { problems: [{ ...place, code: "itself", found: "xyz" }] }),
      };
      const told = spanish.edit(problem);
      expect(told).toMatch(/^Quitar bomba\. No se ha hecho: /);
      sound(told.replace(/\n {2}/, " "));
      expect(told.includes("qwz")).toBe(english.edit(problem).includes("qwz"));
      expect(told.split("\n").length).toBe(code === "result unsound" ? 2 : 1);
    }
  });
});
