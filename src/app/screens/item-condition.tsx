/** The field of a condition as forms use it: fetched behind the form, since reading and writing conditions is much. */
import { lazy, Nothing } from "./lazy.js";

export const ConditionField = lazy(() => import("./condition-field.js").then((file) => file.ConditionField), Nothing);
