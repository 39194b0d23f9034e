/** Gallery: going round the car, for a technician and for an owner. Invented car and findings. */
import { useState } from "preact/hooks";
import { type NonAnswer, REASONS, type Reason } from "../../core/terms/index.js";
import { CarPlan } from "../parts/car-plan.js";
import { ListRow } from "../parts/list-row.js";
import { NonAnswers } from "../parts/non-answers.js";
import { Pool, Question } from "../parts/pool.js";
import type { CarPlanPlace } from "../parts/props-looking.js";
import { ReplyGrid } from "../parts/reply-grid.js";
import { Sheet } from "../parts/sheet.js";
import { ThumbZone } from "../parts/thumb-zone.js";
import { Title } from "../parts/title.js";
import { TopLine } from "../parts/top-line.js";

const CORNERS = [
  { id: "FL", words: "Front left" },
  { id: "FR", words: "Front right" },
  { id: "RL", words: "Rear left" },
  { id: "RR", words: "Rear right" },
  { id: "car", words: "Whole car" },
] as const;

export function places(here: string): readonly CarPlanPlace[] {
  return CORNERS.map((corner) => ({
    ...corner,
    look: corner.id === here ? "here" : corner.id === "FL" || corner.id === "FR" ? "done" : "not-looked",
    says: corner.id === here ? "5 of 12 points" : "not looked at",
    mark: corner.id === "FL" ? "minor" : corner.id === "FR" ? "major" : undefined,
  }));
}

const tick = (): void => undefined;
const TICKS = Array.from(
  { length: 12 },
  (_, i) => (i < 4 ? "done" : i === 4 ? "here" : "open") as "done" | "here" | "open",
);

export function RoundPage() {
  const [chosen, setChosen] = useState<readonly string[]>(["light-grumble"]);
  const [here, setHere] = useState("RL");
  const [open, setOpen] = useState(false);
  const [non, setNon] = useState<{ nonAnswer: NonAnswer; reason?: Reason | undefined } | undefined>();
  const words = {
    smooth: "Smooth",
    "light-grumble": "Light grumble",
    rough: "Rough",
    notchy: "Notchy",
    drags: "Drags",
  };
  return (
    <main class="app">
      <TopLine back={{ words: "Visit", onPress: tick }} keeping={{ kind: "kept", words: "Kept on this phone" }} />
      <Title
        title={CORNERS.find((c) => c.id === here)?.words ?? ""}
        second="Lifted, wheel hanging"
        figure={{ count: "5", rest: " of 12 points" }}
        ticks={TICKS}
      />
      <CarPlan
        plan="chassis"
        side={here.endsWith("R") ? "right" : "left"}
        places={places(here)}
        label="Plan of the car seen from above"
        listWords="Places"
        onPlace={setHere}
      />
      <Pool as="section" label="Open point" edge="joined">
        <Question
          question="Turn it by hand: what do you feel?"
          how="Palm on the spring, gearbox in neutral. Rubbing pads are not a grumble."
        />
        <ReplyGrid
          kind="one"
          label="Turn it by hand: what do you feel?"
          replies={Object.entries(words).map(([id, w]) => ({ id, words: w, chosen: chosen.includes(id) }))}
          onChoose={(id) => setChosen([id])}
          last={{
            words: "Can’t get at it",
            chosen: non !== undefined,
            says: non?.reason ?? non?.nonAnswer,
            onPress: () => setOpen(true),
          }}
        />
      </Pool>
      <ListRow folded lead="6" title="Listen at the upright" onPress={tick} />
      <ListRow folded lead="7" title="Seal and grease" aside="added by grumble" onPress={tick} />
      <ThumbZone
        label="Tools"
        tools={[
          { id: "photo", words: "Photo", icon: "photo", onPress: tick },
          { id: "sound", words: "Sound", icon: "sound", onPress: tick },
        ]}
        next={{ words: "Next point", onward: true, onPress: tick }}
      />
      <Sheet open={open} title="Can’t get at it" closeWords="Close" onClose={() => setOpen(false)}>
        <NonAnswers
          label="Can’t get at it"
          reasonLabel="Why?"
          start="not-reached"
          chosen={non}
          choices={[
            {
              id: "not-reached",
              words: "Could not reach it",
              reasons: REASONS.map((id) => ({ id, words: id.replaceAll("-", " ") })),
            },
            {
              id: "could-not-tell",
              words: "Looked, could not tell",
              reasons: REASONS.slice(0, 3).map((id) => ({ id, words: id })),
            },
            { id: "not-asked-for", words: "Not asked for", says: "Left out of this visit" },
            { id: "not-fitted", words: "Not fitted on this car", says: "Leaves the count" },
          ]}
          onChoose={(nonAnswer, reason) => {
            setNon({ nonAnswer, reason });
            setOpen(false);
          }}
        />
      </Sheet>
    </main>
  );
}

export function OwnerPage() {
  const [seen, setSeen] = useState<readonly string[]>(["streaks"]);
  const words = { dry: "No, dry and dusty", streaks: "Yes, streaks or drops", cap: "Yes, and the cap is loose" };
  return (
    <main class="app">
      <TopLine back={{ words: "Visit", onPress: tick }} keeping={{ kind: "no-signal", words: "No signal" }} />
      <Title
        title="Rear right"
        second="On the ground, cold"
        figure={{ count: "2", rest: " of 4 points" }}
        ticks={["done", "here", "open", "open"]}
      />
      <CarPlan
        plan="body"
        side="right"
        places={places("RR")}
        label="Plan of the car seen from above"
        listWords="Places"
        onPlace={tick}
      />
      <Pool as="section" label="Open point" edge="joined">
        <Question
          question="Look through the spokes. Is there grease on the inside of the wheel?"
          how="Stay beside the car. Never reach under it."
        />
        <ReplyGrid
          kind="several"
          columns={1}
          label="Grease on the inside of the wheel"
          says="Choose all that are true."
          replies={Object.entries(words).map(([id, w]) => ({ id, words: w, chosen: seen.includes(id) }))}
          onChoose={(id, on) => setSeen(on ? [...seen, id] : seen.filter((s) => s !== id))}
          last={{ words: "I can’t see in", chosen: false, onPress: tick }}
        />
      </Pool>
      <ListRow folded lead="3" title="Tread, felt with a flat hand" onPress={tick} />
      <ThumbZone
        label="Tools"
        tools={[{ id: "photo", words: "Photo", icon: "photo", onPress: tick }]}
        next={{ words: "Next point", says: "Tread", onward: true, onPress: tick }}
      />
    </main>
  );
}
