/** One small good set of check sheets as YAML parts, for tests that break one thing in it. Invented; no trade knowledge. */

/** Shared parts by file name. */
export const MINI_COMMON: Readonly<Record<string, string>> = {
  "common.yaml": `format: leadlamp-common/1
`,
  "places.yaml": `places:
  - { id: car, kind: car }
  - { id: axle-F, kind: axle, in: car }
  - { id: side-L, kind: side, in: car }
  - { id: side-R, kind: side, in: car, relations: { opposite: side-L } }
  - { id: FL, kind: corner, in: axle-F, relations: { side: side-L, opposite: FR } }
  - { id: FR, kind: corner, in: axle-F, relations: { side: side-R } }
`,
  "states.yaml": `states:
  - { id: w0-talk, order: 0, lifted: false, plan: body }
  - { id: w4-road, order: 4, lifted: false, plan: body }
  - { id: w7-hang, order: 7, lifted: true, plan: chassis }
`,
  "gauges.yaml": `gauges:
  - { id: dial, quantity: length, unit: mm, resolution: 0.01, error: 0.01, basis: practice, source: common practice }
  - { id: bar-gauge, quantity: pressure, unit: bar, resolution: 0.1, error: 0.1, basis: practice, source: common practice }
aids: [torch]
`,
  "cautions.yaml": `cautions:
  - { id: cau.stop, signal: danger }
`,
  "gates.yaml": `gates:
  - id: gate.road
    guards: w4-road
    starts: not-cleared
    set: [hub.spin]
    trips: ['places("corner").exists(c, c.hub.spin == "rough")']
    clears: ['places("corner").all(c, c.hub.spin == "smooth")']
    cautions: [cau.stop]
`,
  "access.yaml": `access:
  - { id: wheel-off, place: corner, setUp: [5, 8, 12], putBack: [5, 8, 12], basis: practice }
  - { id: hub-off, place: corner, needs: [wheel-off], setUp: [10, 20, 40], putBack: [10, 20, 40], basis: practice }
`,
  "facts.yaml": `facts:
  - { id: brakes, kind: word, words: [outboard, inboard] }
  - { id: abs, kind: yes }
`,
  "complaints.yaml": `complaints:
  - id: sym.hum
    suspects: [{ suspect: hub, weight: 3 }]
    points: [hub.spin, hub.float@axle]
`,
  "rules.yaml": `rules: []
`,
  "cases.yaml": `cases: []
`,
  "texts/en.yaml": `language: en
places: { car: Car, axle-F: Front axle, side-L: Left side, side-R: Right side, FL: Front left, FR: Front right }
states:
  w0-talk: { name: Talk, how: Ask the owner. }
  w4-road: { name: Road, how: Drive a little. }
  w7-hang: { name: Lifted, how: Wheels hang free. }
cautions:
  cau.stop: { not: Do not drive., why: A wheel may lock., can: Move it on a trailer., do: Tell the workshop. }
gates:
  gate.road: { name: Road test, tripped: Do not drive., first: Spin the wheels by hand. }
gauges: { dial: Dial gauge, bar-gauge: Pressure gauge }
aids: { torch: Torch }
access: { wheel-off: Wheel off, hub-off: Hub off }
facts:
  brakes: { name: Brakes, words: { outboard: in the wheels, inboard: at the axle } }
  abs: { name: Anti-lock brakes }
complaints:
  sym.hum: { name: Hum, says: [it hums], suspects: { hub: Hub } }
`,
};

/** Parts of the sheet `hub` by file name. */
export const MINI_SHEET: Readonly<Record<string, string>> = {
  "sheet.yaml": `format: leadlamp-sheet/1
id: hub
label: "Hub 1"
`,
  "points.yaml": `points:
  - id: hub.spin
    place: corner
    states: [w7-hang]
    fields:
      feel: { words: [smooth, rough, tight] }
    unremarkable: { feel: smooth }
    who: [technician, buyer, owner]
    safety-critical: true
  - id: hub.float
    place: corner
    states: [w7-hang]
    fields:
      play: { quantity: length, unit: mm, window: [0, 2] }
    tool: dial
    set-up-error: 0.02
    who: [technician]
    needs: [reading]
    asked-when: 'hub.spin != "smooth"'
  - id: hub.noise
    place: car
    states: [w0-talk, w4-road]
    fields:
      heard: { words: [none, hum, click], several: true, exclusive: [none] }
      age: { count: { from: 0, to: 60 }, optional: true }
      air: { quantity: pressure, unit: bar, window: [0, 5], optional: true }
    unremarkable: { heard: [none] }
    tool: torch
    who: [technician]
`,
  "limits.yaml": `limits:
  - id: lim.float
    of: hub.float
    quantity: length
    unit: mm
    direction: over
    bands: { minor: 0.13, major: 0.25, dangerous: 0.8 }
    basis: practice
    source: common practice, no source
    aggregate: max
    class: corner
    applies: 'car.brakes == "outboard"'
`,
  "derived.yaml": `derived:
  - { id: hub.odd, place: corner, quantity: length, unit: mm, formula: 'hub.float - opposite.hub.float' }
`,
  "rules.yaml": `rules:
  - id: hub.r1
    scope: corner
    effect: finding
    fault: hub.race
    grade: minor
    worse: { grade: major, when: '"hum" in hub.noise' }
    sure: likely
    when: 'hub.spin == "rough"'
    supports: ['"hum" in hub.noise']
    consequence: 2
    likelihood: B
    must-stand: false
    jobs: [job.hub.renew]
    cautions: [cau.stop]
    opens: [hub.float, hub.spin@opposite]
  - id: hub.r2
    scope: corner
    effect: finding
    fault: hub.play
    grade: { limit-of: hub.float }
    sure: certain
    when: 'band(hub.float) >= minor'
    consequence: 1
    likelihood: C
    must-stand: false
  - id: hub.r3
    scope: corner
    effect: { raise: hub.play }
    when: 'clearly_more(hub.float, opposite.hub.float)'
`,
  "jobs.yaml": `jobs:
  - id: job.hub.renew
    place: corner
    access: [hub-off]
    minutes: [30, 45, 90]
    minutesBasis: practice
    parts: [{ part: bearing, set: both-races }]
    consumables: [grease]
    look-too: opposite
    after: [hub.float]
    cautions: [cau.stop]
`,
  "nextlooks.yaml": `nextLooks:
  - { job: job.hub.renew, km: 500 }
`,
  "cases.yaml": `cases:
  - fires: hub.r1
    replies: { hub.spin@FR: rough }
    expect: { hub.race@FR: minor }
    near-miss: { hub.spin@FR: smooth }
  - fires: hub.r2
    replies: { hub.float@FL: 0.20 mm }
    facts: { brakes: outboard }
    expect: { hub.play@FL: minor }
    near-miss: { hub.float@FL: 0.05 mm }
  - fires: hub.r3
    replies: { hub.float@FL: 0.05 mm, hub.float@FR: 0.20 mm }
    expect: { at: FR }
    near-miss: { hub.float@FL: 0.19 mm }
`,
  "texts/en.yaml": `language: en
title: Hubs
about: A sheet for trying things out.
points:
  hub.spin:
    name: Spin
    ask: { technician: How does it turn?, owner: Does it turn smoothly? }
    words: { smooth: smooth, rough: rough, tight: tight }
  hub.float:
    name: Float
    ask: { technician: End float at the hub? }
    leave: This needs a dial gauge.
  hub.noise:
    name: Noise
    ask: { technician: What is heard? }
    leave: Told in the workshop.
    fields: { heard: Heard, age: Age, air: Tyre pressure }
    words: { none: none, heard.hum: a hum, click: a click }
faults:
  hub.race: { says: The race breaks up. }
  hub.play: { says: Too much play. }
jobs:
  job.hub.renew: { name: Renew the bearing, does: New bearing. }
parts: { bearing: Bearing, both-races: Both races together, grease: Grease }
limits: { lim.float: End float }
derived: { hub.odd: More than the twin }
`,
};
