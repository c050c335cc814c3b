import type { RuleCase } from "../case.js";
import { layoutBoat } from "../layout-boat.js";

const spool = (length: string) =>
  `prices: {wire: [{size: 16 AWG, cores: 2, spool: ${length}, price: 20 EUR}]}`;
const more = (text: string) => () => layoutBoat({ more: text });
const trunk = (text: string) => () => layoutBoat({ trunk: `length: 8 ft, size: 16 AWG, ${text}` });

export const partCases = {
  "spool-length": {
    raises: [{ boat: more(spool("5 ft")), at: "trunk", level: "mend", limit: 1.524 }],
    quiet: [more(spool("50 ft"))],
  },
  "negative-stock": {
    raises: [
      { boat: more("stock: {parts: {M12 gland: -2}}"), at: "stock", level: "mend", figure: -2 },
      {
        boat: more("stock: {wire: [{size: 16 AWG, cores: 2, length: 3 m, count: -1}]}"),
        at: "stock",
        level: "mend",
        figure: -1,
      },
    ],
    quiet: [more("stock: {parts: {M12 gland: 0}, wire: [{size: 16 AWG, cores: 2, length: 3 m}]}")],
  },
  "two-currencies": {
    raises: [
      {
        boat: more(
          "prices: {parts: [{item: M12 gland, price: 1.20 EUR}, {item: M12 plug, price: 1.10 USD}]}",
        ),
        at: "prices",
        level: "mend",
      },
    ],
    quiet: [
      more(
        "prices: {currency: EUR, parts: [{item: M12 gland, price: 1.20 EUR}, {item: M12 plug, price: 1}]}",
      ),
    ],
  },
  "price-missing": {
    raises: [
      {
        boat: more("prices: {parts: [{item: M12 gland, price: 1.20 EUR}]}"),
        at: "8 AWG, red",
        level: "unchecked",
      },
    ],
    quiet: [more("")],
  },
  "tap-limits": {
    raises: [
      {
        boat: () =>
          layoutBoat({
            trunk: "length: 8 ft, size: 10 AWG, joint: {end: tap}",
            leads: "length: 3 ft, size: 16 AWG, joint: {start: tap}",
          }),
        at: "leads",
        level: "mend",
      },
    ],
    quiet: [
      () =>
        layoutBoat({
          trunk: "length: 8 ft, size: 16 AWG, joint: {end: tap}",
          leads: "length: 3 ft, size: 16 AWG, joint: {start: tap}",
        }),
    ],
  },
  "barrel-fit": {
    raises: [
      {
        boat: () => layoutBoat({ trunk: "length: 8 ft, size: 4 AWG", leads: "length: 3 ft, size: 4 AWG" }),
        at: "leads",
        level: "mend",
      },
    ],
    quiet: [() => layoutBoat()],
  },
  "step-down": {
    raises: [
      {
        boat: () =>
          layoutBoat({
            lamp: "leads: {size: 20 AWG, length: 8 in}, drop: 10 %",
            leads: "length: 3 ft, size: 12 AWG",
          }),
        at: "leads",
        level: "mind",
      },
    ],
    quiet: [
      () => layoutBoat({ trunk: "length: 8 ft, size: 14 AWG", lamp: "leads: {size: 16 AWG, length: 8 in}" }),
    ],
  },
  "stud-fit": {
    raises: [
      { boat: () => layoutBoat({ panel: "stud: 7 mm" }), at: "trunk", level: "mend", figure: 7 },
      { boat: () => layoutBoat({ panel: "studs per bus: 8" }), at: "helm", level: "unchecked" },
    ],
    quiet: [() => layoutBoat(), () => layoutBoat({ panel: "stud: 0.25 in" })],
  },
  "tab-fit": {
    raises: [
      {
        boat: () =>
          layoutBoat({ lamp: "tab: 5.5 mm", leads: "length: 3 ft, size: 16 AWG, joint: {end: push-on tab}" }),
        at: "leads",
        level: "mend",
        figure: 5.5,
      },
      {
        boat: () =>
          layoutBoat({ lamp: "tab: 2.8 mm", leads: "length: 3 ft, size: 14 AWG, joint: {end: push-on tab}" }),
        at: "leads",
        level: "mend",
        limit: 1,
      },
      {
        boat: () => layoutBoat({ leads: "length: 3 ft, size: 16 AWG, joint: {end: push-on tab}" }),
        at: "lamp",
        level: "unchecked",
      },
    ],
    quiet: [
      () =>
        layoutBoat({ lamp: "tab: 6.3 mm", leads: "length: 3 ft, size: 16 AWG, joint: {end: push-on tab}" }),
    ],
  },
  "strain-relief": {
    raises: [
      {
        boat: () => layoutBoat({ lamp: "strain relief: [9 mm, 12 mm]" }),
        at: "lamp",
        level: "mend",
        limit: 9,
      },
      {
        boat: () => layoutBoat({ lamp: "strain relief: [3 mm, 5 mm]" }),
        at: "lamp",
        level: "mend",
        limit: 5,
      },
    ],
    quiet: [() => layoutBoat({ lamp: "strain relief: [6 mm, 9 mm]" }), trunk("outside: 9 mm")],
  },
} as const satisfies Record<string, RuleCase>;
