/** A mixed-integer question as plain numbers, for the solver that stands as a witness. */
interface MilpProblem {
  readonly columns: readonly {
    readonly cost: number;
    readonly lower: number;
    readonly upper: number;
    readonly integer: boolean;
  }[];
  readonly rows: readonly {
    readonly lower: number;
    readonly upper: number;
    readonly terms: readonly (readonly [column: number, factor: number])[];
  }[];
}

interface MilpAnswer {
  readonly status: "optimal" | "feasible" | "none" | "unknown";
  readonly values: readonly number[];
  readonly objective: number;
}

/** Least cost under the rows. */
export type SolveMilp = (problem: MilpProblem) => MilpAnswer;

const signed = (factor: number, name: string): string =>
  `${factor < 0 ? "-" : "+"} ${Math.abs(factor)} ${name}`;

/**
 * The question in the LP format that free solvers read. Columns are named x0, x1 …, rows r0, r1 ….
 * @throws RangeError if a column does not exist or a figure is not a number.
 */
export function milpText(problem: MilpProblem): string {
  const { columns, rows } = problem;
  for (const [index, column] of columns.entries()) {
    if (!(column.lower <= column.upper) || !Number.isFinite(column.cost)) {
      throw new RangeError(
        `column ${index} needs a finite cost and lower ≤ upper, got ${JSON.stringify(column)}`,
      );
    }
  }
  const lines = [
    "Minimize",
    ` cost: ${columns.map((c, i) => signed(c.cost, `x${i}`)).join(" ")}`,
    "Subject To",
  ];
  rows.forEach((row, r) => {
    for (const [column] of row.terms) {
      if (!(column >= 0 && column < columns.length)) throw new RangeError(`row ${r} names column ${column}`);
    }
    const left = row.terms.map(([column, factor]) => signed(factor, `x${column}`)).join(" ");
    if (row.lower === row.upper) lines.push(` r${r}: ${left} = ${row.lower}`);
    else {
      if (Number.isFinite(row.lower)) lines.push(` r${r}a: ${left} >= ${row.lower}`);
      if (Number.isFinite(row.upper)) lines.push(` r${r}b: ${left} <= ${row.upper}`);
    }
  });
  lines.push("Bounds");
  columns.forEach((column, i) => {
    const upper = Number.isFinite(column.upper) ? `${column.upper}` : "+inf";
    lines.push(` ${column.lower} <= x${i} <= ${upper}`);
  });
  const integers = columns.flatMap((column, i) => (column.integer ? [`x${i}`] : []));
  if (integers.length > 0) lines.push("General", ` ${integers.join(" ")}`);
  lines.push("End");
  return lines.join("\n");
}
