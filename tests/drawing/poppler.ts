import { execFileSync } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";

/** Runs one of the Debian `poppler-utils` on a PDF; says so where they are not installed. */
export function poppler(
  tool: "pdftotext" | "pdfinfo" | "pdffonts",
  pdf: Uint8Array,
  options: readonly string[] = [],
): string {
  const folder = mkdtempSync(join(tmpdir(), "skiffloom-pdf-"));
  try {
    const file = join(folder, "packet.pdf");
    writeFileSync(file, pdf);
    const output = tool === "pdftotext" ? ["-"] : [];
    return execFileSync(tool, [...options, file, ...output], { encoding: "utf8", maxBuffer: 1 << 26 });
  } catch (reason) {
    if (reason instanceof Error && "code" in reason && reason.code === "ENOENT")
      throw new Error(`${tool} is not installed; it is in the Debian package poppler-utils`);
    throw reason;
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}
