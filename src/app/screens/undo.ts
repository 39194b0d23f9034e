/** The row that takes back what was entered last, fetched beside the page it stands on. */
import { lazy, Nothing } from "./lazy.js";

export const UndoRow = lazy(() => import("./undo-row.js").then((file) => file.UndoRow), Nothing);
