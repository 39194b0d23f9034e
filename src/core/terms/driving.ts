/** What gates guard that stand before leaving and before a price is named. The one place where these are named; knows no gate. */

/** What is guarded when it stands before leaving: the gate that has to be open then. */
export const DRIVE_AWAY = "drive-away";
/** The car state in which no hand is on the car any more and a figure is named. */
const NAMING_A_PRICE = "p2-price";
/** Whether a gate stands before a price is named, by what it guards. */
export const guardsPrice = (guards: string): boolean => guards === NAMING_A_PRICE;
