import type { EdgeSide, EdgeWay } from "../hull/faces/edge-names.js";
import type { FaceName } from "../plan/model/layout.js";
import type { CureKey } from "../reference/cures.js";
import type { ToolKey } from "../reference/tools.js";

export const stepKinds = [
  "survey",
  "battery off",
  "open up",
  "cut box",
  "mark",
  "drill",
  "draw wire",
  "join",
  "seal",
  "mount",
  "connect",
  "secure",
  "label",
  "prove dead",
  "battery on",
  "prove live",
  "close up",
] as const;
export type StepKind = (typeof stepKinds)[number];

/** What a step does, for its sentence. Several tasks share a kind. */
const tasks = [
  "survey boat",
  "survey run",
  "battery off",
  "cover panel",
  "open box",
  "mark box",
  "drill box",
  "deburr box",
  "mark gear",
  "drill gear",
  "seal edge",
  "fit grommet",
  "cut wire",
  "draw wire",
  "join end",
  "shrink",
  "bed gear",
  "seal entries",
  "fill box",
  "mount box",
  "mount panel",
  "mount battery",
  "mount supply",
  "mount gear",
  "connect end",
  "secure run",
  "label run",
  "prove continuity",
  "prove polarity",
  "prove charger polarity",
  "prove insulation",
  "battery on",
  "uncover panel",
  "prove way",
  "prove pump",
  "see navigation lights",
  "leak test",
  "close box",
  "close panel",
] as const;
export type Task = (typeof tasks)[number];

/** A caution shown at that very step; its text stands in words. */
const cautionKeys = [
  "drilling",
  "behind the hole",
  "hole below water",
  "crimp pull",
  "hot air",
  "solder",
  "sealant",
  "heavy battery",
  "mains charger",
  "charger lead",
  "solar panel",
  "panel covered",
  "panel last",
  "battery short",
  "lithium",
  "petrol vapour",
  "first power",
  "pump dry",
  "navigation lights",
  "leak",
] as const;
export type CautionKey = (typeof cautionKeys)[number];

const consumableKeys = [
  "pencil",
  "masking tape",
  "pulling tape",
  "wire",
  "joint",
  "sleeve",
  "solder",
  "edge sealer",
  "sealant",
  "gland",
  "clip",
  "label",
  "screw",
  "fuse",
  "grommet",
  "plug",
] as const;
export type ConsumableKey = (typeof consumableKeys)[number];

export type StepSize =
  | { readonly what: "length"; readonly of: string; readonly m: number }
  | { readonly what: "conductor"; readonly of: string; readonly key: string }
  | { readonly what: "hole"; readonly of: string; readonly mm: number; readonly face?: FaceName }
  | { readonly what: "cut length"; readonly of: string; readonly mm: number; readonly wire: string }
  /** What goes on the end of a conductor, how far it is stripped, and what a pull on it must hold. */
  | {
      readonly what: "end";
      readonly of: string;
      readonly leg: "out" | "return";
      readonly colour?: string;
      readonly part?: string;
      readonly sleeve?: string;
      readonly stripMm: number;
      readonly tool: string;
      readonly pullN?: number;
    }
  | { readonly what: "gland"; readonly of: string; readonly size: string }
  /** Tape readings to set a mark out by; of `along then square` the length along the edge, then the one square to it [m]. */
  | {
      readonly what: "mark";
      readonly of: string;
      readonly method: "two tapes" | "along then square";
      readonly edge?: EdgeSide;
      /** Which way the first reading is laid off along the edge. */
      readonly way?: EdgeWay;
      readonly graduationM: number;
      readonly readings: readonly { readonly from: string; readonly m: number }[];
      readonly check?: { readonly from: string; readonly m: number };
    }
  | { readonly what: "pilot"; readonly of: string; readonly mm: number }
  | { readonly what: "behind"; readonly of: string; readonly words: string }
  /** Openings and holes a cable is led through, in order. */
  | { readonly what: "through"; readonly of: string; readonly passages: readonly string[] }
  | { readonly what: "spacing"; readonly of: string; readonly m: number }
  | { readonly what: "rating"; readonly of: string; readonly a: number };

/** One thing to do, as values. Ids are made of the plan's names, so that they stay true as long as those do. */
export interface Step {
  readonly id: string;
  readonly kind: StepKind;
  readonly task: Task;
  /** Of a step done in part: what of `pieces` was done before, and is no longer listed there. */
  readonly doneBefore?: readonly string[];
  /** Names from the plan, where it is done. */
  readonly at: readonly string[];
  readonly pieces: readonly string[];
  readonly sizes: readonly StepSize[];
  /** What is to be measured there: the key of a group of test points, `way / helm / lamps`. */
  readonly readings: readonly string[];
  /** First the main tool, the one that takes setting up. Empty: bare hands. */
  readonly tools: readonly ToolKey[];
  readonly consumables: readonly { readonly what: ConsumableKey; readonly count: number }[];
  readonly minutes: number;
  /** Must be done in one go: sealant skins, a half-proven circuit tells nothing. */
  readonly inOneGo: boolean;
  readonly caution?: CautionKey;
  readonly drawing?: { readonly sheet: "template" | "marks" | "diagram"; readonly of: string };
}

/** Why one step must wait for another. */
export const precedenceReasons = [
  "measure before cutting",
  "mark before drilling",
  "drill before deburring",
  "drill before sealing",
  "box holes before contents",
  "hole before wire",
  "cut before drawing",
  "wire before joint",
  "joint before shrinking",
  "joint before sealant",
  "edge before sealant",
  "mount before wire",
  "gear before joint",
  "wire before clips",
  "joint before connecting",
  "connect before proving",
  "dead before live",
  "battery last",
  "polarity before charger",
  "cured before wet",
  "prove before closing",
  "label before closing",
  "mark leaned on",
  "largest end first",
  "battery off first",
  "covered before working",
  "panel last",
  "open before working",
] as const;
export type PrecedenceReason = (typeof precedenceReasons)[number];

export interface Precedence {
  readonly before: string;
  readonly after: string;
  readonly reason: PrecedenceReason;
  /** What must cure between the two, and how long [h]. */
  readonly cure?: { readonly key: CureKey; readonly hours: number };
}

export interface WorkGraph {
  readonly steps: readonly Step[];
  readonly precedences: readonly Precedence[];
}
