import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { afterAll, beforeAll, expect, test } from "vitest";
import { goToView, openExample, openRig, type Rig, settled, visit, webFolder, withOffline } from "./help.js";

let rig: Rig;
beforeAll(async () => {
  rig = await openRig();
});
afterAll(() => rig.close());

test("the policy lets only the page's own files in: no inline script, no outside origin", async () => {
  const answer = await fetch(rig.address);
  const policy = answer.headers.get("content-security-policy") ?? "";
  expect(policy).toContain("default-src 'none'");
  expect(policy).toMatch(/script-src 'self';/);
  expect(policy).not.toMatch(/unsafe|https?:|\*/);
  const html = await answer.text();
  expect(html).not.toMatch(/<script(?![^>]*\bsrc=)[^>]*>/);
  expect(html).not.toMatch(/\s(on[a-z]+|style)=/);
  expect(html).toContain('http-equiv="Content-Security-Policy"');
  const { page, complaints } = await visit(rig, withOffline);
  const ran = await page.evaluate(() => {
    const script = document.createElement("script");
    script.textContent = "window.inlineRan = true";
    document.head.append(script);
    return "inlineRan" in window;
  });
  expect(ran).toBe(false);
  const refused = complaints.splice(0);
  expect(refused.length).toBeGreaterThan(0);
  expect(refused.filter((each) => !/violates the following Content Security Policy/.test(each))).toEqual([]);
});

test("nothing is asked of any other origin, nor of this one once all is loaded", async () => {
  const { page } = await visit(rig, withOffline);
  const asked: string[] = [];
  page.on("request", (request) => asked.push(request.url()));
  await openExample(page, "launch");
  for (const view of ["findings", "log", "text", "circuits"] as const) await goToView(page, view);
  await settled(page);
  expect(asked.filter((url) => !url.startsWith(rig.address) && !url.startsWith("blob:"))).toEqual([]);
  await page.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));
});

test("script needed before first use is under 90 kB compressed; for a boat on screen with its figures under 215 kB", async () => {
  const { page } = await visit(rig, withOffline);
  // what comes once the figures stand (of a drag, the full reader of YAML) is told by the moment it is asked for, not by luck
  await page.addInitScript(() => {
    const shown = () => document.querySelector('.ledger[data-fresh="true"]') !== null;
    const watch = new MutationObserver(() => {
      if (!shown()) return;
      watch.disconnect();
      performance.mark("figures stand");
    });
    watch.observe(document, { subtree: true, childList: true, attributes: true });
  });
  const loaded = new Set<string>();
  page.on("response", (response) => {
    if (/\.js$/.test(new URL(response.url()).pathname)) loaded.add(new URL(response.url()).pathname);
  });
  const { gzipSync } = await import("node:zlib");
  const bytes = () =>
    [...loaded]
      .filter((path) => !/-worker/.test(path))
      .map((path) => gzipSync(readFileSync(join(webFolder, path))).length)
      .reduce((sum, size) => sum + size, 0);
  await page.reload();
  await page.waitForLoadState("networkidle");
  expect(loaded.size).toBeGreaterThan(1);
  expect(bytes()).toBeLessThan(90_000);
  await openExample(page, "tender");
  const later = await page.evaluate(() => {
    const stoodMs = performance.getEntriesByName("figures stand")[0]?.startTime ?? Number.NaN;
    const after = performance.getEntriesByType("resource").filter(({ startTime }) => !(startTime <= stoodMs));
    return after.map(({ name }) => new URL(name).pathname);
  });
  for (const path of later) loaded.delete(path);
  expect(loaded.size).toBeGreaterThan(10);
  expect(bytes()).toBeLessThan(215_000);
});

test("no built file names another origin that a browser would ask", () => {
  const scripts = readdirSync(join(webFolder, "assets")).filter((name) => /\.(js|css)$/.test(name));
  for (const name of scripts) {
    const text = readFileSync(join(webFolder, "assets", name), "utf8");
    expect(text.match(/(?:fetch|import|importScripts)\(["']https?:[^"']*/g) ?? []).toEqual([]);
    expect(text.match(/url\(["']?https?:[^)]*/g) ?? []).toEqual([]);
  }
});
