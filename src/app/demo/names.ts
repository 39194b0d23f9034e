/**
 * Every invented name of the demo, in one place: nothing here is or resembles a real marque, person, workshop, place or
 * plate. Knows no story.
 */
export const DEMO_CAR = "car:demo-tarn";
export const DEMO_FIRST = "visit:demo-first";
export const DEMO_SECOND = "visit:demo-second";
/** The visit under way. */
export const DEMO_THIRD = "visit:demo-third";
/** What is planned after it. */
export const DEMO_PLAN = "plan:demo-third";
/** What was said after the visit before: the car handed back. */
export const DEMO_SECOND_PLAN = "plan:demo-second";
/** Named by hand, so that its address is known. */
export const DEMO_PICTURE = "demo-picture";

export const CAR_NAME = "Brindlow Tarn 1992";
/** The source of its maker's figures. */
export const MAKERS_NOTES = "Workshop notes for the Tarn";

/** Who looks at it, who helps, and whose it is. */
export const PEOPLE = {
  ines: { id: "demo-ines", name: "Ines (demo)" },
  jorin: { id: "demo-jorin", name: "Jorin (demo)" },
  ottilie: { id: "demo-ottilie", name: "Ottilie (demo)" },
} as const;
export type DemoPerson = keyof typeof PEOPLE;

/** Every word of the demo that is a name: the marque, the model and the people. A test holds its texts to this list. */
export const INVENTED: readonly string[] = ["Brindlow", "Tarn", "Ines", "Jorin", "Ottilie"];
