/** Terms of the trade in plain words, for whoever taps one. */
export const terms = {
  title: "Words of the trade",
  lead: "What they mean here. A dotted question mark beside a word opens the same.",
  whatIs: (term: string) => `What is meant by “${term}”?`,
  of: {
    ampacity: {
      name: "ampacity",
      means: "The most current a conductor may carry for good before its insulation gets too hot.",
    },
    "as built": {
      name: "as built",
      means: "What really is in the boat, where it differs from what was planned.",
    },
    bundle: {
      name: "bundle",
      means: "Cables that run tied together. They warm each other, so each may carry less.",
    },
    bus: { name: "bus", means: "A metal bar with several studs, where many conductors meet at one point." },
    corner: {
      name: "corner",
      means:
        "One set of circumstances the electrics must hold in: the usual one; the worst drop (battery low, copper hot, everything on); the highest voltage, on charge.",
    },
    drop: {
      name: "voltage drop",
      means:
        "What is lost in conductors and joints on the way from the battery to the gear and back. Lamps dim and pumps slow down by it.",
    },
    freeboard: { name: "freeboard", means: "Height of the boat's edge over the water." },
    fuse: {
      name: "fuse",
      means: "The weak link made on purpose: it opens before the conductor behind it gets too hot.",
    },
    gland: {
      name: "gland",
      means: "A fitting that lets a cable into a box and keeps the water out, by squeezing round it.",
    },
    joint: {
      name: "joint",
      means: "A place where conductors are joined: a crimp, a terminal on a stud, a plug.",
    },
    outing: { name: "outing", means: "A day on the water: what is on from when till when." },
    reserve: {
      name: "reserve",
      means:
        "The part of a battery one will not use, to spare it and to get home. Hours to reserve: how long an outing can go on until only that is left.",
    },
    run: {
      name: "run",
      means: "One cable from one place to another, with the way it takes through the boat.",
    },
    sheer: { name: "sheer", means: "The line of the boat's upper edge, from bow to stern." },
    station: { name: "station", means: "A cut straight across the boat, at a stated distance from one end." },
    way: {
      name: "way",
      means:
        "One switched outlet of a panel with its own fuse. Everything behind it goes on, off and out together.",
    },
  },
};
export type TermId = keyof typeof terms.of;
