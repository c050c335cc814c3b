import type { CautionKey } from "../core/work/step.js";

/** The usual caution at the very step that needs it. Common practice; the maker's and the local rules come first. */
export const stepCautions: Readonly<Record<CautionKey, string>> = {
  drilling: "Clamp it, a block behind the wall, eyes covered. A step bit grabs as it breaks through.",
  "behind the hole":
    "Look behind first: tank, foam, wiring, fuel, the next skin. Set a stop on the drill. Eyes covered.",
  "hole below water":
    "A hole this low can sink her. Look behind, measure twice, and bed and clamp the fitting as its maker says. No drilling afloat.",
  "crimp pull": "Pull on every crimp. One that moves is cut off and made again.",
  "hot air":
    "It lights fumes and burns hulls and hands. Away from fuel and solvents; something to put out a fire within reach.",
  solder: "Hot metal and fumes: air moving, eyes covered, away from fuel and solvents.",
  sealant:
    "Read the label: gloves, moving air, no flame. Its own cure time comes before the one printed here.",
  "heavy battery": "Lift with two where it is heavy. Keep it upright, posts covered.",
  "battery short":
    "A spanner across the posts welds itself fast and burns. Rings and watch off, the other post covered. Negative off first and on last; the main fuse goes in last of all.",
  lithium:
    "Posts covered, rings and watch off: the short is worse than of lead. Main fuse in last of all. Never open, crush or heat it; charge only as its maker says.",
  "petrol vapour":
    "Air the bilge and smell it before you make the first spark. Posts covered, rings and watch off. Main fuse in last of all.",
  "first power":
    "Fuse in, then switch. If it blows, smells or grows warm: off, and find out why. Never a larger fuse.",
  "pump dry": "A pump that runs dry ruins itself in seconds. Water first, then the switch.",
  "navigation lights":
    "Others steer by them. Arcs, ranges and heights are law: lights certified for your length of boat, set as the rules say.",
  leak: "A trickle now is a flood at sea. Any drop behind: take it off, clean it, bed it again.",
};
