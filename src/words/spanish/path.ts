import type { PathWords } from "../path-words.js";

export const pathInSpanish: PathWords = {
  feed: "alimentación",
  out: "ida",
  return: "retorno",
  lead: "hilos propios",
  fuse: "fusible",
  main: "fusible general",
  switch: "interruptor",
  master: "interruptor general",
};
