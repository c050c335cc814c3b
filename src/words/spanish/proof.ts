import type { ProofWords } from "../proof/proof-words.js";
import { proving } from "./proving.js";
import { sheet } from "./test-sheet.js";
import { water } from "./water-card.js";

/** What is said about proving in Spanish, for the page. */
export const proofInSpanish: ProofWords = { proving, sheet, water };
