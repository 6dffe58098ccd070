import "../style/style.css";
import "./desk.css";
import { createRoot } from "react-dom/client";
import { Live, LiveContext } from "./ask/index.ts";
import { Desk } from "./desk.tsx";
import { Speaker } from "./speaker.tsx";

const place = document.createElement("div");
document.body.append(place);
createRoot(place).render(
  <LiveContext value={new Live()}>
    <Speaker>
      <Desk />
    </Speaker>
  </LiveContext>,
);
