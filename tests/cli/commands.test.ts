import { readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { command } from "./command.js";
import { folderWith, skiffloom } from "./run.js";

const examples = ["tender", "utility", "launch"].map((name) => `examples/${name}.yaml`);

describe.each(examples)("%s", (plan) => {
  test("check finds no stop", async () => {
    const { status, out } = await command(["check", plan]);
    expect(status).toBe(0);
    expect(out).toMatch(/0 stop/);
  });

  test("figures as data name every piece of gear at every corner", async () => {
    const { status, out } = await command(["figures", plan, "--json"]);
    expect(status).toBe(0);
    const data = JSON.parse(out);
    expect(data).toMatchObject({ skiffloom: "figures", version: 1 });
    const counts = data.corners.map((corner: { gear: unknown[] }) => corner.gear.length);
    expect(new Set(counts).size).toBe(1);
    expect(counts[0]).toBeGreaterThan(3);
    expect(data.sizes.proof).toBe("proven");
  });

  test("netlist ends as a deck ends", async () => {
    const { status, out } = await command(["netlist", plan]);
    expect(status).toBe(0);
    expect(out.trimEnd()).toMatch(/\.end$/);
  });
});

describe("statuses", () => {
  test("nothing to stop for gives 0, a word that is no command 2", () => {
    expect(skiffloom(["check", "examples/tender.yaml"])).toMatchObject({ status: 0, err: "" });
    expect(skiffloom(["chek", "x"])).toMatchObject({ status: 2, out: "" });
  });

  test("a stop gives 1", () => {
    const { status, out } = skiffloom(["check", "examples/wrong/no-fuse-at-the-battery.yaml"]);
    expect(status).toBe(1);
    expect(out).toContain("protection-missing-at-battery");
  });

  test("what can't be read gives 2, with line and column", () => {
    const { status, err, out } = skiffloom(["check", "-"], "skiffloom: 1\nname: x\nbateries: {}\n");
    expect(status).toBe(2);
    expect(out).toBe("");
    expect(err).toMatch(/standard input:3:1 .*batteries/);
  });

  test.each([
    [["check"], "needs a plan file"],
    [["check", "nowhere.yaml"], "nowhere.yaml can't be read: there is no such file"],
    [["check", "examples/tendr.yaml"], "there is no such file; did you mean examples/tender.yaml?"],
    [["check", "examples/tender"], "did you mean examples/tender.yaml?"],
    [["check", "nofolder/tender.yaml"], "there is no folder nofolder"],
    [["chek", "x"], "there is no command chek; did you mean check?"],
    [["examples/tender.yaml"], "skiffloom check examples/tender.yaml, for one"],
    [
      ["packet", "examples/tender.yaml", "--to", "nofolder/x.pdf"],
      "can't be written: there is no such folder",
    ],
    [["sheet", "examples/tender.yaml", "--only", "conductors"], "did you mean 'Conductor schedule'?"],
    [["sheet", "examples/tender.yaml", "--only", "noon"], "\n  Load list\n  Conductor schedule\n"],
    [["sheet", "examples/tender.yaml", "--page", "1"], "--page goes with --only"],
    [["marks", "examples/tender.yaml", "--face", "x"], "there is only thwart front"],
    [["netlist", "examples/tender.yaml", "--corner", "worst"], "did you mean 'worst drop'?"],
    [["float", "examples/tender.yaml", "--move"], "there is no option --move; there is only --json"],
    [["check", "examples/tender.yaml", "--jsn"], "--jsn"],
    [["check", "examples/tender.yaml", "more"], "more"],
    [["figures", "examples/tender.yaml", "--corner", "noon"], "no corner is called noon"],
    [["packet", "examples/tender.yaml", "--paper", "a5"], "letter or a4"],
    [["apply", "examples/tender.yaml", "99"], "no finding 99"],
    [["apply", "examples/tender.yaml", "--edit", "{"], "no JSON"],
  ])("%j gives 2 and says why", async (words, says) => {
    const { status, err } = await command(words);
    expect(status).toBe(2);
    expect(err).toContain(says);
  });

  test.each(["check", "figures", "netlist", "packet", "schema", "new", "apply"])(
    "%s --help teaches",
    async (name) => {
      const { status, out } = await command([name, "--help"]);
      expect(status).toBe(0);
      expect(out).toContain(`skiffloom ${name}`);
    },
  );

  test("help of a command comes before it or after it; the paper's name in any letters", async () => {
    expect((await command(["help", "check"])).out).toBe((await command(["check", "--help"])).out);
    expect((await command(["-v"])).out).toBe((await command(["--version"])).out);
    const to = join(folderWith(), "packet.pdf");
    expect(
      (await command(["sheet", "examples/tender.yaml", "--only", "load list", "--paper", "A4", "--to", to]))
        .status,
    ).toBe(0);
  });

  test("--version is the package's own, from the sources and as built", async () => {
    const { version } = JSON.parse(readFileSync("package.json", "utf8"));
    expect((await command(["--version"])).out).toBe(`skiffloom ${version}\n`);
    expect(skiffloom(["--version"]).out).toBe(`skiffloom ${version}\n`);
  });
});

describe("files", () => {
  test("a packet is a PDF, and never written over without --force", async () => {
    const to = join(folderWith(), "packet.pdf");
    expect((await command(["packet", "examples/tender.yaml", "--to", to])).status).toBe(0);
    const first = readFileSync(to);
    expect(first.subarray(0, 5).toString()).toBe("%PDF-");
    const again = await command(["packet", "examples/tender.yaml", "--to", to]);
    expect(again.status).toBe(2);
    expect(again.err).toContain("--force");
    expect((await command(["packet", "examples/tender.yaml", "--to", to, "--force"])).status).toBe(0);
    expect(readFileSync(to).equals(first)).toBe(true);
  });

  test("a file that can't be written leaves nothing behind", async () => {
    const folder = folderWith();
    const { status } = await command([
      "packet",
      "examples/tender.yaml",
      "--to",
      join(folder, "no/such/packet.pdf"),
    ]);
    expect(status).toBe(2);
    expect(readdirSync(folder)).toEqual([]);
  });

  test("apply makes the remedy, keeps every other line, and the finding is gone", async () => {
    const folder = folderWith("examples/wrong/fuse-too-large-for-thin-leads.yaml");
    const plan = join(folder, "fuse-too-large-for-thin-leads.yaml");
    const before = readFileSync(plan, "utf8");
    expect((await command(["check", plan])).status).toBe(1);
    const applied = await command(["apply", plan, "1"]);
    expect(applied.err).toBe("");
    expect(applied.status).toBe(0);
    const after = readFileSync(plan, "utf8");
    const changed = after.split("\n").filter((line, index) => line !== before.split("\n")[index]);
    expect(changed).toHaveLength(1);
    expect((await command(["check", plan])).status).toBe(0);
  });

  test("apply --show leaves the file alone", async () => {
    const folder = folderWith("examples/utility.yaml");
    const plan = join(folder, "utility.yaml");
    const edit = JSON.stringify({ edit: "set run size", at: "lamp trunk", to: "14 AWG" });
    const { status, out } = await command(["apply", plan, "--edit", edit, "--show"]);
    expect(status).toBe(0);
    expect(out).toContain("14 AWG");
    expect(readFileSync(plan, "utf8")).toBe(readFileSync("examples/utility.yaml", "utf8"));
  });
});

test("a plan's own text can't command the terminal", () => {
  const folder = folderWith();
  const plan = join(folder, "plan.yaml");
  const tender = readFileSync("examples/tender.yaml", "utf8");
  writeFileSync(plan, tender.replace(/^name: .*$/m, 'name: "evil \\e]0;title\\a \\e[2J boat"'));
  const { out, status } = skiffloom(["check", plan]);
  expect(status).toBe(0);
  expect(out).not.toContain("\u001b");
  expect(out).toContain("evil");
});
