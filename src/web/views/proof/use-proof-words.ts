import { english } from "../../../words/proof/english.js";
import { inLanguage } from "../../parts/in-language.js";

/** What is said about proving, in the person's language. */
export const useProofWords = inLanguage(
  english,
  async () => (await import("../../../words/spanish/proof.js")).proofInSpanish,
);
