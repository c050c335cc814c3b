import type { GearRole } from "../../../core/plan/model/gear.js";
import type { Craft } from "../../../core/plan/model/plan.js";
import type { Chemistry } from "../../../core/plan/model/supply.js";

const roles: Readonly<Record<GearRole, string>> = {
  lighting: "Lighting",
  "navigation light": "Navigation light",
  "bilge pump": "Bilge pump",
  blower: "Blower",
  pump: "Pump",
  electronics: "Electronics",
  socket: "Socket",
  gauge: "Gauge",
  "sound signal": "Sound signal",
  propulsion: "Propulsion",
  heating: "Heating",
  other: "Other",
};

const chemistries: Readonly<Record<Chemistry, string>> = {
  flooded: "Flooded lead-acid",
  agm: "AGM lead-acid",
  gel: "Gel lead-acid",
  lifepo4: "Lithium iron phosphate",
};

/** Materials boats of this size are built of. */
const hulls = {
  aluminium: "Aluminium",
  steel: "Steel",
  glass: "Glass fibre",
  wood: "Wood",
  polyethylene: "Polyethylene",
  ABS: "ABS",
  fabric: "Fabric (inflatable)",
} satisfies Partial<Record<NonNullable<Craft["hullMaterial"]>, string>>;

/** The questions a new plan begins with. */
export const asking = {
  title: "A new plan",
  lead: "Answer what you know and leave the rest as it stands; everything can be changed later.",
  boat: "The boat",
  name: "What is it called?",
  usualName: "My boat",
  lengths: "How do you measure?",
  inches: "Feet and inches",
  millimetres: "Millimetres and metres",
  shape: "Which is it most like?",
  length: "How long is it?",
  beam: "How wide, at the widest?",
  depth: "How deep inside, amidships?",
  notMeasured: "not measured yet",
  measureHint:
    "Width and depth give the drawing its true proportions. Depth goes from the bottom at the centreline up to the level of the edge.",
  hull: "What is the hull made of?",
  hullUnknown: "Something else, or not known",
  petrol: "There is petrol on board at times",
  rules: "Whose published limits apply?",
  rulesHint: "Findings are judged by them. Where you boat, your own authority has the last word.",
  us: "US",
  iso: "ISO (Europe and most others)",
  battery: "The battery",
  chemistry: "What kind?",
  capacity: "Capacity printed on it",
  voltage: "Voltage",
  batteryCable: "Cable from battery to switch panel",
  batteryHint: "The one that feeds the switch panel. A motor with a battery of its own comes below.",
  gear: "The gear",
  gearLead:
    "Tick what is on board or planned. The figures are usual ones to begin with: put in what its label says.",
  take: (name: string) => `Take ${name}`,
  draws: "takes, each",
  count: "how many",
  cable: "cable from the panel",
  add: "Another piece of gear",
  straightCable: "cable from its battery",
  role: "what it is there for",
  fed: "fed by",
  feeds: {
    panel: "the switch panel",
    battery: "the battery, with its own fuse",
    own: "a battery of its own",
  },
  ownBattery: (name: string) => `The battery of ${name}`,
  gearName: "name",
  make: "Make the plan",
  notSound: "These answers make no sound plan yet:",
  refused: "A value above is not taken over yet: its field says why. Put it right, or clear it.",
  nameTaken: "Two pieces of gear have one name; give each its own.",
  noName: "A piece of gear needs a name.",
  wholeNumber: "Wanted: a whole number from 1.",
  presets: {
    lamps: "coaming lamp",
    navigation: "all-round light",
    bilge: "bilge pump",
    sounder: "sounder",
    sockets: "usb socket",
    outlet: "12 V socket",
    voltmeter: "voltmeter",
    well: "livewell pump",
    horn: "horn",
    motor: "electric motor",
  },
  roles,
  chemistries,
  hulls,
};
