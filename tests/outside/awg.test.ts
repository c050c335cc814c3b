import { expect, test } from "vitest";
import { awgAreaMm2 } from "../../src/core/quantity/conductor-size.js";

// NFPA 70 (NEC), chapter 9, table 8: area in circular mils as printed to four digits (published, read in a reproduction).
test.each([
  [14, 4110],
  [12, 6530],
  [10, 10380],
  [8, 16510],
  [6, 26240],
  [4, 41740],
  [3, 52620],
  [2, 66360],
  [1, 83690],
  [0, 105600],
  [-1, 133100],
  [-2, 167800],
  [-3, 211600],
])("gauge %d has %d circular mils as printed", (gauge, cmil) => {
  const mm2PerCmil = (Math.PI / 4) * 0.0254 ** 2;
  // the table works from diameters rounded to a tenth of a mil, and prints four digits
  expect(Math.abs(awgAreaMm2(gauge) / mm2PerCmil / cmil - 1)).toBeLessThan(0.001);
});

// NBS Handbook 100 (1966), clauses 2.1 and 2.2: 4/0 is 0.4600 in, 36 is 0.0050 in in diameter (published, as quoted in public texts).
test.each([
  [-3, 0.46],
  [36, 0.005],
])("gauge %d is %d in thick by definition", (gauge, inches) =>
  expect(Math.sqrt((awgAreaMm2(gauge) * 4) / Math.PI) / 25.4).toBeCloseTo(inches, 12),
); // rounding of doubles only
