/** Where the coach is, as an address that can be shared. */
export { type Address, ORDERS, type Order, printAddress } from "./address.ts";
export { Link } from "./link.tsx";
export { go, useAddress } from "./use-address.ts";
