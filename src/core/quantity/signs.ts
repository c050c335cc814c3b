/** What people type or paste, brought to one sign each. Only signs are changed, never digits or words. */
const oneSign: ReadonlyMap<string, string> = new Map([
  ["\u2212", "-"], // minus sign
  ["\u2010", "-"], // hyphen
  ["\u2011", "-"], // hyphen that does not break
  ["\u2032", "'"], // prime: feet
  ["\u2019", "'"],
  ["\u2018", "'"],
  ["\u2033", '"'], // double prime: inches
  ["\u201d", '"'],
  ["\u201c", '"'],
  ["\u2044", "/"], // fraction slash
  ["\u2126", "Ω"], // ohm sign, to the Greek letter
  ["\u03bc", "µ"], // Greek mu, to the micro sign
  ["\u00ba", "°"], // masculine ordinal, often typed for a degree
  ["\u02da", "°"],
  ["\u2103", "°C"],
  ["\u2109", "°F"],
  ["\u00a0", " "],
  ["\u2007", " "],
  ["\u2009", " "],
  ["\u202f", " "],
]);

const fractionSigns: ReadonlyMap<string, string> = new Map([
  ["½", "1/2"],
  ["¼", "1/4"],
  ["¾", "3/4"],
  ["⅓", "1/3"],
  ["⅔", "2/3"],
  ["⅛", "1/8"],
  ["⅜", "3/8"],
  ["⅝", "5/8"],
  ["⅞", "7/8"],
]);

/** Text with one sign for each meaning: `7½″` becomes `7 1/2"`. */
export function plainSigns(text: string): string {
  if (/^[ -~]*$/.test(text)) return text.replaceAll("''", '"').trim();
  let plain = "";
  for (const sign of text) {
    const fraction = fractionSigns.get(sign);
    if (fraction === undefined) plain += oneSign.get(sign) ?? sign;
    else plain += /\d\s*$/.test(plain) ? ` ${fraction}` : fraction;
  }
  return plain.replaceAll("''", '"').trim();
}
