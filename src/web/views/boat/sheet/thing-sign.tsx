import type { GearRole } from "../../../../core/plan/model/gear.js";
import type { BoatThing } from "../model/things.js";

/** A small sign for each kind of thing, told apart by its shape; its size on screen stays. */
export function ThingSign({ thing: { kind, role } }: { thing: BoatThing }) {
  switch (kind) {
    case "battery":
      return (
        <path className="sign" d="M-7-4H7V5H-7ZM-4.500-4V-6.500M4.500-4V-6.500M-5 .5H-2M2 .5H5M3.500-1V2" />
      );
    case "panel":
      return (
        <path
          className="sign"
          d="M-6-6H6V6H-6ZM-3-2.500H-1M1.500-2.500H3.500M-3 2.500H-1M1.500 2.500H3.500"
        />
      );
    case "box":
      return <path className="sign" d="M-6-5H6V5H-6ZM-6-5L6 5M-6 5L6-5" />;
    case "charger":
      return <path className="sign" d="M-6-5H6V5H-6ZM1-4L-2 .5H2L-1 4" />;
    case "converter":
      return <path className="sign" d="M-6-5H6V5H-6ZM-6 5L6-5" />;
    case "waypoint":
      return <path className="sign" d="M0-4.500L4.500 0L0 4.500L-4.500 0Z" />;
    case "gear":
      return <path className="sign" d={gearSigns[role ?? "other"]} />;
    default:
      return kind satisfies never;
  }
}

const ring = "M-5 0A5 5 0 1 0 5 0A5 5 0 1 0-5 0";
const gearSigns: Readonly<Record<GearRole, string>> = {
  lighting: `${ring}M-3.500-3.500L3.500 3.500M-3.500 3.500L3.500-3.500`,
  "navigation light": `${ring}M0-5V-9M-4.300-2.500L-7.800-4.500M4.300-2.500L7.800-4.500`,
  "bilge pump": `${ring}M-3 2.500V-2.500L0 1L3-2.500V2.500M-7 7.500Q-4.500 5.500-2 7.500T3 7.500T7 7.500`,
  pump: `${ring}M-3 2.500V-2.500L0 1L3-2.500V2.500`,
  blower: `${ring}M0 0L3-3M0 0L3 3M0 0H-4`,
  propulsion: `${ring}M-3 2.500V-2.500L0 1L3-2.500V2.500M-6-6V6`,
  electronics: "M-7-5H7V4H-7ZM-3 7H3",
  socket: `${ring}M-1.500-1.500V1.500M1.500-1.500V1.500`,
  gauge: `${ring}M0 1.500L3-2`,
  "sound signal": "M-6-2.500H-2L4-6V6L-2 2.500H-6Z",
  heating: `${ring}M-3 0Q-1.500-3 0 0T3 0`,
  other: ring,
};
