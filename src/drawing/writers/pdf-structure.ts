import type PDFDocument from "pdfkit";
import { boundsOf } from "../bounds.js";
import { printable } from "../fonts/printable.js";
import type { Group, Part, Shape, Sheet, TableMark, Text } from "../shapes.js";
import { inPoints } from "./pdf-points.js";

type Element = ReturnType<PDFDocument["struct"]>;
/** Draws a shape; `goesOn`: words of the same part follow. */
type Draw = (shape: Shape, goesOn: boolean) => void;

/** What is told of some shapes that follow each other. `mark`: which one it is; what comes again with the same mark goes on. */
type Told =
  | { readonly is: "furniture"; readonly type: "Pagination" | "Layout" }
  | { readonly is: "H1" | "H2" | "P"; readonly mark: object }
  | { readonly is: "figure"; readonly mark: Group; readonly alt: string }
  | (Part & { readonly is: "item" | "cell" });

interface OpenTable {
  readonly element: Element;
  /** Rows that are there already: one that comes again, on the next page, is furniture. */
  readonly rows: Set<object>;
  row: { readonly mark: object; readonly element: Element; next: number } | undefined;
}

/**
 * What is told of a document's pages to those who hear them, in the terms of ISO 32000-1, 14.8: headings, paragraphs, lists, tables whose head
 * cells name their columns, figures with a text in their place; all else is an artifact. A table that goes on over pages stays one, since its cells know it by its mark.
 */
export class PdfStructure {
  private readonly root: Element;
  private readonly tables = new Map<TableMark, OpenTable>();
  private list: { readonly mark: object; readonly element: Element } | undefined;
  /** The part at hand, which goes on while shapes of the same mark come. */
  private open: { readonly mark: object; readonly column: number; readonly element: Element } | undefined;

  constructor(private readonly document: PDFDocument) {
    this.root = document.struct("Document");
    document.addStructure(this.root);
  }

  page({ shapes, heightMm }: Sheet, draw: Draw): void {
    for (const { told, shapes: run } of runsOf(shapes))
      this.put(told, heightMm, () => {
        for (const [at, shape] of run.entries()) draw(shape, shape.kind === "text" && at < run.length - 1);
      });
  }

  end(): void {
    this.close();
    for (const table of this.tables.values()) this.endRow(table);
    this.root.end();
  }

  private put(told: Told, heightMm: number, content: () => void): void {
    // what stands between two items parts their list, or it would be told after both
    if (told.is !== "furniture" && told.is !== "item") this.list = undefined;
    switch (told.is) {
      case "furniture":
        this.furniture(told.type, content);
        break;
      case "figure":
        this.figure(told.mark, told.alt, heightMm, content);
        break;
      case "item":
        this.item(told.list, told.mark, content);
        break;
      case "cell":
        this.cell(told, content);
        break;
      default:
        this.onward(told.mark, 0, () => this.begun(this.root, told.is), content);
    }
  }

  private furniture(type: "Pagination" | "Layout", content: () => void): void {
    if (type === "Layout") this.document.markContent("Artifact");
    else this.document.markContent("Artifact", { type });
    content();
    this.document.endMarkedContent();
  }

  private figure(group: Group, alt: string, heightMm: number, content: () => void): void {
    const { minX, minY, maxX, maxY } = boundsOf(group);
    const bbox = [minX, heightMm - maxY, maxX, heightMm - minY].map(inPoints);
    const [left = 0, top = 0, right = 0, bottom = 0] = bbox;
    this.close();
    const element = this.document.struct("Figure", { alt: printable(alt), bbox: [left, top, right, bottom] });
    this.root.add(element);
    element.add(content).end();
  }

  private item(list: object, mark: object, content: () => void): void {
    const begin = () => {
      if (this.list?.mark !== list) this.list = { mark: list, element: this.begun(this.root, "L") };
      return this.begun(this.begun(this.list.element, "LI"), "LBody");
    };
    this.onward(mark, 0, begin, content);
  }

  private cell(part: Part & { readonly is: "cell" }, content: () => void): void {
    const { table: mark, row, column, across = 1, heads } = part;
    const table = this.tables.get(mark) ?? this.newTable(mark);
    if (table.row?.mark !== row) {
      if (table.rows.has(row)) {
        this.furniture("Pagination", content);
        return;
      }
      this.close();
      this.endRow(table, mark);
      table.rows.add(row);
      table.row = { mark: row, element: this.begun(table.element, "TR"), next: 0 };
    }
    const at = table.row;
    const begin = () => {
      this.fill(at, column, heads);
      at.next = column + across;
      const cell = this.document.struct(
        heads === undefined ? "TD" : "TH",
        heads === undefined ? {} : { scope: heads },
      );
      if (across > 1) {
        const { data } = cell.dictionary;
        data.A = { O: "Table", ColSpan: across, ...(heads === undefined ? {} : { Scope: heads }) };
      }
      at.element.add(cell);
      return cell;
    };
    this.onward(row, column, begin, content);
  }

  private newTable(mark: TableMark): OpenTable {
    this.close();
    const table: OpenTable = { element: this.begun(this.root, "Table"), rows: new Set(), row: undefined };
    this.tables.set(mark, table);
    return table;
  }

  /** Cells without a word stand too, or those behind them would come under other heads. */
  private fill(row: NonNullable<OpenTable["row"]>, to: number, heads: "Column" | "Row" | undefined): void {
    for (; row.next < to; row.next += 1)
      row.element.add(
        heads === "Column" ? this.document.struct("TH", { scope: "Column" }) : this.document.struct("TD"),
      );
  }

  private endRow(table: OpenTable, mark?: TableMark): void {
    const { row } = table;
    if (row === undefined) return;
    const columns =
      mark?.columns ?? [...this.tables].find(([, one]) => one === table)?.[0].columns ?? row.next;
    this.fill(row, columns, undefined);
    row.element.end();
    table.row = undefined;
  }

  private begun(parent: Element, type: string): Element {
    const element = this.document.struct(type);
    parent.add(element);
    return element;
  }

  /** More of the part at hand, or the beginning of another. */
  private onward(mark: object, column: number, begin: () => Element, content: () => void): void {
    if (this.open?.mark !== mark || this.open.column !== column) {
      this.close();
      this.open = { mark, column, element: begin() };
    }
    this.open.element.add(content);
  }

  private close(): void {
    this.open?.element.end();
    this.open = undefined;
  }
}

interface Run {
  readonly told: Told;
  readonly shapes: Shape[];
}

/** Shapes in their order, those told as one together. Groups that are no figure are gone into where they are not moved. */
function runsOf(shapes: readonly Shape[]): Run[] {
  const runs: Run[] = [];
  // words of which nothing is said, one after the other, are one paragraph
  let loose: object | undefined;
  const put = (told: Told, shape: Shape) => {
    const last = runs.at(-1);
    if (last !== undefined && same(last.told, told)) last.shapes.push(shape);
    else runs.push({ told, shapes: [shape] });
  };
  const each = (shape: Shape): void => {
    if (shape.kind === "group" && shape.label !== undefined)
      put({ is: "figure", mark: shape, alt: shape.label }, shape);
    else if (shape.kind === "group" && shape.dx === 0 && shape.dy === 0)
      for (const inner of shape.shapes) each(inner);
    else if (shape.kind === "text") {
      if (shape.text === "") return;
      const told = toldOf(shape, loose ?? {});
      loose = told.is === "P" && shape.part === undefined ? told.mark : undefined;
      put(told, shape);
    } else put({ is: "furniture", type: "Layout" }, shape);
  };
  for (const shape of shapes) each(shape);
  return runs;
}

function toldOf(text: Text, loose: object): Told {
  const { role, part } = text;
  if (role === "foot" || part?.is === "repeat") return { is: "furniture", type: "Pagination" };
  if (role !== undefined)
    return { is: role === "title" ? "H1" : "H2", mark: part?.is === "paragraph" ? part.mark : text };
  if (part === undefined) return { is: "P", mark: loose };
  return part.is === "paragraph" ? { is: "P", mark: part.mark } : part;
}

function same(one: Told, other: Told): boolean {
  if (one.is === "furniture" || other.is === "furniture")
    return one.is === "furniture" && other.is === "furniture" && one.type === other.type;
  if (one.is === "cell" || other.is === "cell")
    return one.is === "cell" && other.is === "cell" && one.row === other.row && one.column === other.column;
  return one.is === other.is && one.mark === other.mark;
}
