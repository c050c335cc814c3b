import { expect, test } from "vitest";
import { projectFile } from "../core/plan/doc-example.js";
import { skiffloom } from "./run.js";

const readme = projectFile("README.md");

/** What README shows of a command: its words, and the pieces of its output between the gaps it leaves (`…` on a line by itself). */
const shown = [...readme.matchAll(/^ {4}\$ npx skiffloom (.+)\n((?: {4}.*\n|\n(?= {4}(?!\$)))+)/gm)].map(
  ([, words = "", text = ""]) =>
    [words, text.split(/^ +…\n/m).map((piece) => piece.replace(/^ {4}/gm, "").trim())] as const,
);

test("README shows some", () => expect(shown.length).toBeGreaterThanOrEqual(2));

test.each(shown)("README shows what `%s` prints", (words, pieces) => {
  const out = skiffloom(words.split(" ")).out.replaceAll("\u00a0", " ").replace(/ +$/gm, "");
  let from = 0;
  for (const piece of pieces.filter((one) => one !== "")) {
    const at = out.indexOf(piece, from);
    expect(at, `${piece}\n\nis not in, or not in this order:\n\n${out}`).toBeGreaterThanOrEqual(0);
    from = at + piece.length;
  }
});

test("README names each command that there is, and no other", () => {
  const named = (text: string) =>
    [...text.matchAll(/^ {2,4}(?:npx )?skiffloom ([a-z]+)/gm)].map(([, name]) => name);
  expect(named(readme).toSorted()).toEqual(named(skiffloom(["--help"]).out).toSorted());
});
