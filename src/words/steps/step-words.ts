import type { EdgeSide, EdgeWay } from "../../core/hull/faces/edge-names.js";
import type { FaceName } from "../../core/plan/model/layout.js";
import type { CureKey } from "../../core/reference/cures.js";
import type { ToolKey } from "../../core/reference/tools.js";
import type { CautionKey, ConsumableKey, StepKind, Task } from "../../core/work/step.js";
import type { LayoutWords } from "../layout/english.js";
import type { Joining } from "../listed.js";
import type { PathWords } from "../path-words.js";

/** What a title is made of; empty where the step has none of it. */
export interface TitleParts {
  /** Its pieces, and its places. */
  readonly what: string;
  readonly where: string;
  /** ` from helm to fore box`. */
  readonly ends: string;
  /** ` for lamp trunk`, where part of the step was done before. */
  readonly forWhat: string;
  /** Is the step about everything there is? */
  readonly all: boolean;
}

/** All that is said of the steps of the work, in one language. A language that leaves something out does not compile. */
export interface StepWords {
  readonly titles: Readonly<Record<Task, (parts: TitleParts) => string>>;
  readonly fromTo: (from: string, to: string) => string;
  readonly forWhat: (what: string) => string;
  readonly restDone: string;
  readonly kinds: Readonly<Record<StepKind, string>>;
  readonly tools: Readonly<Record<ToolKey, string>>;
  readonly consumables: Readonly<Record<ConsumableKey, readonly [one: string, many: string]>>;
  readonly cures: Readonly<Record<CureKey, string>>;
  /** The usual caution at the very step that needs it. Common practice; the maker's and the local rules come first. */
  readonly cautions: Readonly<Record<CautionKey, string>>;
  /** Figures of a step; lengths and sizes come as written. */
  readonly sizes: {
    readonly alongWay: (length: string) => string;
    readonly cut: (length: string, wire: string) => string;
    readonly conductors: (key: string) => string;
    readonly hole: (bore: string) => string;
    readonly face: Readonly<Record<FaceName, string>>;
    readonly pilot: (bore: string) => string;
    readonly heldEvery: (length: string) => string;
    readonly gland: (size: string) => string;
    readonly leg: Readonly<Record<"out" | "return", string>>;
    readonly strip: (length: string) => string;
    readonly mustHold: (force: string) => string;
    readonly behind: (words: string) => string;
    readonly through: (passages: string) => string;
    readonly reading: (length: string, from: string) => string;
    readonly check: (reading: string) => string;
    readonly edges: Readonly<Record<EdgeSide | "unnamed", string>>;
    readonly ways: Readonly<Record<EdgeWay, string>>;
    readonly thenSquare: (along: string, edge: string, off: string) => string;
  };
  /** Names of parts, wire, tools and colours. */
  readonly layout: LayoutWords;
  /** What the figures add to names of the plan. */
  readonly path: PathWords;
  readonly joining: Joining;
  /** `1 to 6`. */
  readonly range: (from: number, to: number) => string;
  readonly weekdays: readonly string[];
  readonly week: (weekday: string, week: number) => string;
  /** A day, and when on it the work begins. */
  readonly session: (day: string, clock: string) => string;
  readonly days: (count: number) => string;
  /** What holds the end of the work; `title` is the step's own line. */
  readonly binds: {
    readonly start: (title: string) => string;
    readonly hands: (title: string) => string;
    readonly hours: (title: string) => string;
    readonly cure: (title: string, cure: string | undefined) => string;
  };
  readonly proof: {
    readonly proven: string;
    readonly within: string;
    readonly least: (percent: string) => string;
  };
  /** The order in a sentence; the times come as words. */
  readonly order: (hours: string, changes: number, span: string) => string;
}
