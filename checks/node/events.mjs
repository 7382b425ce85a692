// The events of iCalendar files as ical.js reads them, as JSON: {file: [event, …]}.
// A time is told in UTC; a day as a day. Time zones come from the files themselves.
import { readFileSync } from "node:fs";
import ICAL from "ical.js";

const when = (time) =>
  time.isDate
    ? time.toString()
    : new Date(time.toUnixTime() * 1000).toISOString().replace(".000Z", "Z");

const events = (text) => {
  const calendar = new ICAL.Component(ICAL.parse(text));
  // A description of an earlier file must not answer for a zone of the same name in this one.
  ICAL.TimezoneService.reset();
  return calendar.getAllSubcomponents("vevent").map((component) => {
    const event = new ICAL.Event(component);
    return {
      uid: event.uid,
      start: when(event.startDate),
      end: when(event.endDate),
      summary: event.summary,
      description: event.description ?? "",
      status: component.getFirstPropertyValue("status"),
      sequence: event.sequence,
      reminders: component
        .getAllSubcomponents("valarm")
        .map((alarm) => alarm.getFirstPropertyValue("trigger").toSeconds()),
    };
  });
};

const told = {};
for (const file of process.argv.slice(2)) told[file] = events(readFileSync(file, "utf8"));
process.stdout.write(JSON.stringify(told));
