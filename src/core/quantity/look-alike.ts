/**
 * Names that are the same to the eye. Letters composed and taken apart (`é`) are one in Unicode's own terms and are brought to one form
 * wherever a plan or a table is read (Unicode Standard Annex 15, form C). Width and marks that cannot be seen are left as they are
 * written, and told where two names differ by nothing else (Annex 44, Default_Ignorable_Code_Point).
 */

/** Letters with their marks as one, where Unicode has them so. */
export const composed = (text: string): string => (plain.test(text) ? text : text.normalize("NFC"));
const plain = /^[\n -~]*$/;
/** Plain words with one blank between them look like themselves. */
const tidy = /^(?:[!-~]+(?: [!-~]+)*)?$/;

const hidden = /[\p{Default_Ignorable_Code_Point}\p{Cf}]/gu;
/** Full-width Latin, half-width kana and their like, and the wide blank. */
const wide = /[\u3000\uFF01-\uFFEE]/g;
const blanks = /[\s\u00A0\u2000-\u200A\u202F\u205F]+/g;

/** What a name looks like: without marks that cannot be seen, in the usual width, any blank as one. */
export function looks(text: string): string {
  if (tidy.test(text)) return text;
  return composed(
    text
      .replace(hidden, "")
      .replace(wide, (sign) => sign.normalize("NFKC"))
      .replace(blanks, " ")
      .trim(),
  );
}

/** The text with what cannot be seen in it spelt out, `lamp[U+200B]`. */
export const revealed = (text: string): string => (plain.test(text) ? text : text.replace(hidden, spelt));

/** As `revealed`, and wide letters and odd blanks spelt out too. */
export const revealedWhole = (text: string): string =>
  revealed(text)
    .replace(wide, spelt)
    .replace(/[\u00A0\u2000-\u200A\u202F\u205F]/g, spelt);

function spelt(sign: string): string {
  const code = (sign.codePointAt(0) ?? 0).toString(16).toUpperCase().padStart(4, "0");
  return `[U+${code}]`;
}

/** Things whose names look like one that came before and are another, with that. */
export function alikes<Thing>(
  things: Iterable<Thing>,
  nameOf: (thing: Thing) => string,
): { readonly thing: Thing; readonly first: Thing }[] {
  const all = [...things];
  if (all.every((thing) => tidy.test(nameOf(thing)))) return [];
  const seen = new Map<string, Thing>();
  return all.flatMap((thing) => {
    const shape = looks(nameOf(thing));
    const first = seen.get(shape);
    if (first === undefined) seen.set(shape, thing);
    return first === undefined || nameOf(first) === nameOf(thing) ? [] : [{ thing, first }];
  });
}
