/** How a language tells the keys of a thing in a plan where a form asks for them. In the file they are the same in every language. */
export interface KeyWords {
  /** A key by its name in the file. */
  readonly label: (key: string) => string;
  /** What a key means, by the sentence of its schema. */
  readonly hint: (says: string) => string;
  /** One of the words a key may be given. */
  readonly choice: (word: string) => string;
}

export const keysInEnglish: KeyWords = {
  label: (key) => key,
  hint: (says) => says,
  choice: (word) => word,
};
