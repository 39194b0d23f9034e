/** The screens on the way to the first reply, fetched as one: whoever sees the first of them will see the others. */
export { Car } from "./car.js";
export { NewCar } from "./new-car.js";
export { NewVisit } from "./new-visit.js";
export { Point, Round } from "./round.js";
