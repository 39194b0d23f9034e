/** Times keeping one reply in a real browser beside a bare strict put of the same entry. */
import { timeKeeping } from "../../../bench/record-keeping.js";

declare global {
  interface Window {
    timeKeeping: (rounds: number) => Promise<Readonly<Record<string, number>>>;
  }
}

window.timeKeeping = timeKeeping;
document.title = "Ready";
