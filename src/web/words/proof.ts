import { parts } from "../../words/screen/en/parts.js";
import { proof } from "../../words/screen/en/proof.js";
import { wordsOf } from "../app/context.js";

export const useWordsOfProof = wordsOf({ parts, proof });
