/** How a value of a chosen size is brought about under each limit of the legal check. Refuses to know any edge. */
import { type Applies, type Brought, mm, of, plain } from "./limit-brought.js";

const SIDE = "side-L";
/** The edge of the beam on a wall ten metres away. */
const onWall: Brought = {
  at: SIDE,
  says: (value) => ({ [`legal.lamp-aim@${SIDE}`]: of(value, "cm"), [`legal.lamp-aim.distance@${SIDE}`]: "10 m" }),
};
const chip = (where: string): Brought => ({
  at: "car",
  says: (value) => ({ "legal.screen": where, "legal.screen.size": mm(value) }),
});

export const LEGAL_BROUGHT: Readonly<Record<string, Brought>> = {
  "legal.aim_high": onWall,
  "legal.aim_low": onWall,
  "legal.flash": plain(`legal.flash@${SIDE}`, "s"),
  "legal.flash_fast": plain(`legal.flash@${SIDE}`, "s"),
  "legal.chip_wiped": chip("chip-wiped"),
  "legal.chip_driver": chip("chip-driver"),
  "legal.belt_years": plain(`legal.belt-seat.years@${SIDE}`, "a"),
};

export const LEGAL_APPLIES: Applies = {
  "lim.chip-wiped": { says: { "legal.screen": "chip-wiped" } },
  "lim.chip-driver": { says: { "legal.screen": "chip-driver" } },
};
