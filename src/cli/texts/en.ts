/** The command's own texts; what it shares with the page is in shared/locales. */
export const english = {
  about: 'Divides the hours of a runner’s training week among kinds of training, by season phase, level and event.',

  columns:
    'Columns of a CSV roster, in any order, with a header line: {columns}. An empty cell or a column left out stands for the option given, else for the method’s starting value. `days` holds the minutes of the seven days, Monday first, with spaces between.',
  ndjson:
    'A line of an NDJSON roster is an object with any of: {fields}. `days` is a list of seven numbers, and stands for a `week` of which no more is said.',
  'exit-codes':
    'Ends with 0 where all went well, 1 where lines of a roster were faulty, 2 where nothing could be planned.',

  'fault.early': '--early is {early}; allowed: before --at, which is {at}.',
  'fault.extra': '{given} is one argument too many.',
  'fault.missing-value': '{option} needs a value.',
  'fault.no-week': '--week-of is missing: it names the week. Or ask for a season, with --date, --start or --weeks.',
  'fault.one-week': '{option} is for one week alone; a season is asked for with {season}.',
  'fault.twice': '{option} stands there twice; allowed: once.',
  'fault.unknown-command': '{given} is not a command. Allowed: {allowed}.',
  'fault.unknown-option': '{given} is not an option here. Allowed: {allowed}.',
  'fault.unwanted-value': '{option} takes no value; given: {given}.',

  'heading.answers': 'Answers',
  'heading.commands': 'Commands',
  'heading.movements': 'Patterns and their movements',
  'heading.options': 'Options',
  'heading.usage': 'Usage',

  'command.plan': 'the plan of one week, or of every runner of a roster',
  'command.season': 'every week up to an event',
  'command.running': 'paces, heart rates and every run of a week',
  'command.strength': 'the strength sessions of a week, set by set',
  'command.checks': 'the plan of a week held against what is known',
  'command.calendar': 'the sessions of a week or a season as a file for calendars',
  'command.table': 'the sessions of a week, or the weeks of a season, as a CSV table',
  'command.basis': 'what every number and rule of the method rests on',
  'command.help':
    'weekwright plan --help lists the options of a plan; weekwright season --help, weekwright running --help, weekwright strength --help, weekwright checks --help, weekwright calendar --help, weekwright table --help and weekwright basis --help those of the other commands.',

  'option.hours': 'hours a week, {least} to {most}; {start} where left out',
  'option.choice': '{choices}; {start} where left out',
  'option.strength-cap': 'most minutes of strength above six hours a week, {least} to {most}; {start} where left out',
  'option.days': 'minutes available on the seven days, Monday first; the sessions are laid on them',
  'option.method': 'a coach’s method, a JSON document',
  'option.roster': 'plans for many runners from CSV or NDJSON; - reads standard input',
  'option.json': 'the answer as JSON; of a roster, one plan a line',
  'option.lang': 'language of the answer: {choices}',
  'option.help': 'this text',
  'option.version': 'the version',

  'handout.about':
    'The answer is a file, on standard output. --week-of names the week by any of its days; where an option of a season stands instead of it (--date, --start or --weeks among them), the file has every week of the season. With --days, sessions are on days; without, or where they do not fit, on any day of the week. The options of runs and strength are as for weekwright running and weekwright strength. Nothing that is told of a person is kept.',
  'calendar.about':
    'A calendar of RFC 5545. Imported again under the same name, its sessions are updated where a calendar has them already; a session that is no longer planned stays there until it is taken out by hand.',
  'table.about':
    'A table of RFC 4180 in UTF-8, without a byte order mark, with numbers as machines write them. That of a season has the minutes of each kind of training by week.',
  'option.week-of': 'a day of the week that is asked for',
  'option.name': 'what the plan is called, {most} characters at most; plans of other names have events of their own',
  'option.contact': 'whom to ask, at the end of every event; {most} characters at most',
  'option.at': 'when sessions begin, such as 18:00; they have whole days where left out',
  'option.early': 'when the first of several sessions of a day begins, before the time of --at; {start} where left out',
  'note.any-day': 'Weeks of which the sessions are for any day, as they do not fit on the days given: {weeks}.',

  'season.dates':
    'Dates are written as 2027-04-11. Two of date, start and weeks are enough; with one of them the season has the method’s usual weeks. What is left out is as the method has it.',
  'option.date': 'the day of the event',
  'option.start': 'a day of the first week',
  'option.weeks': 'weeks up to the event, its own included',
  'option.most-hours': 'the most hours of a week',
  'option.rise': 'most that a week may have above the highest of the four weeks before',
  'option.easier-every': 'every so many weeks one is easier; 0 for none',
  'option.easier-drop': 'what an easier week loses',
  'option.taper-weeks': 'weeks of the taper, that of the event included; 0 for none',
  'option.taper-drop': 'what all weeks of the taper together lose',
  'option.upkeep-from': 'from which phase on strength is only kept up: {choices}',
  'option.upkeep-sessions': 'strength sessions a week that keep it up',
  'option.recovery-weeks': 'weeks of rest after the event',
  'option.phases': 'the phases before the taper, of {choices}; without weeks a phase takes its share',
  'option.events': 'further events, each a date and one of {choices}',
  'option.by-hand': 'weeks set by hand: a day, hours (0 for a week off), and why: {choices}',
  'option.weeks-off': 'weeks without training before the season; hours are those before them',
  'option.longest-run': 'minutes of the longest run in the four weeks before the season',

  'checks.about':
    'The inputs of the week are as for a plan. Nothing that is told of a person is kept, and answers go into no document. With some of them there is no plan: the advice stands on the error stream, and the command ends with 2.',
  'option.hours-before': 'hours of a usual week in the last month, {least} to {most}',
  'option.longest-run.checks': 'minutes of the longest run in the last 30 days',
  'option.loads':
    'loads of your own last weeks, {least} to {most} each, {weeks} weeks at most: seven days, Monday first, or one number for the week; a load is effort times minutes',
  'option.effort':
    'how hard sessions of {choices} feel as a whole, {least} to {most}; as the method has it where left out',
  'option.answers': 'what is so, of the questions before the start; the answers are listed below',
  'part.week': 'week {week}',
  'part.day': 'week {week}, {day}',

  'running.about':
    'A race or a threshold pace gives paces and distances; without one, runs go by feel. The inputs of the week are as for a plan. Nothing that is told of a person is kept.',
  'option.race': 'a race that was run, and its time: 10k=45:00, half-marathon=1:39:17, 1500m=5:10',
  'option.race-date': 'the day of the race',
  'option.threshold-pace':
    'the pace that can be held for about an hour, of a kilometre, or of a mile with --unit mile; {least} to {most} a kilometre; a race counts before it',
  'option.age': 'in years, {least} to {most}',
  'option.highest-heart':
    'the highest heart rate as measured, {least} to {most} beats a minute; estimated from the age where left out',
  'option.resting-heart': 'the resting heart rate, {least} to {most} beats a minute',
  'option.weight': 'in kilograms, {least} to {most}; energy is estimated where it is told',
  'running.table.pace': 'Pace {per}',
  'running.table.effort': 'Effort, 0 to 10',
  'running.table.feel': 'By feel',
  'running.distance-of-week': 'All runs of the week together: {distance}.',
  'part.metres': 'metres',
  'part.seconds': 'time',

  'strength.about':
    'Movements that take a weight, for --lifted: {movements}. The inputs of the week are as for a plan. Nothing that is told of a person is kept.',
  'strength.movements': 'How the movements are done',
  'option.equipment': 'what there is to train with: {choices}, or none; {start} where left out',
  'option.minutes': 'minutes of every session, {least} to {most}; as planned where left out',
  'option.form': 'movements chosen for patterns',
  'option.lifted':
    'sets as heavy as so many repetitions allow, {least} to {most} kilograms, 1 to {repetitions} times: the weights follow from them',

  'roster.empty': 'The roster is empty; its first line has to name columns: {columns}.',
  'roster.fields': '{given} fields; allowed: {expected}, as in the header.',
  'roster.line': 'Line {line}: {text}',
  'roster.named-line': 'Line {line} ({name}): {text}',
  'roster.whole-line': 'the line',
  'roster.quotes': 'Quotation marks that do not match; nothing after this line was read.',

  'unreadable.EACCES': 'access is refused',
  'unreadable.EISDIR': 'it is a folder',
  'unreadable.ENOENT': 'there is no such file',
} as const;
