import { type Whole, workOutWhole } from "../../core/layout-figures.js";
import { readPlan } from "../../core/plan/read-text.js";
import type { PdfFonts } from "../../drawing/writers/pdf.js";
import { fileList, makeFile } from "../../packet/files/make-file.js";
import { paperWords } from "../../words/paper/fetch.js";
import { faultDetail } from "../fault.js";
import { withReader } from "../state/full-reader.js";
import type { PrintAnswer, PrintOutcome, PrintRequest } from "./messages.js";

self.addEventListener("message", async ({ data }: MessageEvent<PrintRequest>) => {
  const answer: PrintAnswer = { no: data.no, outcome: await outcomeOf(data) };
  self.postMessage(answer);
});

/** The same files the command line reads; the build puts them beside the page. */
const regularFont = new URL("../../../assets/fonts/SourceSans3-Regular.ttf", import.meta.url);
const semiboldFont = new URL("../../../assets/fonts/SourceSans3-SemiBold.ttf", import.meta.url);

let last: { readonly text: string; readonly whole: Whole } | undefined;

async function outcomeOf({ text, shows, paper, language, wanted }: PrintRequest): Promise<PrintOutcome> {
  try {
    if (last?.text !== text) {
      const read = await withReader(() => readPlan(text));
      if (!read.ok) return { is: "unreadable", problems: read.problems };
      last = { text, whole: workOutWhole(read.plan) };
    }
    const asked = { ...shows, paper };
    const { whole } = last;
    if (wanted.file === "layout") return { is: "layout", layout: whole.layout };
    const words = await paperWords(language);
    if (wanted.file === "list") return { is: "list", list: fileList(whole, asked, words) };
    return { is: "file", made: await makeFile(whole, wanted, asked, houseFonts, words) };
  } catch (error) {
    return { is: "fault", detail: faultDetail(error) };
  }
}

async function houseFonts(): Promise<PdfFonts> {
  const read = async (address: URL) => {
    const answer = await fetch(address);
    if (!answer.ok) throw new Error(`a font could not be read: ${answer.status}`);
    return new Uint8Array(await answer.arrayBuffer());
  };
  const [regular, semibold] = await Promise.all([read(regularFont), read(semiboldFont)]);
  return { regular, semibold };
}
