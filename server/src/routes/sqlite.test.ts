import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll } from "vitest";
import { openStore } from "../store/index.ts";
import { routesContract } from "./contract.ts";
import { loopContract } from "./loop-contract.ts";

const folder = mkdtempSync(join(tmpdir(), "stave-routes-"));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

routesContract("SQLite", () => openStore(join(folder, "routes.db")));
loopContract("SQLite", () => openStore(join(folder, "loop.db")));
