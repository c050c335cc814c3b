import { commonPractice, type Source, type Status } from "../reference/source.js";

/** The US regulation for small craft with petrol engines; good practice on any other. */
export const cfr = (section: string, status: Status = "published"): Source => ({
  title: "33 CFR Part 183 Subpart I",
  place: section,
  status,
});
export const cfrVentilation = (section: string, status: Status = "published"): Source => ({
  title: "33 CFR Part 183 Subpart K",
  place: section,
  status,
});
export const iso10133 = (clause: string, status: Status = "published"): Source => ({
  title: "ISO 10133:2012",
  place: clause,
  status,
});
export const iso13297 = (clause: string, status: Status = "published"): Source => ({
  title: "ISO 13297:2020",
  place: clause,
  status,
});
/** Lights under way, on the sea and on waters that no rule of a state says otherwise of. */
export const colregs = (place: string, status: Status = "published"): Source => ({
  title: "International Regulations for Preventing Collisions at Sea",
  place,
  status,
});
/** The same on the inland waters of the US, as amended to agree with those of the sea. */
export const inlandRules = (section: string, status: Status): Source => ({
  title: "Inland Navigation Rules, 33 CFR Part 83",
  place: section,
  status,
});
/** Read as quoted by others, or recalled; the standard itself was not read. */
export const e11 = (place: string, status: Status = "memory"): Source => ({
  title: "US voluntary small-craft d.c. standard E-11",
  place,
  status,
});
export const practice: Source = commonPractice;
/** Follows from the figures themselves and needs no clause. */
export const physics = (place: string): Source => ({ title: "from the figures", place, status: "computed" });
export const both = (...sources: readonly Source[]) => ({ us: sources, iso: sources });
