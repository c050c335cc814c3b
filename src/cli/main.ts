import { commandLine } from "./command-line.js";
import { exit } from "./problem.js";

process.stdout.on("error", (error: NodeJS.ErrnoException) => {
  if (error.code === "EPIPE") process.exit(exit.fine);
  throw error;
});

process.exitCode = await commandLine(process.argv.slice(2));
