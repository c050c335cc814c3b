import react from "@vitejs/plugin-react";
import { defineConfig } from "vite";
import { onlyLocales } from "./build/only-locales.js";

/** Relative addresses, so that the page works in any folder of any server. */
export default defineConfig({
  base: "./",
  plugins: [onlyLocales(["en-US", "es-ES"]), react()],
  // chromium 111 and its peers: the oldest browsers the page is written for
  build: {
    target: "es2022",
    outDir: "../../dist/web",
    emptyOutDir: true,
    assetsInlineLimit: 0,
    modulePreload: { polyfill: false },
  },
  worker: { format: "es" },
});
