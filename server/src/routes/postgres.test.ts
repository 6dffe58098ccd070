import { openStore } from "../store/index.ts";
import { testDatabase } from "../store/testing/postgres.ts";
import { routesContract } from "./contract.ts";

routesContract("PostgreSQL", async () => await openStore((await testDatabase()).owner));
