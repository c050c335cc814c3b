/** A caution: what can hurt, and what is usually done about it. Common practice; the maker's and the local rules come first. */
export interface Caution {
  readonly title: string;
  readonly text: string;
  /** Printed only where the plan has it. */
  readonly of?: "solar charger";
}

const cautions: readonly Caution[] = [
  {
    title: "Battery short circuits",
    text: "A wrench across the posts can weld itself fast and burn. Take off rings and watch. Disconnect the negative first and connect it last. Cover the post you are not working on. Fit the main fuse holder empty and put the fuse in last.",
  },
  {
    title: "Lithium cells",
    text: "Never crush, pierce, open or heat them, and never charge below the maker's lowest temperature. Use only a battery with its own protection inside and a charger made for it. If one swells, smells or grows hot, get away from it and let it burn out outdoors.",
  },
  {
    title: "Lead-acid batteries",
    text: "They give off hydrogen while charging and hold acid. Charge where air moves, no flame or spark nearby, eye protection on, water at hand to rinse. Lift with two where it is heavy, knees bent and the battery upright.",
  },
  {
    title: "Solar panels",
    text: "A panel is live whenever light falls on it, and no switch at the battery stops it. Cover it before hands go near its lead. Part it from its regulator before the battery is taken off, and join it after the battery is on, or in the order its maker gives.",
    of: "solar charger",
  },
  {
    title: "Drilling, grinding and dust",
    text: "Clamp the work, eyes covered, sleeves and hair tied back, no gloves near a turning bit. Mains tools on a socket that trips at a fault to earth, never afloat. Dust of glass, resin, wood and old paint harms lungs and skin: a fine-dust mask, covered skin, vacuum rather than sweep. No chip of metal stays in the bilge.",
  },
  {
    title: "On the trailer, on stands, on a ladder",
    text: "Chock the wheels, and trust neither coupling nor jack alone: prop her under the stern before you climb aboard. Ladder on firm ground and tied. No one under a boat that hangs or is only jacked.",
  },
  {
    title: "Hot air and solder",
    text: "A heat gun and an iron light fumes and burn skin and hulls. Work away from fuel and solvents, on a bench where you can, with air moving and something to put out a fire within reach.",
  },
  {
    title: "Solvents, adhesives and sealants",
    text: "Read the label. Gloves, moving air, no flame. Rags soaked in oil or solvent can heat themselves: lay them flat outdoors to dry.",
  },
  {
    title: "Petrol vapour",
    text: "It is heavier than air and lies in the bilge. Tank, hoses and bilge clear of vapour before any tool or switch sparks. Where petrol is on board, devices in spaces that can hold vapour must be marked as ignition protected by their maker.",
  },
  {
    title: "Holes below the water",
    text: "Every hole low in the hull can sink the boat. Check the other side before drilling, bed and clamp each fitting as its maker says, and watch every one the first time afloat.",
  },
  {
    title: "Navigation lights",
    text: "Others steer by them. Arcs, ranges and heights are set by law: use lights certified for your length of boat, mount them as the rules say, and test them before you leave the shore.",
  },
  {
    title: "Shore power and chargers",
    text: "Anything that meets mains voltage is outside this packet and is work for a licensed electrician. A charger goes on a socket that trips at a fault to earth, dry and in the open. A boat on shore power can make the water round it deadly: no one swims there.",
  },
];

/** The shortest form, for the first page. */
const firstOfAll =
  "Before you begin: read the cautions at the end. Battery negative off first, on last. No live wire without a fuse. No spark near petrol vapour. Every hole below the water looked at twice. Local rules, makers' instructions and licensed practice come before anything printed here. “Not checked” never means fine.";

const deference =
  "These figures are planning aids worked out from what the plan says. They do not replace the rules that hold where the boat is kept and used, the instructions of the makers of battery, gear, conductors and devices, or the judgement of someone licensed for the work. Where they differ from this packet, they are right.";

/** What no plan can answer, whatever its findings say. */
export const neverChecked: readonly string[] = [
  "workmanship: crimps, seals, supports and chafe as they really are",
  "whether parts are genuine and carry the ratings printed on them",
  "lengths and places, unless you measured them",
  "mains voltage, lightning, radio interference, corrosion by stray current",
  "stability, buoyancy and structure of the hull",
];

/** What can hurt and who decides, in one language. */
export interface CautionWords {
  readonly cautions: readonly Caution[];
  readonly firstOfAll: string;
  readonly deference: string;
  readonly neverChecked: readonly string[];
}

export const cautionsInEnglish: CautionWords = { cautions, firstOfAll, deference, neverChecked };
