/** Something to be entered in a calendar. */
export interface CalendarEvent {
  /** The same each time that the event is written, so that a second import updates it and adds no other. */
  readonly uid: string;
  readonly title: string;
  /** May have line breaks; '' for none. */
  readonly notes: string;
  /** ISO date of its (first) day. */
  readonly date: string;
  /** Whole days of an all-day event, 1 and more; 1 where it has a time. */
  readonly days: number;
  /** Local time of day, 'HH:MM' of 24 hours, and minutes by the clock on the wall, 1 and more; null for an all-day event. */
  readonly time: { readonly start: string; readonly minutes: number } | null;
}

/** A calendar of events, in one language, as it was at one instant. */
export interface CalendarFile {
  /** As calendars list it. */
  readonly name: string;
  /** Of all texts: a BCP 47 tag. */
  readonly language: string;
  /** When it was written, in UTC: 'YYYYMMDDTHHMMSSZ'. */
  readonly stamp: string;
  readonly events: readonly CalendarEvent[];
}
