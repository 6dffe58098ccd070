import "../style/style.css";
import { render } from "preact";
import { App } from "./app.tsx";
import { Phone } from "./phone.ts";

/** The token of a link stands in the fragment, which no server sees; it leaves the address before anything is drawn. */
function takeFragment(): string | undefined {
  const token = location.hash.slice(1);
  if (token === "") return undefined;
  history.replaceState(null, "", location.pathname);
  return token;
}

const phone = await Phone.open(takeFragment());
const root = document.createElement("div");
document.body.append(root);
phone.start(() => render(<App phone={phone} />, root));

if ("serviceWorker" in navigator) await navigator.serviceWorker.register("sw.js");
await navigator.storage?.persist?.();
