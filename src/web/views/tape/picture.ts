import type { SectionPoint } from "../../../core/hull/form/section.js";
import type { StationPicture, StationPoint } from "../../../drawing/hull/station-view.js";
import type { FormTable, TableColumn, TableRow } from "./table.js";

/** What is known of a station, for its drawing: measured, or else as the form has it. */
export function pictureOf(
  table: FormTable | undefined,
  row: TableRow,
  section: readonly SectionPoint[],
  { line, coordinate }: TableColumn,
): StationPicture {
  const columns = table?.columns ?? [];
  const rows = table?.rows ?? [];
  const lengthAt = (column: TableColumn | undefined, of: TableRow) => {
    if (column === undefined) return { valueM: 0, measured: true };
    const measured = of.figures.get(column.key)?.valueM;
    const valueM = measured ?? of.drawn.get(column.key);
    return valueM === undefined ? undefined : { valueM, measured: measured !== undefined };
  };
  const points = [...new Set(columns.map((column) => column.line))].map((name): StationPoint => {
    const column = (wanted: TableColumn["coordinate"]) =>
      columns.find((one) => one.line === name && one.coordinate === wanted);
    const [half, height] = [lengthAt(column("half-breadth"), row), lengthAt(column("height"), row)];
    return { line: name, ...(half && { half }), ...(height && { height }) };
  });
  const all = (wanted: TableColumn["coordinate"]) =>
    rows.flatMap((one) =>
      columns
        .filter((column) => column.coordinate === wanted)
        .flatMap((column) => lengthAt(column, one)?.valueM ?? []),
    );
  const heights = all("height");
  return {
    section,
    points,
    now: { line, coordinate },
    halfM: Math.max(0.3, ...all("half-breadth")),
    lowM: Math.min(0, ...heights),
    highM: Math.max(0.3, ...heights),
  };
}
