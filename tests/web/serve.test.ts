import { mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from "node:fs";
import { request } from "node:http";
import { networkInterfaces, tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, expect, test } from "vitest";
import { serve } from "../../scripts/serve.js";

let server: Awaited<ReturnType<typeof serve>>;
let port: number;
const folder = mkdtempSync(join(tmpdir(), "skiffloom-serve-"));
beforeAll(async () => {
  mkdirSync(join(folder, "page", "assets"), { recursive: true });
  writeFileSync(join(folder, "secret.txt"), "secret");
  writeFileSync(join(folder, "page", "index.html"), "<!doctype html>");
  writeFileSync(join(folder, "page", ".hidden"), "secret");
  writeFileSync(join(folder, "page", "assets", "a.js"), "1;");
  symlinkSync(join(folder, "secret.txt"), join(folder, "page", "link.txt"));
  server = await serve({ folder: join(folder, "page") });
  port = Number(new URL(server.address).port);
});
afterAll(async () => {
  await server.close();
  rmSync(folder, { recursive: true, force: true });
});

/** Asks for a path as it stands: a browser and fetch would tidy `..` away first. */
function ask(
  path: string,
  more: { method?: string; host?: string } = {},
): Promise<{ status: number; body: string }> {
  return new Promise((done, fail) => {
    const asked = request(
      {
        port,
        path,
        method: more.method ?? "GET",
        host: "127.0.0.1",
        headers: { host: more.host ?? `localhost:${port}` },
      },
      (answer) => {
        let body = "";
        answer.on("data", (bytes: Buffer) => {
          body += bytes.toString();
        });
        answer.on("end", () => done({ status: answer.statusCode ?? 0, body }));
      },
    );
    asked.on("error", fail);
    asked.end();
  });
}

test.each([
  "/../secret.txt",
  "/..%2fsecret.txt",
  "/%2e%2e/secret.txt",
  "/assets/..%2f..%2fsecret.txt",
  "/..\\secret.txt",
  "/link.txt",
  "/.hidden",
  "/%00",
  "/%E0%A4%A",
  "//secret.txt",
  "/assets",
])("%s is not there", async (path) => {
  const { status, body } = await ask(path);
  expect(status).toBe(404);
  expect(body).not.toContain("secret");
});

test("types, headers and methods", async () => {
  const page = await fetch(server.address);
  expect(page.headers.get("content-type")).toBe("text/html; charset=utf-8");
  expect(page.headers.get("x-content-type-options")).toBe("nosniff");
  expect(page.headers.get("content-security-policy")).toContain("frame-ancestors 'none'");
  expect((await fetch(`${server.address}assets/a.js`)).headers.get("content-type")).toContain(
    "text/javascript",
  );
  expect((await ask("/", { method: "POST" })).status).toBe(405);
  expect((await ask("/", { method: "HEAD" })).body).toBe("");
});

test("another name that points here gets nothing", async () => {
  expect((await ask("/", { host: "evil.example:80" })).status).toBe(421);
});

test("it listens on this machine only", async (context) => {
  const outside = Object.values(networkInterfaces())
    .flat()
    .find((each) => each !== undefined && !each.internal && each.family === "IPv4");
  if (!outside) return context.skip("this machine has no other address");
  await expect(fetch(`http://${outside.address}:${port}/`)).rejects.toThrow();
});
