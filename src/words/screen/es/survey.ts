import type { ScreenWords } from "../en.js";

export const survey: ScreenWords["survey"] = {
  title: "Sus medidas",
  shape: "Se parece a",
  length: "Eslora total",
  beam: "Lo más ancho, de banda a banda",
  depth: "Hondo en el centro, del fondo a la borda",
  hull: "Casco de",
  notMeasured: "sin medir todavía",
  depthMakesForm:
    "Con el largo, el ancho y el hondo el dibujo pasa a ser su forma, que se corrige medida a medida.",
  waitsFor: (wanted) => `El hondo espera a: ${wanted.join(", ")}.`,
  surveyed: (stations) => `Su forma viene de medir en ${stations} estaciones.`,
  fromTable: "Su forma viene de una cartilla de trazado.",
  next: "Lo que más conviene medir ahora",
  nextHint:
    "Donde la forma es menos segura. Semimanga: de crujía hacia fuera, a escuadra, hasta la línea. Altura: desde la línea de base, la altura de la quilla en el centro. Las estaciones se cuentan desde popa.",
  figure: (coordinate, line, at) => `${coordinate} de ${line} a ${at}`,
  coordinates: { "half-breadth": "Semimanga", height: "Altura" },
  unsureBy: (length) => `puede errar ${length}`,
  measured: (count) => (count === 1 ? "Medida en 1 sitio" : `Medida en ${count} sitios`),
  forget: (line, at) => `Quitar lo medido de ${line} a ${at}`,
};
