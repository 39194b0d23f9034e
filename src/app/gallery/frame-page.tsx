/** Gallery: frame parts: notices, fields, switches, rows, empty state, pictures. */
import { useState } from "preact/hooks";
import { NextAction, Tool } from "../parts/button.js";
import { SmallCar } from "../parts/car-plan.js";
import { Field } from "../parts/field.js";
import { GradeMark } from "../parts/grade-mark.js";
import { ListRow } from "../parts/list-row.js";
import { EmptyState, Notice } from "../parts/notice.js";
import { Band, Pool } from "../parts/pool.js";
import { Switch, UnitSwitch } from "../parts/switch.js";
import { Thumb } from "../parts/thumb.js";
import { ThumbZone } from "../parts/thumb-zone.js";
import { Title } from "../parts/title.js";
import { TopLine } from "../parts/top-line.js";

const tick = (): void => undefined;
const PICTURE = "./icons/leadlamp-192.png";

export function FramePage() {
  const [name, setName] = useState("");
  const [on, setOn] = useState(true);
  const [theme, setTheme] = useState("phone");
  return (
    <main class="app">
      <TopLine keeping={{ kind: "error", words: "Photo 7 was not kept", onPress: tick }} />
      <Title title="Cars" second="All on this phone" />
      <Pool as="section" label="Nothing yet">
        <EmptyState
          drawing="body"
          title="Nothing looked at yet"
          says="Lines fill in as you go round. Start at the nose, or press a place."
          action={{ words: "Go on round the car", says: "Rear left, point 5 of 12", onPress: tick }}
        />
      </Pool>
      <ListRow
        gutter="wide"
        lead={<SmallCar looked />}
        title="Open two-seater, 1988"
        second="2 visits, look again by Mar 2027"
        aside={<GradeMark mark="minor" label="Minor" />}
        onPress={tick}
      />
      <ListRow
        gutter="wide"
        lead={<SmallCar looked={false} />}
        title="Closed two-seater, 1971"
        second="Not looked at yet"
        onPress={tick}
      />
      <Notice kind="kept" title="Kept on this phone" says="Every reply, at once. 10:42" />
      <Notice kind="keeping" title="Keeping …" says="Longer than one second: photo 7" />
      <Notice kind="no-signal" title="No signal" says="Nothing waits for it. Go on." />
      <Notice
        kind="room"
        title="Room for about 40 photos"
        says="Replies and readings always fit."
        action={{ words: "Make room", onPress: tick }}
      />
      <Notice
        kind="error"
        title="Photo 7 was not kept"
        says="The phone refused it. The reply is safe."
        action={{ words: "Again", onPress: tick }}
      />
      <Notice
        kind="plain"
        title="Two replies differ"
        says="Rough, and smooth. The worse grade rules until settled."
        action={{ words: "Settle", onPress: tick }}
        second={{ words: "Later", onPress: tick }}
      />
      <Band heading="Pictures" aside="4">
        <ul class="gallery-row">
          <li>
            <Thumb state="kept" src={PICTURE} alt="Hub, rear left" onPress={tick} />
          </li>
          <li>
            <Thumb state="keeping" src={PICTURE} alt="Seal" words="Keeping …" />
          </li>
          <li>
            <Thumb state="not-kept" alt="Nut" words="Not kept" onPress={tick} />
          </li>
          <li>
            <Thumb state="unreadable" alt="Race" words="Can’t be shown" />
          </li>
        </ul>
      </Band>
      <Pool as="section" label="New car">
        <Field
          id="name"
          label="Name of the car"
          kind="text"
          value={name}
          onInput={setName}
          help="As you call it."
          required
        />
        <Field
          id="odo"
          label="Odometer"
          kind="number"
          value="61 240 x"
          onInput={tick}
          unit="km"
          problem="That is no number: 61 240 x"
        />
        <Field
          id="kind"
          label="Bearing type"
          kind="select"
          value="b"
          onInput={tick}
          options={[
            { value: "a", words: "Taper, adjustable" },
            { value: "b", words: "Cartridge" },
          ]}
        />
        <Field id="first" label="First used" kind="date" value="1994-05-01" onInput={tick} />
        <Field id="said" label="Complaint" kind="area" value="Hums above 90" onInput={tick} />
        <NextAction words="Keep" onPress={tick} />
      </Pool>
      <Band heading="Settings">
        <Switch
          id="large"
          label="Larger targets"
          says="For gloves at arm’s length"
          on={on}
          onChange={setOn}
          words={{ on: "On", off: "Off" }}
        />
        <Switch id="hand" label="Left hand" on={!on} onChange={(is) => setOn(!is)} words={{ on: "On", off: "Off" }} />
        <div class="gallery-pad">
          <UnitSwitch
            label="Theme"
            chosen={theme}
            onChoose={setTheme}
            choices={[
              { id: "phone", words: "As phone" },
              { id: "dark", words: "Under the car" },
              { id: "light", words: "Daylight" },
            ]}
          />
        </div>
        <div class="gallery-pad">
          <Tool words="Erase this visit" onPress={tick} disabled />
        </div>
      </Band>
      <ThumbZone
        label="New"
        tools={[
          { id: "car", words: "New car", onPress: tick },
          { id: "visit", words: "New visit", onPress: tick },
        ]}
      />
    </main>
  );
}
