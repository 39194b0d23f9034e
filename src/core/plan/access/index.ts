/** Access: what must be open for which job, what is shared, what pays while it is apart. */
export { type Bundle, type BundleJob, type BundlePart, bundlesOf, minutesOf, type StateLine } from "./bundles.js";
export { accessOf } from "./graph.js";
export { hours, type Marginal, marginal, opened } from "./hours.js";
export { type Moment, type Offer, type Opportunity, opportunity } from "./opportunity.js";
export { type ExactShare, equalSplit, exactShares, type JobShare } from "./split.js";
export type { Access, AccessJob, AccessState, OpenState, ReachedJob, Way } from "./terms.js";
export { type ChosenWay, type SettledWays, settleWays } from "./ways.js";
