import { openStore } from "../store/index.ts";
import { testDatabase } from "../store/testing/postgres.ts";
import { routesContract } from "./contract.ts";
import { loopContract } from "./loop-contract.ts";

const open = async () => await openStore((await testDatabase()).owner);
routesContract("PostgreSQL", open);
loopContract("PostgreSQL", open);
