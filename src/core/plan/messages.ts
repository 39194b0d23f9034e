/** What each problem of planning says, by code: what is wrong, then what to do. {name} is filled from its params. */
import type { Problem } from "../terms/index.js";

export const PLAN_MESSAGES: Readonly<Record<string, string>> = {
  // Access.
  "access.circle": "Each of these must be open before the next, round and round: {chain}. Take one of the steps out.",
  "access.closed-state": "{job} needs {state}, which can't be planned. It is set aside until that is put right.",
  "access.closed-way": "{job}: way {way} needs {state}, which can't be planned, so that way is not weighed.",
  "access.job-twice": "{job} stands twice; the first is planned. Give each job its own name.",
  "access.lifeLeft": "{job}: life left is {found}. Give whole per cent, 0 to 100, or leave it out.",
  "access.minutes": "{of}: {found} minutes. Give whole minutes, low, likely and high, none above the next.",
  "access.no-minutes": "{job} has no minutes. It is set aside until somebody says how long it takes.",
  "access.partPrice": "{job}: the part's price is {found}. Give whole minor units, nought or more, or leave it out.",
  "access.rate": "{job}: the labour rate is {found}. Give whole minor units an hour, nought or more, or leave it out.",
  "access.state-twice": "{state} stands twice; the first is planned. Give each its own name.",
  "access.unknown-state": "{of} needs {state} open first, which is not known. Take it out or add it.",
  // Choice within a budget.
  "choice.both-mandatory": "{jobs}: all must be done, yet at most one of them may be. Make only one a must.",
  "choice.budget": "The budget is {found}. Give whole minor units, nought or more.",
  "choice.cost": "{of} costs {found}. Give whole minor units, nought or more.",
  "choice.job-circle": "Each of these jobs needs the next, round and round: {chain}. Do them together as one set.",
  "choice.never": "{of} can never be done: of {jobs}, at most one may be. Take one out of the group.",
  "choice.node-cap": "The longest search is {found} steps. Give a whole number, one or more.",
  "choice.state-circle":
    "Each of these must be open before the next, round and round: {chain}. Take one of the steps out.",
  "choice.too-large": "All costs, or all values, together are too large to be summed exactly. Use larger units.",
  "choice.twice": "{of} stands twice. Give each its own name.",
  "choice.unknown-job": "{of} needs the job {named}, which is not here. Nearest: {expected}. Take it out or add it.",
  "choice.unknown-state": "{of} needs {named} open, which is not known. Nearest: {expected}. Take it out or add it.",
  "choice.value": "{of} is worth {found}. Give a whole number, nought or more.",
  // The whole list.
  "plan.parts-assumed": "Dates take as here what nobody has said anything of: {parts}.",
  // Estimate, its terms, its forecast.
  "estimate.beyond": "Together {found} in the smallest coin: more than {most}. Look for a slip in a price or a count.",
  "estimate.day": "{found} is no day. Write it as 2026-03-31.",
  "estimate.missing": "{id}: {what} is missing. Give the figure: nothing missing is taken for nought.",
  "estimate.negative": "{id}: {what} {found} is below zero. A credit is an addition below zero, not a price.",
  "estimate.no-pieces": "{id}: none of it is ordered. Leave the line out or say how many.",
  "estimate.not-whole": "{id}: {what} {found} is no whole number (minutes, or the smallest coin).",
  "estimate.order": "{id}: {what} {found} do not rise. Give low, likely, high in this order.",
  "estimate.price-ahead": "{id}: the price is of {found}, after the estimate of {asOf}.",
  "estimate.price-date": "{id}: {found} is no day, so the age of the price is not known.",
  "estimate.price-old": "{id}: the price is of {found}, {days} days old (more than {most}). Ask again.",
  "estimate.price-undated": "{id}: nobody noted when this price was asked for.",
  "estimate.rate": "{id}: there is no labour rate {found}. Known: {expected}.",
  "estimate.spread": "{found} is no way to work out a spread. Known: {expected}.",
  "estimate.too-large": "{id}: {what} {found} is more than {most}. Is it a slip?",
  "estimate.twice": "{id} stands twice in {list}. The first counts; give the other a name of its own.",
  "forecast.addition": "{id}: {found} is no whole number of the smallest coin, or more than {most}.",
  "forecast.currency": "The first estimate is in {first}, the present one in {now}: they cannot be compared.",
  "forecast.set-aside": "Not in these figures, for want of minutes or a price: {ids}.",
  "terms.currency": "{found} is no currency code. Three capital letters as in ISO 4217: EUR.",
  "terms.digits": "Tax cannot be rounded to {found} digits; 0 to {most}.",
  "terms.level": "Tax cannot be rounded at {found}. Known: {expected}.",
  "terms.minor-digits": "{currency} with {found} digits behind the point does not go together; {digits} would.",
  "terms.minor-digits-missing": "How many digits stand behind the point in {currency}? It is none of the common ones.",
  "terms.no-rate": "The house has no labour rate. Give one.",
  "terms.rounding": "{found} is no way of rounding. Known: {expected}.",
  "terms.tax-group": "There is no rate of tax {found}. Known: {expected}.",
  // Progress.
  "progress.fitted-failed": "{part} for {job} at {place} was fitted though it failed its check. Look at it again.",
  "progress.fitted-unchecked": "{part} for {job} at {place} was fitted and nobody says it was checked. Check it.",
  "progress.no-day": "“{named}” is no day. Write YYYY-MM-DD.",
  "progress.no-next": "{job} at {place} waits and nobody says until when. Name the day to take it up again.",
  "progress.no-promise": "{part} for {job} at {place} is ordered with no day promised and none to ask. Name one.",
  // Dates.
  "schedule.block-unknown": "The block {block} names {named}, which is no job here. Take it out or add the job.",
  "schedule.circle": "These jobs each wait for the next: {jobs}. Take one of the steps out.",
  "schedule.clock-change": "{named} is no change of the clocks. Give day, minute and by how much.",
  "schedule.closed-days": "{whose}: shut from {from} to {to} is no span of days. Put the earlier day first.",
  "schedule.job-twice": "{job} stands twice. Give each job its own name.",
  "schedule.lead-days": "{whose}: days of lead and carriage are whole numbers from nought to two years.",
  "schedule.left-out": "{job} has no date: it waits for {waits}.",
  "schedule.lifts": "The number of lifts is no whole number.",
  "schedule.never-open": "{whose} is never open in the two years after {from}. Look at the days it works.",
  "schedule.no-day": "“{named}” is no day and time of the calendar. Write YYYY-MM-DD.",
  "schedule.no-lead": "{whose}: how many days it takes is not known. Ask, or say when the part comes.",
  "schedule.no-minutes": "{job} has no minutes. Give whole minutes, nought or more.",
  "schedule.no-people": "Nobody works in this workshop. Give at least one person.",
  "schedule.not-enough": "{job} needs {needs} {what}, and there are {has}. Change the job or the workshop.",
  "schedule.opening-times": "Opening times of weekday {weekday} overlap or end before they begin.",
  "schedule.part-no-date": "{part} for {job} has no date. Say that it is here, when it comes, or where to order it.",
  "schedule.part-nowhere": "{part} is for {named}, which is no job here.",
  "schedule.part-overdue": "{part} for {job} was to come on {on} and is not said to be here. Ask when it comes.",
  "schedule.release": "{job} may not start before a day that is none.",
  "schedule.supplier-unknown": "{part} comes from {named}, who is not among the suppliers.",
  "schedule.supplier-week": "{whose}: days it works are 1 for Monday to 7 for Sunday.",
  "schedule.too-far": "{job} would end more than two years on. Look at its parts and the days open.",
  "schedule.unknown-job": "{job} follows {named}, which is no job here. Take that step out or add the job.",
  "schedule.week": "A week has seven days, from Monday; {found} are given.",

  // Doing.
  "doing.circle":
    "These jobs each wait for the next: {jobs}. Take one of the steps out; until then they stand by urgency.",
  "doing.job-twice": "{job} stands twice; it is done once. Give each job its own name.",
  "doing.unknown-after": "{job} ends in {named}, which is not known. Add it, or do it without.",

  // Sets.
  "sets.alone": "{part} cannot be ordered alone: its counterpart is {counterpart}. Order both, or say why not.",
};

/** A problem of planning as one sentence or two. */
export function tellPlan({ code, params }: Problem): string {
  return (PLAN_MESSAGES[code] ?? code).replace(/\{(\w+)\}/g, (_, name: string) => {
    const value = params[name];
    return Array.isArray(value) ? value.join(", ") : String(value ?? "");
  });
}
