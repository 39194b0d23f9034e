/** Clutch and road speed: lining left, torque it holds, release travel, slip. */
import { refusal } from "./calculate.js";
import { row } from "./contract.js";
import { ARITHMETIC } from "./sources.js";

const thickness = { kind: "length", over: 0, to: 30 } as const;
const circumference = {
  name: "circumference",
  says: "Rolling circumference",
  kind: "length",
  over: 500,
  to: 4000,
} as const;
const ratio = { kind: "ratio", over: 0, to: 20 } as const;
const gear = { name: "gear", says: "Gear ratio", ...ratio } as const;
const final = { name: "final", says: "Final drive ratio", ...ratio } as const;
const rpm = { name: "rpm", says: "Engine speed, turns a minute", kind: "number", over: 0, to: 20_000 } as const;

/** Road speed without slip, km/h. */
const roadSpeed = (perMinute: number, gearRatio: number, finalRatio: number, mm: number): number =>
  ((perMinute / (gearRatio * finalRatio)) * (mm / 1000) * 60) / 1000;

export const CLUTCH = [
  row({
    name: "lining_left",
    says: "Share of a lining's wear still left",
    arguments: [
      { name: "now", says: "Thickness now", kind: "length", from: 0, to: 30 },
      { name: "new", says: "Thickness new", ...thickness },
      { name: "least", says: "Thickness worn out", ...thickness },
    ],
    gives: "percent",
    formula: "100 · (t − t(least)) / (t(new) − t(least))",
    source: ARITHMETIC,
    work: (now, fresh, least) =>
      fresh <= least ? refusal("under-argument", { argument: "new", least }) : (100 * (now - least)) / (fresh - least),
  }),
  row({
    name: "clutch_torque",
    says: "Torque a clutch holds",
    arguments: [
      { name: "friction", says: "Friction", kind: "ratio", over: 0, to: 1 },
      { name: "clamp", says: "Clamp force", kind: "force", over: 0, to: 50_000 },
      { name: "mean_radius", says: "Mean radius of the lining", kind: "length", over: 0, to: 300 },
      { name: "faces", says: "Friction faces", kind: "number", from: 1, to: 20, whole: true },
    ],
    gives: "torque",
    formula: "T = µ · F · r · z",
    source: ARITHMETIC,
    work: (mu, force, radius, faces) => (mu * force * radius * faces) / 1000,
  }),
  row({
    name: "release_travel",
    says: "Travel at the release bearing for a travel of the slave cylinder",
    arguments: [
      { name: "slave_travel", says: "Travel of the slave cylinder", kind: "length", from: 0, to: 100 },
      { name: "lever_ratio", says: "Release lever ratio", kind: "ratio", over: 0, to: 10 },
    ],
    gives: "length",
    formula: "s(bearing) = s(slave) / ratio",
    source: ARITHMETIC,
    work: (travel, lever) => travel / lever,
  }),
  row({
    name: "slave_travel",
    says: "Travel of the slave cylinder for a travel of the master",
    arguments: [
      { name: "master_travel", says: "Travel of the master cylinder", kind: "length", from: 0, to: 100 },
      { name: "master_bore", says: "Bore of the master", kind: "length", over: 0, to: 60 },
      { name: "slave_bore", says: "Bore of the slave", kind: "length", over: 0, to: 60 },
    ],
    gives: "length",
    formula: "s(slave) = s(master) · (d(master) / d(slave))²",
    source: ARITHMETIC,
    work: (travel, master, slave) => travel * (master / slave) ** 2,
  }),
  row({
    name: "road_speed",
    says: "Road speed at an engine speed, nothing slipping",
    arguments: [rpm, gear, final, circumference],
    gives: "speed",
    formula: "v = n / (i · i(final)) · C · 60",
    source: ARITHMETIC,
    work: roadSpeed,
  }),
  row({
    name: "clutch_slip",
    says: "Slip between engine and road",
    arguments: [
      { name: "speed", says: "True road speed", kind: "speed", from: 0, to: 400 },
      rpm,
      gear,
      final,
      circumference,
    ],
    gives: "percent",
    formula: "100 · (1 − v / v(without slip))",
    source: ARITHMETIC,
    work: (kmh, perMinute, gearRatio, finalRatio, mm) =>
      100 * (1 - kmh / roadSpeed(perMinute, gearRatio, finalRatio, mm)),
  }),
];
