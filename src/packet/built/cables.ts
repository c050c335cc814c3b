import type { Figures } from "../../core/figures-types.js";
import type { Shows } from "../../core/plan/model/plan.js";
import { lengthWords } from "../../words/numbers.js";
import type { Column, Row } from "../table.js";
import { type Built, type BuiltWords, how } from "./built.js";

export const cableColumns = ({ heads }: BuiltWords): readonly Column[] => [
  { heading: heads.run, share: 44 },
  { heading: heads.from, share: 36 },
  { heading: heads.to, share: 36 },
  { heading: heads.plannedLength, share: 28, align: "right" },
  { heading: heads.asBuilt, share: 28, align: "right", hand: "write" },
  { heading: heads.plannedConductor, share: 26 },
  { heading: heads.asBuilt, share: 24, hand: "write" },
  { heading: heads.how, share: 62, hand: "write" },
];

export function cableRows(
  { plan, sizes }: Figures,
  { lengths }: Built,
  shows: Shows,
  words: BuiltWords,
): Row[] {
  const known = new Map(lengths.map((one) => [one.run, one]));
  const rows = plan.runs.map((run): Row => {
    const one = known.get(run.name);
    known.delete(run.name);
    const size =
      sizes.choices.find((choice) => choice.run === run.group || choice.run === run.name)?.size.key ?? "";
    return {
      cells: [
        { words: [{ text: run.name, weight: "semibold" }] },
        run.from.port === undefined ? run.from.place : `${run.from.place} / ${run.from.port}`,
        run.to.port === undefined ? run.to.place : `${run.to.place} / ${run.to.port}`,
        lengthWords(run.lengthM, shows),
        one === undefined ? "" : lengthWords(one.lengthM, shows),
        size,
        one?.size?.key ?? "",
        how(one, words),
      ],
    };
  });
  const gone = [...known.values()].map(
    (one): Row => ({
      cells: [
        { words: [{ text: one.run, weight: "semibold" }] },
        "",
        "",
        words.notInPlan,
        lengthWords(one.lengthM, shows),
        "",
        one.size?.key ?? "",
        how(one, words),
      ],
    }),
  );
  return [...rows, ...gone];
}
