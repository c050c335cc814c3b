import { entryKey } from "../box/layout.js";
import type { Edit } from "../plan/edits/edit.js";
import { keyText } from "../plan/edits/value.js";
import { writeQuantity } from "../quantity/write.js";
import { standing } from "./differences.js";
import { groupedBy } from "./grouped.js";
import type { WorkInput } from "./work-input.js";

/**
 * Edits that make the plan say what stands in the boat, so that the next project starts from there: sizes that were drawn, fuses that were
 * fitted, lengths that were measured, and the holes of boxes and panels, spare ones too. What is one of several alike is left alone
 * where they are not all the same. Empty: the plan says it all already.
 */
export function takeBuiltEdits(input: WorkInput): Edit[] {
  const { plan, protection } = input;
  const { lengths, entries, ratings } = standing(plan.source.work.asBuilt);
  const built = new Map(lengths.map((one) => [one.run, one]));
  const inches = plan.source.shows.lengths === "inches";
  const ofRuns = [...groupedBy(plan.runs, ({ group }) => group)].flatMap(([group, runs]): Edit[] => {
    const made = runs.flatMap(({ name }) => built.get(name) ?? []);
    const written = plan.source.runs.find(({ name }) => name === group);
    const sizes = new Set(made.map(({ size }) => size?.key));
    const [first] = made;
    const edits: Edit[] = [];
    if (
      made.length === runs.length &&
      sizes.size === 1 &&
      first?.size !== undefined &&
      written?.size === undefined
    )
      edits.push({ edit: "set run size", at: group, to: first.size.key });
    // where it is led along legs its length follows from them
    if (
      first?.measured === true &&
      runs.length === 1 &&
      written?.along === undefined &&
      first.lengthM !== runs[0]?.lengthM
    )
      edits.push({
        edit: "set field",
        at: group,
        field: "length",
        to: writeQuantity(first.lengthM, inches ? "in" : "mm", 6),
      });
    return edits;
  });
  const ofWays = ratings.flatMap(({ device, ratingA }): Edit[] => {
    const figures = protection.find(({ id }) => id === device);
    if (figures === undefined || figures.fixedByOwner) return [];
    const to = `{device: ${figures.device}, rating: ${writeQuantity(ratingA, "A")}}`;
    if (plan.circuits.has(figures.of) && figures.of.includes(" / "))
      return [{ edit: "set way fuse", at: figures.of, to }];
    return [];
  });
  const ofBoxes = [...groupedBy(entries, ({ box }) => box)].flatMap(([box, list]): Edit[] => {
    const known = [...plan.boxes, ...plan.panels].find(({ name }) => name === box);
    if (known === undefined || known.holes !== undefined) return [];
    const holes = list.map(
      ({ run, on, atM, holeM }) =>
        `${keyText(entryKey(run))}: {on: ${on}, at: [${atM.map((m) => writeQuantity(m, "mm", 5)).join(", ")}], hole: ${writeQuantity(holeM, "mm", 5)}}`,
    );
    return [{ edit: "set field", at: box, field: "holes", to: `{${holes.join(", ")}}` }];
  });
  return [...ofRuns, ...ofWays, ...ofBoxes];
}
