import { bandsOf, type Sampling } from "../bands.js";
import type { Bench } from "../bench-network.js";
import type { ProvingInput } from "../input.js";
import { rangeFor } from "../meter-error.js";
import { deadSections } from "./dead-tests.js";
import { batterySections, waySections } from "./live-tests.js";
import { sightSections } from "./sight-tests.js";
import type { SheetSection, SheetTest } from "./types.js";

/** Boats drawn for each state of the boat on the sheet. */
const sheetSamples = 10_000;

/**
 * The test sheet: what to prove, in what order, with the reading to expect and its band.
 * @param bench Circuit as it will be measured; give it the resting voltages once they are known (`benchOf`), and the bands narrow.
 */
export function testSheet(bench: Bench, input: ProvingInput, sampling: Sampling = {}): SheetSection[] {
  const sections = [
    ...deadSections(bench, input),
    ...batterySections(bench, input),
    ...waySections(bench, input),
    ...sightSections(input),
  ];
  const banded = sections.flatMap(({ tests }) => tests.filter(wantsBand));
  const bands = bandsOf(
    bench,
    banded.flatMap(({ probe }) => probe ?? []),
    { samples: sheetSamples, ...sampling },
  );
  const bandOf = new Map(banded.map(({ id }, i) => [id, bands[i]]));
  return sections.map((section) => ({
    ...section,
    tests: section.tests.map((test): SheetTest => {
      const band = bandOf.get(test.id);
      if (!band || !test.probe) return test;
      const most = Math.max(Math.abs(band.low), Math.abs(band.high));
      const { kind } = test.probe;
      const setting = test.setting ?? (kind === "marking" ? undefined : rangeFor(kind, most)?.key);
      return { ...test, band, ...(setting === undefined ? {} : { setting }) };
    }),
  }));
}

const wantsBand = ({ probe, leastOhm, mostV, ratingA }: SheetTest) =>
  probe !== undefined && leastOhm === undefined && mostV === undefined && ratingA === undefined;
