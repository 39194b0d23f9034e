/** The page on which the storage contract runs in a real browser. */
import "../../../store/browser-page.js";
