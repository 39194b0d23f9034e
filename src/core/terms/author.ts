/** The door of terms for whoever reads what people write: which known word was meant. The app's first screens go without. */
export { nearest } from "./nearest.js";
