import { nearestOf } from "../../quantity/nearest.js";
import { startingForms } from "../../reference/starting-forms.js";
import type { CraftForm } from "../model/form.js";
import type { FacePlan } from "../model/hull.js";
import type { Place, Side } from "../model/placing.js";
import type { Plan } from "../model/plan.js";
import type { Path, ReadCode, ReadProblem } from "../source/problem.js";
import type { Registry } from "./registry.js";

type More = Partial<Omit<ReadProblem, "code" | "line" | "column" | "path">>;
type Tell = (code: ReadCode, path: Path, found: string, more?: More) => void;

/** Names in the sections about the hull: lines, faces, reference points, marks. */
export function checkHullNames(plan: Plan, names: Registry, tell: Tell): void {
  new HullNames(plan, names, tell).check();
}

class HullNames {
  private readonly lines: readonly string[] | undefined;
  private readonly faces: ReadonlyMap<string, FacePlan>;
  private readonly references: ReadonlySet<string>;

  constructor(
    private readonly plan: Plan,
    private readonly names: Registry,
    private readonly tell: Tell,
  ) {
    this.lines = linesOf(plan.craft.form);
    this.faces = new Map(plan.hull.faces.map((face) => [face.name, face]));
    this.references = new Set(plan.hull.references.map(({ name }) => name));
  }

  check(): void {
    this.checkForm();
    for (const { name, place, straightTo, measured } of this.plan.hull.references) {
      const path = ["references", name];
      if (place.kind === "face") {
        this.checkFace(place.face, [...path, "face"]);
        this.checkEdge(place.place.edge, this.faces.get(place.face), path);
      } else if (place.kind !== "at") this.checkLine(place.line, [...path, "on"]);
      for (const face of straightTo) this.checkFace(face, [...path, "straight to"]);
      for (const [index, { from }] of measured.entries())
        this.checkReference(from, [...path, "measured", index, "from"]);
    }
    for (const face of this.plan.hull.faces) this.checkFacePlan(face);
    for (const { name, placing } of this.plan.gear) {
      if (placing === undefined) continue;
      const path = ["gear", name];
      this.checkFace(placing.on, [...path, "on"]);
      const face = this.faces.get(placing.on);
      this.checkSide(face, placing, path);
      for (const [index, place] of placing.places.entries())
        this.checkPlace(place, face, placing.places.length > 1 ? [...path, "at", index] : [...path, "at"]);
      if (placing.row) {
        const { edge, countedFrom } = placing.row;
        this.checkEdge(edge, face, [...path, "row"]);
        if (countedFrom !== undefined) this.checkReference(countedFrom, [...path, "row", "counted from"]);
      }
    }
    for (const { mark, from } of this.plan.hull.checked) this.checkReading(mark, from);
  }

  private checkForm(): void {
    const { form } = this.plan.craft;
    if (form === undefined) return;
    const path = ["craft", "form"];
    if (form.kind === "starting form") {
      for (const key of ["length", "beam"] as const)
        if (this.plan.craft[`${key}M`] === undefined)
          this.tell("missing key", ["craft"], key, { expected: { kind: "keys", of: [key] } });
      for (const [index, { line }] of form.measured.entries())
        this.checkLine(line, [...path, "measured", index, "line"]);
    }
    if (form.kind !== "survey") return;
    const order = this.lines ?? [];
    for (const [index, one] of form.checks.entries()) {
      this.checkLine(one.line, [...path, "checks", index, "line"]);
      if (one.kind !== "girth") continue;
      const others = order.filter((name) => name !== one.line);
      if (!others.includes(one.to))
        this.tell("unknown line", [...path, "checks", index, "to"], one.to, choice(others));
    }
  }

  private checkFacePlan(face: FacePlan): void {
    const path = ["faces", face.name];
    if (face.shape.kind === "strip") {
      const { lower, upper } = face.shape;
      this.checkLine(lower, [...path, "strip", 0]);
      const order = this.lines;
      if (order?.includes(lower)) {
        const above = order.slice(order.indexOf(lower) + 1);
        // written the wrong way round it is the lower one that has nothing above it
        if (above.length === 0)
          this.tell("unknown line", [...path, "strip", 0], lower, choice(order.slice(0, -1)));
        else if (!above.includes(upper))
          this.tell("unknown line", [...path, "strip", 1], upper, choice(above));
      }
    }
    for (const { name, at } of face.openings) this.checkPlace(at, face, [...path, "openings", name, "at"]);
    for (const one of face.holes) {
      const inner = [...path, "holes", one.name];
      this.checkPlace(one.at, face, [...inner, "at"]);
      this.checkSide(face, one, inner);
    }
  }

  private checkSide(face: FacePlan | undefined, one: { side: Side; pair: boolean }, path: Path): void {
    if (face === undefined || face.pair) return;
    if (one.pair) this.tell("one side only", [...path, "pair"], face.name);
    else if (one.side === "starboard") this.tell("one side only", [...path, "side"], face.name);
  }

  private checkPlace(place: Place, face: FacePlan | undefined, path: Path): void {
    this.checkEdge(place.edge, face, path);
    if (place.from !== undefined) this.checkReference(place.from, [...path, "from"]);
  }

  private checkEdge(edge: Place["edge"], face: FacePlan | undefined, path: Path): void {
    if (edge === undefined || face === undefined) return;
    const { shape } = face;
    const right = shape.kind === "flat" ? undefined : edge.off === "below" ? shape.upper : shape.lower;
    if (edge.line !== right)
      this.tell("unknown line", [...path, edge.off], edge.line, choice(right === undefined ? [] : [right]));
  }

  private checkReading(mark: string, from: string): void {
    const path = ["checked", mark];
    if (!this.isMark(mark)) this.tell("unknown gear", path, mark, near(mark, this.marks()));
    if (!this.references.has(from) && !this.isMark(from))
      this.tell("unknown reference", [...path, from], from, near(from, this.references));
  }

  /** A piece of gear that stands on a face, or a hole of a face: `drain`, or `drain starboard` of a pair. */
  private isMark(name: string): boolean {
    const piece = this.names.pieceOf(name)?.group ?? name;
    const gear = this.plan.gear.find((one) => one.name === piece);
    if (gear?.placing && (gear.count === 1) === (piece === name)) return true;
    return this.plan.hull.faces.some(({ holes }) => holes.some((one) => holeNames(one).includes(name)));
  }

  private marks(): string[] {
    return this.plan.gear.flatMap(({ name, count, placing }) =>
      placing === undefined ? [] : count === 1 ? [name] : [`${name} 1`],
    );
  }

  private checkLine(line: string, path: Path): void {
    if (this.lines !== undefined && !this.lines.includes(line))
      this.tell("unknown line", path, line, choice(this.lines, line));
  }

  private checkFace(name: string, path: Path): void {
    if (!this.faces.has(name)) this.tell("unknown face", path, name, near(name, this.faces.keys()));
  }

  private checkReference(name: string, path: Path): void {
    if (!this.references.has(name)) this.tell("unknown reference", path, name, near(name, this.references));
  }
}

/** What the marks of a hole without gear are called: of a pair, the one to starboard says so. */
export function holeNames(hole: { readonly name: string; readonly pair: boolean }): string[] {
  return hole.pair ? [hole.name, `${hole.name} starboard`] : [hole.name];
}

/** Lines of a form; undefined where only its table will tell. */
function linesOf(form: CraftForm | undefined): readonly string[] | undefined {
  if (form === undefined) return [];
  if (form.kind === "survey") return form.lines.map(({ name }) => name);
  return form.kind === "starting form"
    ? startingForms.kinds[form.shape].lines.map(({ name }) => name)
    : undefined;
}

function near(name: string, known: Iterable<string>): More {
  const found = nearestOf(name, known);
  return found === undefined ? {} : { nearest: found };
}

function choice(of: readonly string[], name = ""): More {
  return { expected: { kind: "choice", of }, ...near(name, of) };
}
