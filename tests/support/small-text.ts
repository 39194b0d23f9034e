/**
 * Text drawn smaller than a person under a car can read. One exception: the index beside each kept reading on a narrow
 * phone, where six of them share a line. Refuses to judge anything but size.
 */
import type { Page } from "@playwright/test";

const FLOOR_PX = 15;
const NARROW = { below: 372, floor: 14, only: ".got small" };
/** Sizes are written in rem with four digits. */
const ROUNDING_PX = 0.02;

/** What is drawn too small on the page as it stands: size, element and words of each; text in drawings as it is scaled. */
export async function tooSmall(page: Page): Promise<readonly string[]> {
  const narrow = (page.viewportSize()?.width ?? NARROW.below) < NARROW.below;
  return page.evaluate(
    ({ floor, exception }) => {
      const sizeOf = (element: Element): number => {
        const size = Number.parseFloat(getComputedStyle(element).fontSize);
        return element instanceof SVGGraphicsElement ? size * (element.getScreenCTM()?.d ?? 1) : size;
      };
      return [...document.querySelectorAll("body *")].flatMap((element) => {
        const words = [...element.childNodes]
          .filter((node) => node.nodeType === Node.TEXT_NODE)
          .map((node) => node.textContent?.trim() ?? "")
          .join(" ")
          .trim();
        if (words === "" || !element.checkVisibility()) return [];
        const least = exception && element.matches(exception.only) ? exception.floor : floor;
        const size = sizeOf(element);
        return size < least
          ? [`${size.toFixed(2)} px: <${element.tagName} class="${element.getAttribute("class")}"> ${words}`]
          : [];
      });
    },
    {
      floor: FLOOR_PX - ROUNDING_PX,
      exception: narrow ? { only: NARROW.only, floor: NARROW.floor - ROUNDING_PX } : null,
    },
  );
}
