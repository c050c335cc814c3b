import type { Edit } from "../plan/edits/edit.js";
import { keyText } from "../plan/edits/value.js";
import type { Place } from "../plan/model/placing.js";
import { writeQuantity } from "../quantity/write.js";
import { plannedHoles } from "./planned-holes.js";
import type { Step } from "./step.js";
import type { WorkFacts, WorkInput } from "./work-input.js";

/** Edits that record what a step makes, as the step says it. Steps that make nothing lasting give none. */
export function builtBy(input: WorkInput, facts: WorkFacts, step: Step, when: string): Edit[] {
  const { plan, protection } = input;
  const inches = plan.source.shows.lengths === "inches";
  const length = (m: number) => (inches ? writeQuantity(m, "in", 6) : writeQuantity(m, "mm", 7));
  const record = (kind: string, fields: readonly string[]): Edit => ({
    edit: "add",
    kind,
    name: "",
    as: `{${[...fields, `when: ${when}`].join(", ")}}`,
  });
  switch (step.task) {
    case "draw wire":
      return step.pieces.flatMap((name): Edit[] => {
        const run = plan.runs.find((one) => one.name === name);
        if (run === undefined) return [];
        const size = input.sizes.choices.find((one) => one.run === run.group || one.run === name)?.size.key;
        return [
          record("built length", [
            `run: ${keyText(name)}`,
            `length: ${length(run.lengthM)}`,
            ...(size === undefined ? [] : [`size: ${size}`]),
          ]),
        ];
      });
    case "drill gear":
      return plannedHoles(plan).flatMap(({ hole, on, side, at: told, sizeM, there }): Edit[] => {
        const at = told ?? facts.holes?.get(hole)?.at;
        const cutMm = facts.holes?.get(hole)?.cutMm;
        const cutM = cutMm === undefined ? sizeM : cutMm / 1000;
        if (there || !step.pieces.includes(hole) || at === undefined || cutM === undefined) return [];
        return [
          record("built hole", [
            `hole: ${keyText(hole)}`,
            `on: ${keyText(on)}`,
            ...(side === "port" ? [] : [`side: ${side}`]),
            `at: ${placeText(at, length)}`,
            `size: ${writeQuantity(cutM, "mm", 5)}`,
          ]),
        ];
      });
    case "drill box":
      return step.at.flatMap((box) =>
        (facts.entries?.get(box) ?? []).flatMap(({ run, on, atM, holeMm }): Edit[] => {
          const [cable = ""] = run.split(" / ");
          const wanted =
            step.pieces.includes(cable) || (cable.startsWith("spare") && step.doneBefore === undefined);
          if (!wanted || on === undefined || atM === undefined) return [];
          return [
            record("built entry", [
              `box: ${keyText(box)}`,
              `run: ${keyText(run)}`,
              `on: ${on}`,
              `at: [${atM.map((m) => writeQuantity(m, "mm", 5)).join(", ")}]`,
              `hole: ${writeQuantity(holeMm / 1000, "mm", 5)}`,
            ]),
          ];
        }),
      );
    case "join end":
      return step.pieces.flatMap((name): Edit[] => {
        const run = plan.runs.find((one) => one.name === name);
        const end = step.id.endsWith(" / start") ? "start" : "end";
        if (run === undefined) return [];
        const kind = end === "start" ? run.jointAtStart : run.jointAtEnd;
        return [record("built joint", [`at: ${keyText(name)}`, `end: ${end}`, `kind: ${kind}`])];
      });
    case "connect end":
    case "battery on":
    case "prove way":
    case "prove pump":
      return step.sizes.flatMap((size): Edit[] =>
        size.what === "rating" && protection.some(({ id }) => id === size.of)
          ? [record("built rating", [`device: ${keyText(size.of)}`, `rating: ${writeQuantity(size.a, "A")}`])]
          : [],
      );
    default:
      return [];
  }
}

function placeText({ alongM, from, edge, offM }: Place, length: (m: number) => string): string {
  const fields = [
    `along: ${length(alongM)}`,
    ...(from === undefined ? [] : [`from: ${keyText(from)}`]),
    ...(edge === undefined ? [] : [`${edge.off}: ${keyText(edge.line)}`]),
    `off: ${length(offM)}`,
  ];
  return `{${fields.join(", ")}}`;
}
