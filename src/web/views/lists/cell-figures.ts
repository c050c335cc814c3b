import type { Figures } from "../../../core/figures-types.js";
import type { FigureRef } from "../../../core/working/figure-ref.js";
import { amps, marked, percent } from "../../../words/numbers.js";
import type { ListSpec } from "./list-specs.js";

/** A worked-out figure in a cell, and where its working is. */
export interface CellFigure {
  readonly words: string;
  readonly value: number;
  readonly of: FigureRef;
}

export interface CellFigures {
  readonly figure: (row: string, column: string) => CellFigure | undefined;
  /** What was assumed where the plan says nothing. */
  readonly assumed: (row: string, column: string) => string | undefined;
}

const none: CellFigures = { figure: () => undefined, assumed: () => undefined };

/** Figures of a list's lines, looked up once for each set of figures. */
export function cellFigures(figures: Figures | undefined, spec: ListSpec): CellFigures {
  if (!figures) return none;
  const assumed = new Map(figures.assumptions.map(({ at, field, value }) => [`${at}\n${field}`, value]));
  const found = new Map<string, CellFigure>();
  const note = (row: string, column: string, figure: CellFigure) => {
    const key = `${row}\n${column}`;
    const known = found.get(key);
    if (known === undefined || figure.value > known.value) found.set(key, figure);
  };
  for (const each of makers[spec.id] ?? []) each(figures, note);
  return {
    figure: (row, column) => found.get(`${row}\n${column}`),
    assumed: (row, column) => assumed.get(`${row}\n${column}`),
  };
}

type Note = (row: string, column: string, figure: CellFigure) => void;
type Maker = (figures: Figures, note: Note) => void;

const cornerOf = ({ corners }: Figures, name: string) => corners.find((corner) => corner.name === name);

/** A row of gear alike shows the piece that fares worst. */
const gear: Maker = (figures, note) => {
  const groups = new Map(figures.plan.gear.map(({ name, group }) => [name, group]));
  for (const { id, on, currentA } of cornerOf(figures, "nominal")?.gear ?? [])
    if (on)
      note(groups.get(id) ?? id, "current", {
        words: amps(currentA),
        value: currentA,
        of: { of: "gear current", gear: id, corner: "nominal" },
      });
  for (const { id, on, dropShare } of cornerOf(figures, "worst drop")?.gear ?? [])
    if (on)
      note(groups.get(id) ?? id, "voltage lost", {
        words: percent(dropShare),
        value: dropShare,
        of: { of: "gear drop", gear: id, corner: "worst drop" },
      });
};

const ways: Maker = (figures, note) => {
  const corner = cornerOf(figures, "nominal");
  for (const { id, currentA } of corner?.ways ?? []) {
    const branch = corner?.branches.find(({ of }) => of === id);
    if (branch)
      note(id, "current", {
        words: amps(currentA),
        value: currentA,
        of: { of: "branch current", branch: branch.id, corner: "nominal" },
      });
  }
  // a way on which nothing hangs has no fuse yet: what the circuit is worked out with there is none to fit
  for (const { id, of, ratingA, spare } of figures.protection)
    if (!spare)
      note(of, "rating", { words: marked(ratingA, "A"), value: ratingA, of: { of: "rating", device: id } });
};

const runs: Maker = (figures, note) => {
  const groups = new Map(figures.plan.runs.map(({ name, group }) => [name, group]));
  for (const { id, run, size } of figures.sizes.choices)
    note(run, "conductor", {
      words: size.key.replaceAll(" ", "\u00a0"),
      value: id === run ? size.areaMm2 + 1e6 : size.areaMm2,
      of: { of: "run size", choice: id },
    });
  for (const { id, of, currentA } of cornerOf(figures, "nominal")?.branches ?? []) {
    const group = groups.get(of);
    if (group !== undefined)
      note(group, "current", {
        words: amps(Math.abs(currentA)),
        value: Math.abs(currentA),
        of: { of: "branch current", branch: id, corner: "nominal" },
      });
  }
};

const batteries: Maker = (figures, note) => {
  for (const { id, currentA } of cornerOf(figures, "nominal")?.batteries ?? [])
    note(id, "current", {
      words: amps(currentA),
      value: currentA,
      of: { of: "battery current", battery: id, corner: "nominal" },
    });
};

const makers: Partial<Record<ListSpec["id"], readonly Maker[]>> = {
  gear: [gear],
  ways: [ways],
  runs: [runs],
  batteries: [batteries],
};
