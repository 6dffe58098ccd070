import { Dialog } from "../dialog/index.ts";
import { words } from "../words.ts";
import style from "./keys.module.css";

/** What every key does. */
export function KeysDialog({ close }: { readonly close: () => void }) {
  return (
    <Dialog title={words.keys.title} close={close}>
      <table className={style["keys"]}>
        <tbody>
          {words.keys.rows.map(([key, does]) => (
            <tr key={key}>
              <th scope="row">{key}</th>
              <td>{does}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <p className="soft small">{words.keys.where}</p>
      <div className="actions">
        <button type="button" className="first" onClick={close}>
          {words.close}
        </button>
      </div>
    </Dialog>
  );
}
