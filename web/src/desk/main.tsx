import "../style/style.css";
import { createRoot } from "react-dom/client";

function Desk() {
  return <h1>Stave</h1>;
}

const place = document.createElement("div");
document.body.append(place);
createRoot(place).render(<Desk />);
