/** A year ago, before the winter: the owner's autumn check at the workshop, all five sheets. Closed. */
import { DEMO_SECOND } from "./names.js";
import { FIT_TO_MOVE, JOINT_KINDS, RIGHT_ON_THE_LIFT, WHEEL_KINDS } from "./same.js";
import { SECOND_FRAME } from "./second-frame.js";
import { SECOND_WHEELS } from "./second-wheels.js";
import { type Story, standing } from "./tell.js";

const JACK = { point: "corr.jack", place: "jack-RL", state: "w1-cold" };

export const SECOND: Story = {
  stream: DEMO_SECOND,
  daysAgo: 372,
  purpose: "season",
  odometer: { value: "61240", unit: "km" },
  closed: true,
  steps: [
    {
      by: "ottilie",
      complaint: { text: "A light knock at the front left over drain covers", complaint: "sym.knock-bump" },
    },
    { told: [...WHEEL_KINDS, ...FIT_TO_MOVE] },
    // The jacking point gave way under the thumb: nobody lifts there until the coat is off and the steel is seen.
    { told: standing("w1-cold", [["corr.jack", "looks", { "jack-FL jack-FR jack-RR": "sound", "jack-RL": "soft" }]]) },
    {
      note: {
        ...JACK,
        text: "Soft was the old coat only. Scraped to the metal: steel sound, dented as before. Wax put on again.",
      },
    },
    { told: standing("w1-cold", [["corr.jack", "looks", { "jack-RL": "dented" }]]) },
    {
      note: {
        point: "gate.no-road",
        text: "Tyres, fuel smell and throttle looked at by hand; their sheets are not open here.",
      },
    },
    { told: SECOND_WHEELS },
    { told: [...JOINT_KINDS, ...SECOND_FRAME, ...RIGHT_ON_THE_LIFT] },
    { sound: "first-grumble", pin: { point: "whl.listen", place: "RR", state: "w7-hang" } },
    { picture: "seep", pin: { point: "whl.grease", place: "RR", state: "w8-off" } },
    {
      picture: "tube",
      pin: { point: "corr.wall", place: "outrigger-L-3", state: "w9-under" },
      name: "The marked spot, a year on",
      marks: [{ type: "arrow", from: [0.75, 0.2], to: [0.6, 0.36] }],
    },
    {
      regrade: {
        fault: "whl.race",
        place: "RR",
        grade: "minor",
        reason: "No play, cool on the road and few kilometres before winter storage. Looked at again next autumn.",
      },
    },
    { note: { text: "Told Ottilie: rear right bearing to be ordered, front right caliper to be watched." } },
  ],
};
