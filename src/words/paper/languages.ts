/** Languages that paper is printed in, and that the command line speaks. */
export const paperLanguages = ["en", "es"] as const;
export type PaperLanguage = (typeof paperLanguages)[number];
