/** What a hand with a tape and a square can do. Figures for the marks; nothing here is a rule of law. */
export const settingOut = {
  crossing: {
    source: {
      title: "keep the ray angle between about 30° and 150°, best 90°",
      place: "surveyors' practice",
      status: "practice",
    },
    minDeg: 30,
    maxDeg: 150,
  },
  tape: {
    source: {
      title: "spread of one reading of a steel tape by one hand on a boat",
      place: "no source; own judgement",
      status: "practice",
    },
    sigmaM: 0.0008,
    longestM: 5,
    /** Of a reading of the form: a rule held up to a line in the air. */
    formSigmaM: 0.002,
    /** How sure the place of a reference point is: an edge or a screw one can put a finger on. */
    referenceSigmaM: 0.0005,
  },
  graduation: {
    source: { title: "usual tapes", place: "finest division one reads at arm's length", status: "practice" },
    inchM: 0.0254 / 16,
    metricM: 0.001,
  },
  tolerance: {
    source: {
      title: "how far a lamp may stand off its row before one sees it",
      place: "no source; own judgement",
      status: "practice",
    },
    markM: 0.002,
    /** A thing nearer a face than this lies on it. */
    onFaceM: 0.002,
  },
  square: {
    source: {
      title: "spread of a hand-held square against a curved edge",
      place: "no source; own judgement",
      status: "practice",
    },
    sigmaDeg: 0.5,
  },
  /** One standard deviation of where a hand sets a mark, and of how far two sides of a home-built boat differ before it is remarkable. */
  hand: {
    source: {
      title: "setting a mark; symmetry of two sides",
      place: "no source; own judgement",
      status: "practice",
    },
    setSigmaM: 0.001,
    symmetrySigmaM: 0.0015,
    slipSigmaM: 0.01,
  },
} as const;
