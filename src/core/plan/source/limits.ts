/**
 * How much a plan may hold. Chosen so that 20,000 pieces of gear written out one by one, each with its own run
 * (about 6 million characters), pass with room, and a hostile file is refused before it costs more than seconds.
 */
export const limits = {
  /** Size of the file [bytes], and of its text [characters]. */
  maxBytes: 16 * 1024 * 1024,
  /** Sections within sections. The format itself needs 7. */
  maxDepth: 24,
  /** Values, keys included; what an alias stands for counts each time. */
  maxValues: 2_000_000,
  /** Signs and words of YAML that the full reader takes in, for writing that the quick reader does not know. */
  maxSigns: 5_000_000,
  maxAliases: 2_000,
  /** Pieces of gear, counts added up. */
  maxGear: 100_000,
  /** Problems told in one reading. */
  maxProblems: 50,
  maxNameLength: 80,
  maxTextLength: 2_000,
  /** Letters of a table of offsets. */
  maxTableLength: 200_000,
} as const;
