/** What gates guard that stand before driving. The one place where these acts are named; knows no gate. */

/** What is guarded when it stands before leaving: the gate that has to be open then. */
export const DRIVE_AWAY = "drive-away";
/** Acts that put the car on the road: the car state of the road test, and leaving. */
const DRIVING: ReadonlySet<string> = new Set(["w4-road", DRIVE_AWAY]);
/** Whether a gate stands before driving, by what it guards. */
export const guardsDriving = (guards: string): boolean => DRIVING.has(guards);
