/** The little of pdfkit that is used here. Its published types bring in those of Node, which this layer does without. */
declare module "pdfkit" {
  interface Options {
    readonly autoFirstPage: false;
    /** null: no built-in font is loaded. */
    readonly font: null;
    readonly compress: boolean;
    readonly lang: string;
    readonly displayTitle: true;
    readonly tagged: true;
    readonly pdfVersion: "1.7";
    readonly info: Readonly<Record<string, string | Date>>;
  }

  interface PageOptions {
    /** Points. */
    readonly size: readonly [number, number];
    readonly margin: number;
  }

  interface TextOptions {
    readonly lineBreak: false;
    readonly baseline: "alphabetic";
    /** Degrees counter-clockwise about the start of the text. */
    readonly rotation: number;
  }

  class StructureElement {
    add(child: StructureElement): this;
    add(content: () => void): this;
    end(): void;
    readonly dictionary: { readonly data: Record<string, unknown> };
  }

  interface StructureOptions {
    readonly alt?: string;
    readonly scope?: "Column" | "Row";
    /** Points from the upper left corner: left, top, right, bottom. */
    readonly bbox?: readonly [number, number, number, number];
  }

  interface OutlineItem {
    addItem(title: string): OutlineItem;
  }

  export default class PDFDocument {
    constructor(options: Options);
    readonly outline: OutlineItem;
    on(event: "data", take: (chunk: Uint8Array) => void): this;
    on(event: "end", done: () => void): this;
    on(event: "error", failed: (reason: unknown) => void): this;
    addPage(options: PageOptions): this;
    end(): void;
    save(): this;
    restore(): this;
    translate(x: number, y: number): this;
    registerFont(name: string, bytes: Uint8Array): this;
    font(name: string): this;
    fontSize(sizePt: number): this;
    widthOfString(text: string): number;
    text(text: string, x: number, y: number, options: TextOptions): this;
    moveTo(x: number, y: number): this;
    lineTo(x: number, y: number): this;
    bezierCurveTo(x1: number, y1: number, x2: number, y2: number, x: number, y: number): this;
    closePath(): this;
    circle(x: number, y: number, radius: number): this;
    lineWidth(widthPt: number): this;
    dash(lengths: readonly number[], options: Readonly<Record<string, never>>): this;
    undash(): this;
    lineJoin(kind: "round"): this;
    fillColor(colour: string): this;
    strokeColor(colour: string): this;
    stroke(): this;
    fill(): this;
    fillAndStroke(): this;
    /** Without a type: of the layout. */
    markContent(tag: "Artifact", options?: { readonly type: "Pagination" }): this;
    endMarkedContent(): this;
    struct(type: string, options?: StructureOptions): StructureElement;
    addStructure(element: StructureElement): this;
  }
}
