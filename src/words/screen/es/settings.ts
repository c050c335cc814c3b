import type { ScreenWords } from "../en.js";

export const settings: ScreenWords["settings"] = {
  title: "Ajustes",
  forYou: "Se guardan para ti en este navegador; el plan queda como está.",
  light: "Luz",
  day: "Día",
  dusk: "Crepúsculo",
  duskHint: "Tenue y cálida, para ojos hechos a la oscuridad.",
  lengths: "Longitudes",
  asPlan: "Como el plan",
  inches: "Pulgadas",
  millimetres: "Milímetros",
  paper: "Papel",
  letter: "Carta",
  a4: "A4",
  textSize: "Tamaño del texto",
  sizes: { usual: "Normal", large: "Grande", larger: "Mayor", largest: "Máximo" },
  language: "Idioma",
};
