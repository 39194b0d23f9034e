/** Gallery: the seven marks at the sizes in use, on every ground. */
import { MARKS } from "../../core/report/index.js";
import { GradeMark } from "../parts/grade-mark.js";
import { Title } from "../parts/title.js";

const SIZES = [34, 24, 22, 20, 18] as const;

export function MarksPage() {
  return (
    <main class="app">
      <Title title="Grades are cut" />
      {["ground", "pool"].map((ground) => (
        <div key={ground} class={ground}>
          <ul>
            {MARKS.map((mark) => (
              <li key={mark} class="gallery-row">
                {SIZES.map((size) => (
                  <GradeMark key={size} mark={mark} size={size} />
                ))}
                <span>{mark}</span>
              </li>
            ))}
          </ul>
        </div>
      ))}
    </main>
  );
}
