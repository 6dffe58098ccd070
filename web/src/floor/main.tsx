import "../style/style.css";
import { render } from "preact";

function Floor() {
  return <h1>Stave</h1>;
}

render(<Floor />, document.body);
if ("serviceWorker" in navigator) await navigator.serviceWorker.register("sw.js");
