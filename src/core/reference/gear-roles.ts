import { commonPractice, type Sourced } from "./source.js";

/** What the trade expects of gear by what it is there for. */
export interface RoleFacts {
  /** A motor turns it: it starts hard, and its current follows its speed. */
  readonly motor: boolean;
  /** Moves water: is not proven dry. */
  readonly movesWater: boolean;
  /** Gives light, so it sits high. */
  readonly light: boolean;
  /** Switched on the gear itself, apart from the switch of its way. */
  readonly ownSwitch: boolean;
  /** Stays on when everything else is turned off to get home. */
  readonly takesHome: boolean;
  /** Upset by the dips of a motor that pulls the boat. */
  readonly upsetByMotor: boolean;
  /** Where it sits as a rule in an open boat. */
  readonly sits: "splash" | "wet" | "bilge";
  /** When it is on in the first outing of a new plan, in the plan's own keys; empty: all along. */
  readonly firstOuting: string;
}

const usual: RoleFacts = {
  motor: false,
  movesWater: false,
  light: false,
  ownSwitch: false,
  takesHome: false,
  upsetByMotor: false,
  sits: "splash",
  firstOuting: "",
};

/** One row for each role of `plan/model/gear.ts`; a role without a row does not compile where its row is asked for. */
export const gearRoleFacts = {
  source: commonPractice,
  rows: {
    lighting: { ...usual, light: true, firstOuting: "from: 2 h, to: 3 h" },
    "navigation light": {
      ...usual,
      light: true,
      takesHome: true,
      upsetByMotor: true,
      sits: "wet",
      firstOuting: "from: 2 h",
    },
    "bilge pump": {
      ...usual,
      motor: true,
      movesWater: true,
      takesHome: true,
      sits: "bilge",
      firstOuting: "runs: 2 min each hour",
    },
    blower: { ...usual, motor: true, firstOuting: "runs: 1 min each hour" },
    pump: { ...usual, motor: true, movesWater: true, firstOuting: "runs: 10 min each hour" },
    electronics: { ...usual, ownSwitch: true, upsetByMotor: true },
    socket: { ...usual, ownSwitch: true, firstOuting: "from: 0 h, to: 1 h" },
    gauge: { ...usual, upsetByMotor: true },
    "sound signal": { ...usual, ownSwitch: true, takesHome: true, firstOuting: "runs: 1 min each hour" },
    propulsion: { ...usual, motor: true, ownSwitch: true, firstOuting: "to: 2 h, level: 50 %" },
    heating: { ...usual, ownSwitch: true, firstOuting: "from: 0 h, to: 1 h" },
    other: usual,
  },
} as const satisfies Sourced & { readonly rows: Readonly<Record<string, RoleFacts>> };
