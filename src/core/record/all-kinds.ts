/** Every kind of every stream: what checks a log that comes from outside, and erases for good. */
import { HOUSE_KINDS } from "./house-kinds.js";
import { LIMIT_ROWS } from "./limit-kinds.js";
import { PICTURE_KINDS } from "./picture-kinds.js";
import { PLAN_KINDS } from "./plan-kinds.js";

export const ALL_KINDS = { ...HOUSE_KINDS, ...PLAN_KINDS, ...PICTURE_KINDS, ...LIMIT_ROWS };
