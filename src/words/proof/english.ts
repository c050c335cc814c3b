import type { ProofWords, ProvingWords, SheetWords, WaterWords } from "./proof-words.js";

const proving: ProvingWords = {
  points: {
    joint: " (at its joint)",
    fused: " (behind its fuse)",
    main: " (behind its main)",
    master: " (behind its master switch)",
    bus: " (bus)",
    out: " out $1",
  },
  branches: {
    lead: {
      out: (gear) => `${gear}, its own positive lead`,
      return: (gear) => `${gear}, its own negative lead`,
    },
    device: {
      fuse: (of) => `${of}, its fuse`,
      switch: (of) => `${of}, its switch`,
      main: (of) => `${of}, its main`,
      master: (of) => `${of}, its master`,
    },
    out: (run, way) => `${run}, its positive wire (${way})`,
    return: (run) => `${run}, its negative wire`,
    ownLeads: (gear) => `${gear}’s own leads`,
  },
  allOff: "everything off",
  on: (gear) => `${gear} on`,
  probes: {
    voltage: (at, against, on) => `volts from ${at} to ${against}, ${on}`,
    current: (at, on) => `amperes in ${at}, ${on}`,
    ohm: (at, against, apart) => `ohms from ${at} to ${against}, batteries apart${apart}`,
    marking: (at) => `what is printed on ${at}`,
    switches: (gear) => `, switch of ${gear} on`,
    lifted: (wires) => `, ${wires} taken off towards the supply`,
  },
  cut: (joint) => ` (cut its ${joint} and make it anew: when nothing else helps)`,
  open: "open",
  atLeast: (reading) => `at least ${reading}`,
  atMost: (reading) => `at most ${reading}`,
  range: (from, to) => `${from} to ${to}`,
  joined: (names) => names.join(" and "),
  verdicts: {
    within: "as expected",
    low: "too low",
    high: "too high",
    impossible: "cannot be",
    unchecked: "not checked",
    "before the mend": "before the mend",
  },
  faults: {
    well: "Nothing wrong",
    resistance: "A bad joint or contact",
    "two resistances": "Two bad joints or contacts",
    open: "A break",
    "fuse blown": "A blown fuse, or no contact in its holder",
    short: "A short between positive and negative",
    reversed: "Positive and negative swapped",
    "wrong fuse": "A fuse of another rating",
    "gear dead": "The gear itself is dead",
    "battery low": "The battery is low",
    "battery worn": "The battery is worn",
  },
  suspects: {
    well: "Nothing wrong in what was read: a sound boat may show it. What was not read is not known.",
    farEnd: (cable) => `at the far end of ${cable}`,
    more: (ohms) => `, ${ohms} more than it should have`,
    under: (voltage) => `, ${voltage} under the plan's`,
    looksLike: (rating) => `, it looks like ${rating}: a meter hardly sees it, read what is printed on it`,
    first: (part) => ` Look first at ${part}.`,
  },
  parts: {
    conductor: "the wire itself",
    lead: "the lead itself",
    "lead fuse": "the fuse in the lead",
    protection: "the fuse and its holder",
    switch: "its contacts",
    hull: "the hull",
  },
  joint: (kind, end) => (end === undefined ? `the ${kind}` : `the ${kind} at its ${end}`),
  wouldFit: {
    more: "a thousand times as much would fit: look at the range",
    less: "a thousandth would fit: look at the range",
  },
  flipped: {
    probes:
      "with the other sign it would fit: the probes were the other way round; write it without the minus sign",
    "probes or wires":
      "with the other sign it would fit: the probes were the other way round, or the wires are; hold red to positive and read again",
  },
  laterCounts: "the later one counts",
  meterOff: {
    high: (share) =>
      `Every full voltage is about ${share} too high: the battery is on charge, or the meter's own battery is flat. Try the meter on something known before you believe the rest.`,
    low: (share) =>
      `Every full voltage is about ${share} too low: the battery is low, or the meter shows too little. Try the meter on something known before you believe the rest.`,
  },
  differs: (rows) => `differs from reading ${rows}`,
  mended: (place) => `of ${place}`,
  readAgain: "read again since",
  idleMends: {
    "no such place": (place) =>
      `A mend is on record of ${place}, which is nothing in the plan now: it takes no reading back.`,
    "no day": (place) =>
      `The mend of ${place} has no day: what was read before it can't be told from what was read after.`,
  },
  soundBoat: (band) => `a sound boat: ${band}`,
  changed: (reading, was, project, is) => `${reading}: ${was} when ${project} was finished, ${is} now.`,
  unplaced: {
    "no such point": (name) => `the plan has no point ${name} now`,
    "no such branch": (name) => `the plan has no fuse, switch or wire ${name} now`,
    "no such gear": (name) => `the plan has no gear ${name} now`,
    "no such way": (name) => `the plan has no gear ${name} now`,
    "second point missing": () => "the point of the other probe is missing",
    "same point twice": () => "both probes are on one point of the circuit",
  },
};

const sheet: SheetWords = {
  tests: {
    insulation: "Insulation, positive to negative",
    "insulation to hull": "Insulation to the hull",
    "continuity out": "Continuity, positive wire",
    "continuity back": "Continuity, negative wire",
    colours: "Positive to positive",
    "resting voltage": "Battery at rest",
    rating: "Fuse rating",
    "live point": "Supply arrives",
    "switched off": "Switch off",
    "unloaded voltage": "Volts, no load",
    current: "Current",
    "loaded voltage": "Volts, loaded",
    "drop out": "Drop, positive wire",
    "drop back": "Drop, negative wire",
    "pump running": "Pump under load",
    "float switch": "Float switch",
    "seen from": "Seen from",
    leak: "Leak test",
  },
  stops: {
    "never below the limit": "Less: find the leak first.",
    "no way through": "More: a joint is open or bad.",
    "wrong way round": "A minus sign or nothing: swapped or open.",
    "battery not as charged": "Outside: charge it, or doubt it.",
    "not that rating": "Another: change it before power.",
    "still live": "More: the switch is in the wrong wire.",
    "outside the band": "Outside: find it before closing up.",
    "runs hot or dry": "Outside, dry or hot: switch off.",
    "does not start": "It does not start, or does not stop.",
    "not seen": "Dark, or seen outside its arc.",
    "lets water in": "One drop inside: seal again.",
  },
  sections: {
    insulation: () =>
      "Insulation: batteries apart, fuses in, switches on, gear off its joints. Where gear stays joined its switch is off, and the wires behind are not proven",
    continuity: () => "Continuity: batteries apart, fuses in, switches on",
    polarity: (at) =>
      at === ""
        ? "Polarity: by colour, at both ends"
        : `Poles of the lead of ${at}: both ends loose, nothing plugged in, a panel covered`,
    battery: (at) => `Battery ${at}: connected last, everything off`,
    feed: (at) => `Straight from ${at}`,
    way: (at) => `Way ${at}`,
    seen: (at) => `Navigation lights on ${at}: at night, from outside`,
    holes: () => "Holes: a hose for five minutes, someone inside with a torch",
  },
  how: {
    marking: (branch) => `read what is printed on it: ${branch}`,
    clamp: (branch) => `clamp round the wire at ${branch}`,
    ownSwitchOff: "its switch off",
    gearOff: "switch on, gear off",
    hull: (at) => `positive of ${at} to bare metal, then negative to bare metal`,
    colours: (at) => `${at}: positive lead on the positive wire, negative on negative`,
    float: (at) => `lift the float of ${at}, master off`,
    sidelights: (at, arc) =>
      `walk round: ${at}, red to port, green to starboard, each from right ahead to ${arc} abaft the beam; dark beyond`,
    allRound: (at) => `walk right round: ${at}`,
    arc: (at, arc) => `walk round: ${at} over ${arc}, dark beyond`,
    leak: (at) => `hole of ${at}, outside wetted, from below and with the slope`,
  },
  expected: { allRound: "all round", dry: "dry", ownArc: "its own arc", right: "right" },
  instruments: {
    clamp: (range) => `clamp, ${range}`,
    meter: (range) => `meter, ${range}`,
    plainMeter: "meter",
    eyes: "eyes",
    hose: "hose, torch",
  },
};

const water: WaterWords = {
  atRest: "at rest",
  switches: { live: "stays live with the master off", own: "its own switch", none: "no switch" },
  noFuse: "no fuse of its own",
  devices: {
    "blade fuse": "blade fuse",
    "bolted fuse": "bolted fuse",
    "cartridge fuse": "cartridge fuse",
    breaker: "breaker",
  },
  device: (kind, rating) => `${kind} ${rating}`,
  outing: (name, use) => `as in ${name}, ${use} on average`,
  lights: (use) => `navigation lights alone, ${use}`,
  inUse: (count) => `${count} in use`,
  gains: (time) => `gains ${time}`,
  things: { torch: "torch", meter: "meter", "sealed butts": "sealed butts", tape: "tape" },
};

/** What is said about proving in English: on the page, the command line and paper. */
export const english: ProofWords = { proving, sheet, water };
