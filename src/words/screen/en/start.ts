/** The view one meets first. */
export const start = {
  title: "Plan the 12 V or 24 V electrics of your boat",
  lead: "Everything is worked out and kept in this browser. Nothing is sent anywhere.",
  kept: "Plans kept here",
  noneKept: "None yet. Start a new plan, open a file, or look at an example.",
  newPlan: "New plan",
  newPlanHint: "A few questions, and you have a plan to start from.",
  openFile: "Open a file",
  openFileHint: "A plan (.yaml) from this device.",
  examples: "Examples",
  examplesHint: "Invented boats; change anything, your copy is kept apart.",
  exampleKinds: {
    tender: "Rowing tender, 3 m: four lamps and one battery",
    utility: "Aluminium utility boat, 4.6 m: lamps, sounder, pumps, sockets",
    launch: "Open launch, 7 m: 24 V motor, two batteries, 40 pieces of gear",
    "second-season":
      "The utility boat a year on: one project finished, the next in hand, and readings with a fault to find",
  },
  changed: (when: string) => `changed ${when}`,
  remove: "Remove from this browser",
  removeAsk: (name: string) => `Remove “${name}” and all its history from this browser?`,
  removeWarn: "There is no way back. Save a copy first if you may want it again.",
  removeOnlyCopy: "This is the only copy that Skiffloom knows of.",
  dropHere: "Or drop a file here",
  safety: "Before you begin",
  loadingPlans: "Looking for plans …",
  noDatabase:
    "This browser does not let the page keep anything (a private window, or storage is switched off). You can work, but save to a file before you close.",
  nextProject: "Finish a project, or start the next on this boat",
};
