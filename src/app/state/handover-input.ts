/** The whole input of a hand-over from a visit as folded, judged and planned. Pure. */
import type { HandoverInput } from "../../core/report/index.js";
import { claimsTold } from "./claims-view.js";
import { complaintsTold, releaseTold, signaturesTold } from "./handover-after.js";
import { donesTold } from "./handover-done.js";
import { faultsTold } from "./handover-faults.js";
import type { HandoverGround } from "./handover-ground.js";
import { cautionsTold, gatesTold, lookedTold, notSeenTold, readingsTold, sheetsTold } from "./handover-looked.js";
import { carTold, personalOf, picturesLeftOut, picturesTold, planTold, visitTold } from "./handover-told.js";
import { datesTold, firstUntold, jobsTold, looseTold, moneyTold } from "./handover-work.js";

export function handoverInput(ground: HandoverGround): HandoverInput {
  const money = moneyTold(ground);
  const release = releaseTold(ground);
  const loose = looseTold(ground);
  const untold = firstUntold(ground);
  const left = picturesLeftOut(ground);
  return {
    for: ground.for,
    madeAt: ground.madeAt,
    engine: ground.engine,
    visit: visitTold(ground),
    car: carTold(ground),
    complaints: complaintsTold(ground),
    claims: claimsTold(ground.said),
    faults: faultsTold(ground),
    notSeen: notSeenTold(ground),
    looked: lookedTold(ground),
    sheets: sheetsTold(ground),
    gates: gatesTold(ground),
    cautions: cautionsTold(ground),
    readings: readingsTold(ground),
    jobs: jobsTold(ground),
    ...(money ? { money } : {}),
    done: donesTold(ground),
    ...(untold ? { firstUntold: untold } : {}),
    ...(loose ? { loose } : { isProgressUnread: true }),
    ...(ground.trends ? { trends: ground.trends } : {}),
    dates: datesTold(ground),
    ...(ground.looks ? { looks: ground.looks(ground.for) } : {}),
    ...(ground.visitsUnread ? { visitsUnread: ground.visitsUnread } : {}),
    pictures: picturesTold(ground),
    ...(left.length > 0 ? { picturesLeft: left } : {}),
    plan: planTold(ground),
    ...(release ? { release } : {}),
    signatures: signaturesTold(ground),
    unread: unreadIn(ground),
    personal: personalOf(ground),
  };
}

/** What is kept here and not understood, and what claims one identity with something else. */
const unreadIn = ({ visit, said, car }: HandoverGround): number =>
  [visit, said, car].reduce((sum, { trouble }) => sum + trouble.unknown.length + trouble.forks.length, 0);
