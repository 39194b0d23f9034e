/** Two years ago: looked over for its buyer before she bought it, on a lift, all five sheets. Closed. */
import { FIRST_FRAME } from "./first-frame.js";
import { FIRST_WHEELS } from "./first-wheels.js";
import { DEMO_FIRST } from "./names.js";
import { FIT_TO_MOVE, JOINT_KINDS, RIGHT_ON_THE_LIFT, WHEEL_KINDS } from "./same.js";
import type { Story } from "./tell.js";

export const FIRST: Story = {
  stream: DEMO_FIRST,
  daysAgo: 741,
  purpose: "viewing",
  odometer: { value: "57310", unit: "km" },
  closed: true,
  steps: [
    {
      note: {
        point: "gate.no-road",
        text: "Pedal, leaks, fixings and tyres looked at by hand; the seller drove out of the yard first.",
      },
    },
    { told: [...WHEEL_KINDS, ...FIT_TO_MOVE] },
    { told: FIRST_WHEELS },
    { told: [...JOINT_KINDS, ...FIRST_FRAME, ...RIGHT_ON_THE_LIFT] },
    {
      picture: "tube",
      pin: { point: "corr.wall", place: "outrigger-L-3", state: "w9-under" },
      name: "Spot bared and marked with a punch, for next time",
    },
    {
      note: {
        point: "corr.wall",
        place: "outrigger-L-3",
        state: "w9-under",
        text: "Marked the spot: two punch dots, 40 mm from the rail.",
      },
    },
    { note: { text: "Fluid is four years old by the seller's word. New fluid is part of the price." } },
    { warned: ["cau.to-workshop"] },
  ],
};
