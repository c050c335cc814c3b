import type { PointWords } from "../proof/proof-words.js";

/** Which side of a fuse or a switch a point of the circuit is on. */
export const points: PointWords = {
  joint: " (en su unión)",
  fused: " (detrás de su fusible)",
  main: " (detrás de su fusible general)",
  master: " (detrás de su interruptor general)",
  bus: " (barra)",
  out: " $1 (su salida)",
};
