// Serves a folder on this machine only. For the page, and for its tests.
import { createReadStream, realpathSync, statSync } from "node:fs";
import { createServer } from "node:http";
import { extname, join, normalize, sep } from "node:path";

const types = {
  ".html": "text/html; charset=utf-8",
  ".js": "text/javascript; charset=utf-8",
  ".css": "text/css; charset=utf-8",
  ".svg": "image/svg+xml",
  ".png": "image/png",
  ".woff2": "font/woff2",
  ".ttf": "font/ttf",
  ".json": "application/json",
  ".webmanifest": "application/manifest+json",
  ".yaml": "application/yaml; charset=utf-8",
  ".txt": "text/plain; charset=utf-8",
};

/** The same policy stands in the page itself; here it also forbids others to frame it. */
export const policy =
  "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data: blob:; font-src 'self'; " +
  "connect-src 'self'; worker-src 'self'; manifest-src 'self'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'";

const headers = {
  "Content-Security-Policy": policy,
  "X-Content-Type-Options": "nosniff",
  "Referrer-Policy": "no-referrer",
  "Cross-Origin-Opener-Policy": "same-origin",
  "Cross-Origin-Resource-Policy": "same-origin",
  "Permissions-Policy": "camera=(), microphone=(), geolocation=(), payment=(), usb=()",
};

/** The file an address stands for, or undefined: outside the folder, hidden, or not there. */
function fileFor(folder, address) {
  let path;
  try {
    // put behind a host, so that `//name` is a path too
    path = decodeURIComponent(new URL(`http://localhost${address}`).pathname);
  } catch {
    return undefined;
  }
  if (path.includes("\0") || path.split("/").some((part) => part.startsWith("."))) return undefined;
  const wanted = normalize(join(folder, path.endsWith("/") ? `${path}index.html` : path));
  try {
    // links are followed before the folder is compared
    const real = realpathSync(wanted);
    return real.startsWith(folder + sep) && statSync(real).isFile() ? real : undefined;
  } catch {
    return undefined;
  }
}

/**
 * Starts a server on the loopback address.
 * @param {{folder: string, port?: number}} options port 0 (or left out): any that is free.
 * @returns {Promise<{address: string, close: () => Promise<void>}>}
 */
export function serve({ folder, port = 0 }) {
  const real = realpathSync(folder);
  const server = createServer((request, response) => {
    const send = (status, more = {}) => response.writeHead(status, { ...headers, ...more });
    // a page elsewhere that has its own name point here must not read plans through it
    const host = (request.headers.host ?? "").replace(/:\d+$/, "");
    if (host !== "localhost" && host !== "127.0.0.1" && host !== "[::1]") return send(421).end();
    if (request.method !== "GET" && request.method !== "HEAD") return send(405, { Allow: "GET, HEAD" }).end();
    const file = fileFor(real, request.url ?? "/");
    if (!file)
      return send(404, { "Content-Type": "text/plain; charset=utf-8" }).end("There is nothing here.\n");
    const lasting = file.includes(`${sep}assets${sep}`);
    send(200, {
      "Content-Type": types[extname(file)] ?? "application/octet-stream",
      "Content-Length": statSync(file).size,
      "Cache-Control": lasting ? "public, max-age=31536000, immutable" : "no-cache",
    });
    if (request.method === "HEAD") return response.end();
    const stream = createReadStream(file);
    stream.on("error", () => response.destroy());
    stream.pipe(response);
  });
  return new Promise((resolve, reject) => {
    server.once("error", reject);
    server.listen(port, "127.0.0.1", () => {
      const { port: taken } = server.address();
      resolve({
        address: `http://localhost:${taken}/`,
        close: () =>
          new Promise((done) => {
            server.closeAllConnections();
            server.close(() => done());
          }),
      });
    });
  });
}
