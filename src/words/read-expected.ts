import type { ExpectedWords } from "./problems/problem-words.js";
import { fields } from "./screen/en/fields.js";

/** What would have been right, in English. */
export const expectedInEnglish: ExpectedWords = {
  kinds: {
    ...fields.kindOf,
    mass: "a weight",
    draw: "a power, a current or a resistance",
    "clock time": "a time of day",
    duty: "how long out of how long",
    date: "a day, with or without a time,",
    reading: "a voltage, a current, a resistance, `open` or `marked 10 A`",
  },
  forms: {
    list: "a list, `[one, other]`",
    section: "keys with values, `{key: value}`",
    text: "text",
    "true or false": "true or false",
    number: "a number",
    "whole number": "a whole number",
    name: "a name, or `place / outlet`",
    price: "a price, `12.50 EUR` or a number",
    currency: "a currency in three capital letters, like EUR",
    value: "a value",
  },
  like: (kind, example) => `${kind} like “${example}”`,
  limit: {
    "at least": (limit) => `${limit} or more`,
    above: (limit) => `more than ${limit}`,
    "at most": (limit) => `${limit} or less`,
  },
  or: () => "or",
};
