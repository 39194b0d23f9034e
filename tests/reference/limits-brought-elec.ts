/** How a value of a chosen size is brought about under each limit of the electrics sheet. Refuses to know any edge. */
import { type Applies, type Brought, of, plain } from "./limit-brought.js";

const CELL = "cell-3";
const charged = plain("elec.chg-v", "V");

/** Rest volts at which the table tells that much charge: rows of 0, 25, 50, 75 and 100 %, straight lines between. */
const ROWS = [
  [0, 11.6],
  [25, 12.15],
  [50, 12.3],
  [75, 12.45],
  [100, 12.66],
] as const;
function restVolts(percent: number): number {
  const upper = Math.max(
    1,
    ROWS.findIndex(([share]) => share >= percent),
  );
  const [from, low] = ROWS[upper - 1] ?? ROWS[0];
  const [to, high] = ROWS[upper] ?? ROWS[1];
  return low + ((percent - from) / (to - from)) * (high - low);
}

export const ELEC_BROUGHT: Readonly<Record<string, Brought>> = {
  "elec.bat-ocv_hours": plain("elec.bat-ocv.hours", "h"),
  "elec.bat_stood": plain("elec.bat-ocv.hours", "h"),
  "elec.bat-ocv_temp": plain("elec.bat-ocv.temp", "Cel"),
  "elec.bat_charge": { at: "car", says: (percent) => ({ "elec.bat-ocv": of(restVolts(percent), "V") }) },
  // At the temperature the table is written for nothing is added.
  "elec.sg_at": {
    at: CELL,
    says: (value) => ({ [`elec.bat-sg@${CELL}`]: of(value, "1"), "elec.sg-temp": "26.7 Cel" }),
  },
  "elec.bat-id_years": plain("elec.bat-id.years", "a"),
  "elec.bat-crank": plain("elec.bat-crank", "V"),
  "elec.chg-v": charged,
  "elec.chg-v_idle": plain("elec.chg-v.idle", "V"),
  "elec.chg-v_loads": plain("elec.chg-v.loads", "V"),
  "elec.chg_high": charged,
  "elec.chg-ripple": plain("elec.chg-ripple", "mV"),
  "elec.drain": plain("elec.drain", "mA"),
  // Half of 48 A·h lasts a day at one ampere.
  "elec.stand_days": {
    at: "car",
    says: (days) => ({ "elec.bat-id.capacity": "48 A.h", "elec.drain": of(1000 / days, "mA") }),
  },
  "elec.start_total": {
    at: "starter-circuit",
    says: (value) => ({
      "elec.feed-drop@feed-starter": of(value / 2, "V"),
      "elec.earth-drop@earth-engine": of(value / 2, "V"),
    }),
  },
  "elec.iso-sw_drop": plain("elec.iso-sw.drop", "V"),
  "elec.iso_heat": {
    at: "car",
    says: (watts) => ({ "elec.iso-sw.drop": of(watts / 50, "V"), "elec.iso-sw.current": "50 A" }),
  },
};

/** Two limits over one reading: cranking, and any other circuit at work. */
export const ELEC_BROUGHT_FOR: Readonly<Record<string, Brought>> = {
  "lim.earth-crank": plain("elec.earth-drop@earth-engine", "V"),
  "lim.earth-load": plain("elec.earth-drop@earth-pump", "V"),
  "lim.feed-crank": plain("elec.feed-drop@feed-starter", "V"),
  "lim.feed-load": plain("elec.feed-drop@feed-pump", "V"),
};

export const ELEC_APPLIES: Applies = {
  "lim.charge": { says: { "elec.bat-id": "flooded" } },
  "lim.charge-mat": { says: { "elec.bat-id": "agm" } },
  "lim.charge-low": { facts: { charging: "alternator" } },
  "lim.charge-low-dynamo": { facts: { charging: "dynamo" } },
  "lim.charge-idle": { facts: { charging: "alternator" } },
  "lim.charge-high": { says: { "elec.bat-id": "flooded" } },
  "lim.charge-high-gel": { says: { "elec.bat-id": "gel" } },
};
