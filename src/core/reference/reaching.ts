/** What a hand and an arm need. Own judgement, to be put right by the owner's own measure. */
export const reaching = {
  source: { title: "own judgement, an adult's arm in a work shirt", place: "no source", status: "practice" },
  /** Reach behind an opening that passes the whole arm, and one that passes only the forearm [m]. */
  armM: 0.6,
  forearmM: 0.35,
  /** Least opening for the arm up to the shoulder, for the forearm [m]. */
  armOpeningM: 0.15,
  forearmOpeningM: 0.1,
  /** Room behind a face for a hand holding a nut [m]. */
  handRoomM: 0.07,
  /** Part of a passage's area that cables may fill and still be pulled. */
  fillShare: 0.4,
  /** Slack for the knot and the tape with which an end is made fast to the drawn line [m]. */
  knotM: 0.003,
} as const;
