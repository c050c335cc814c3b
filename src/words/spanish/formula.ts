/** Words that stand in formulas, most of them as subscripts. */
const words: ReadonlyMap<string, string> = new Map([
  ["age", "edad"],
  ["allowed", "admitida"],
  ["charge", "carga"],
  ["cold", "frío"],
  ["conductor", "conductor"],
  ["factor", "factor"],
  ["factors", "factores"],
  ["gear", "aparato"],
  ["given", "dada"],
  ["interrupts", "corte"],
  ["lacking", "falta"],
  ["load", "carga"],
  ["maker", "fabricante"],
  ["nominal", "nominal"],
  ["part", "parte"],
  ["printed", "impresa"],
  ["rated", "medida"],
  ["rating", "calibre"],
  ["reserve", "reserva"],
  ["short", "corto"],
  ["source", "fuente"],
  ["table", "tabla"],
  ["tail", "final"],
]);

/** A formula with its words in Spanish; its letters are those of every language. */
export const formulaInSpanish = (formula: string): string =>
  formula.replaceAll(/[a-z]{3,}/g, (word) => words.get(word) ?? word);
