/** Two windows of one phone on the same visit: each sees what the other kept, and nothing is kept twice. */
import { expect, test } from "../support/harness.js";
import { Walker } from "../support/walker.js";

test("a reply pressed in one window stands in the other", async ({ context, site }) => {
  const first = new Walker(await context.newPage(), site.address);
  await first.newCar("Seen in two windows");
  await first.newVisit();
  await first.open(`#/visit/${first.visit()}/round`);
  const second = new Walker(await context.newPage(), site.address);
  await second.open(`#/visit/${first.visit()}/round`);

  // Pressed in the window that lies in front: one behind may draw nothing, and what is not drawn can't be pressed.
  await first.page.bringToFront();
  const pressed = await first.firstReply();
  await second.open(pressed.hash);
  await expect(second.reply(pressed.words)).toHaveAttribute("aria-pressed", "true");

  // The other way round, while both show the same point.
  await first.wentOn(pressed);
  await first.open(pressed.hash);
  await second.page.bringToFront();
  const other = await second.anotherReply();
  await expect(first.reply(other.words)).toHaveAttribute("aria-pressed", "true");
  await expect(first.reply(pressed.words)).toHaveAttribute("aria-pressed", "false");
});
