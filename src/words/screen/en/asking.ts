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
  kind: "What kind of boat is it?",
  usualKind: "skiff",
  length: "How long is it?",
  hull: "What is the hull made of?",
  hullUnknown: "Something else, or not known",
  petrol: "There is petrol on board at times",
  rules: "Whose rules?",
  us: "US",
  iso: "ISO (Europe and most others)",
  battery: "The battery",
  chemistry: "What kind?",
  capacity: "Capacity printed on it",
  voltage: "Voltage",
  batteryCable: "Cable from battery to switch panel",
  gear: "The gear",
  gearLead:
    "Tick what is on board or planned. The figures are usual ones to begin with: put in what its label says.",
  take: (name: string) => `Take ${name}`,
  draws: "takes, each",
  count: "how many",
  cable: "cable from the panel",
  add: "Another piece of gear",
  role: "what it is there for",
  gearName: "name",
  make: "Make the plan",
  notSound: "These answers make no sound plan yet:",
  nameTaken: "Two pieces of gear have one name; give each its own.",
  noName: "A piece of gear needs a name.",
  wholeNumber: "Wanted: a whole number from 1.",
  presets: {
    lamps: "coaming lamp",
    navigation: "all-round light",
    bilge: "bilge pump",
    sounder: "sounder",
    sockets: "usb socket",
    voltmeter: "voltmeter",
    well: "livewell pump",
    horn: "horn",
  },
  roles,
  chemistries,
  hulls,
};
