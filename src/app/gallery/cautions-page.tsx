/** Gallery: the three forms of a caution and the four signal words. */
import { NextAction } from "../parts/button.js";
import { CautionPanel } from "../parts/caution-panel.js";
import { TopLine } from "../parts/top-line.js";

const tick = (): void => undefined;

export function CautionsPage() {
  return (
    <main class="app">
      <TopLine back={{ words: "Findings", onPress: tick }} aside="4 cautions" />
      <CautionPanel
        form="full"
        level={1}
        signal="danger"
        word="Danger"
        not="Do not drive this car."
        why={{ label: "Why", says: "The rear left wheel bearing is near break-up." }}
        can={{ label: "What can happen", says: "The wheel can lean or come away. You lose the car." }}
        todo={{
          label: "What to do",
          says: "Leave it on the lift, or move it on a trailer. Local rules and a licensed person decide on the road.",
        }}
        told="Owner told 25 Nov, 11:04"
      />
      <CautionPanel
        form="small"
        signal="warning"
        word="Warning"
        not="Do not lift at the rear left jack point"
        why={{ label: "Why", says: "Plate soft. Use the main rail with a block." }}
        onPress={tick}
      />
      <CautionPanel
        form="small"
        signal="caution"
        word="Caution"
        not="Rear left disc above 60 °C"
        todo={{ label: "Do", says: "Gloves, or wait." }}
      />
      <CautionPanel
        form="small"
        signal="notice"
        word="Notice"
        not="Brake fluid strips paint"
        todo={{ label: "Do", says: "Rinse at once." }}
      />
      <CautionPanel
        form="bar"
        signal="warning"
        word="Warning"
        not="Drive only to the nearest workshop"
        onPress={tick}
      />
      <CautionPanel form="bar" signal="caution" word="Caution" not="Hot hub" onPress={tick} />
      <CautionPanel form="bar" signal="notice" word="Notice" not="Do not blow the dust off" onPress={tick} />
      <div class="thumbs">
        <NextAction words="The owner has been told" says="Writes the time into the hand-over" onPress={tick} />
      </div>
    </main>
  );
}
