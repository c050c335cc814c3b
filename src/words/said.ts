/** The shape of some words: what one language says as a text another may say as any other. */
export type Said<Words> = {
  readonly [Key in keyof Words]: Words[Key] extends string
    ? string
    : Words[Key] extends (...given: infer Given) => string
      ? (...given: Given) => string
      : Words[Key] extends readonly string[]
        ? readonly string[]
        : Said<Words[Key]>;
};
