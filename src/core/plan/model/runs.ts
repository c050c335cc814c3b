import type { ConductorSize, Endpoint, JointKind, Protection, Surroundings, Switch } from "./common.js";
import type { RunWay } from "./layout.js";

/**
 * One cable (or a bunch of single conductors laid together) between two places.
 * It has an outgoing conductor for each way it carries, and either a return for each (`own`) or one for all (`shared`).
 */
export interface Run extends RunWay {
  readonly name: string;
  readonly from: Endpoint;
  readonly to: Endpoint;
  /** Ways carried, by `panel / way` or by the way's name alone where only one panel has it. Empty: whatever `from` gives. */
  readonly carries: readonly string[];
  /** To gear with a count: to `each` by its own cable, or in a `chain` from one to the next. */
  readonly reaches?: "each" | "chain";
  /** Length of the cable [m]; for `each` and `chain` one length for all or one for each piece of gear. */
  readonly lengthsM: readonly number[];
  readonly size?: ConductorSize;
  readonly returnSize?: ConductorSize;
  readonly returnLengthM?: number;
  readonly legs: "both" | "out" | "return";
  /** `hull`: the metal of the boat carries the return (never right; the tool says so). */
  readonly return?: "own" | "shared" | "hull";
  readonly sheathed?: boolean;
  readonly insulationC?: number;
  readonly conductor: "stranded" | "solid";
  readonly tinned?: boolean;
  /** How long a thin conductor runs outside the sheath [m]. */
  readonly outOfSheathM?: number;
  readonly inEngineSpace: boolean;
  /** Current-carrying conductors of other runs in the same bundle. */
  readonly bundledWith: number;
  /** In-line protection near `from`. */
  readonly protection?: Protection;
  readonly switch?: Switch;
  /** Leaves the battery before its main protection. */
  readonly beforeMain: boolean;
  /** Leaves the battery or panel before its master switch. */
  readonly beforeMaster: boolean;
  readonly jointAtStart?: JointKind;
  readonly jointAtEnd?: JointKind;
  readonly surroundings?: Surroundings;
  readonly colours?: { readonly out?: string; readonly return?: string };
  readonly protectedFromChafe?: boolean;
}
