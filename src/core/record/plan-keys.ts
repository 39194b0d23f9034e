/** What names a job or a part in a plan's maps, and the slot of what is said of it. */
import type { JobAt, PartAt } from "./plan-bodies.js";

/** `job@place` */
export const jobKey = ({ job, place }: JobAt): string => `${job}@${place}`;
/** `job@place/part` */
export const partKey = ({ part, ...at }: PartAt): string => `${jobKey(at)}/${part}`;
