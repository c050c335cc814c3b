import type { ExpectedWords } from "../problems/problem-words.js";
import { fields } from "../screen/es/fields.js";

/** What would have been right, in Spanish. Words of the plan's format stay as they are written there. */
export const expectedInSpanish: ExpectedWords = {
  kinds: {
    ...fields.kindOf,
    draw: "una potencia, una corriente o una resistencia",
    duty: "cuánto tiempo de cada cuánto",
    date: "un día, con o sin hora,",
    reading: "una tensión, una corriente, una resistencia, `open` o `marked 10 A`",
  },
  forms: {
    list: "una lista, `[uno, otro]`",
    section: "claves con valores, `{clave: valor}`",
    text: "texto",
    "true or false": "true (sí) o false (no)",
    number: "un número",
    "whole number": "un número entero",
    name: "un nombre, o `lugar / salida`",
    price: "un precio, `12.50 EUR` o un número",
    currency: "una moneda en tres letras mayúsculas, como EUR",
    value: "un valor",
  },
  like: (kind, example) => `${kind} como «${example}»`,
  limit: {
    "at least": (limit) => `${limit} o más`,
    above: (limit) => `más de ${limit}`,
    "at most": (limit) => `${limit} o menos`,
  },
  or: (last) => (/^(h?[oóOÓ]|8|11\b)/.test(last) ? "u" : "o"),
};
