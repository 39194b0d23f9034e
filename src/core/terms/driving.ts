/** What gates guard that stand before driving. The one place where these acts are named, and the naming of a price; knows no gate. */

/** What is guarded when it stands before leaving: the gate that has to be open then. */
export const DRIVE_AWAY = "drive-away";
/** Acts that put the car on the road: the car state of the road test, and leaving. */
const DRIVING: ReadonlySet<string> = new Set(["w4-road", DRIVE_AWAY]);
/** The car state in which no hand is on the car any more and a figure is named. */
const NAMING_A_PRICE = "p2-price";
/** Whether a gate stands before a price is named, by what it guards. */
export const guardsPrice = (guards: string): boolean => guards === NAMING_A_PRICE;
/** Whether a gate stands before driving, by what it guards. */
export const guardsDriving = (guards: string): boolean => DRIVING.has(guards);
