/** Not built yet: says that nothing is there. */
import { MissingScreen } from "./frame.js";

export const NewSheet = () => <MissingScreen />;
