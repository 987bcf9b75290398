import type { english } from './en.js';

/** The command's own texts in German. */
export const german: Readonly<Record<keyof typeof english, string>> = {
  about:
    'Teilt die Stunden einer Lauf-Trainingswoche auf Trainingsarten auf, nach Saisonphase, Trainingsstand und Wettkampf.',

  columns:
    'Spalten einer CSV-Liste, in beliebiger Reihenfolge, mit Kopfzeile: {columns}. Eine leere Zelle oder fehlende Spalte steht für die angegebene Option, sonst für den Anfangswert der Methode. `days` enthält die Minuten der sieben Tage, von Montag an, mit Leerzeichen dazwischen.',
  ndjson:
    'Eine Zeile einer NDJSON-Liste ist ein Objekt mit beliebigen von: {fields}. `days` ist eine Liste von sieben Zahlen und steht für eine `week`, von der nicht mehr gesagt wird.',
  'exit-codes':
    'Endet mit 0, wenn alles gelang, mit 1, wenn Zeilen einer Liste fehlerhaft waren, mit 2, wenn sich nichts planen ließ.',

  'fault.early': '--early ist {early}; erlaubt: vor --at, und das ist {at}.',
  'fault.extra': '{given} ist ein Argument zu viel.',
  'fault.missing-value': '{option} braucht einen Wert.',
  'fault.no-week':
    '--week-of fehlt: Es nennt die Woche. Oder es geht um eine Saison, mit --date, --start oder --weeks.',
  'fault.one-week': '{option} gilt nur für eine einzelne Woche; um eine Saison geht es wegen {season}.',
  'fault.twice': '{option} steht zweimal da; erlaubt: einmal.',
  'fault.unknown-command': '{given} ist kein Befehl. Erlaubt: {allowed}.',
  'fault.unknown-option': '{given} ist hier keine Option. Erlaubt: {allowed}.',
  'fault.unwanted-value': '{option} nimmt keinen Wert; gegeben: {given}.',

  'heading.answers': 'Antworten',
  'heading.commands': 'Befehle',
  'heading.movements': 'Bewegungsmuster und ihre Übungen',
  'heading.options': 'Optionen',
  'heading.usage': 'Aufruf',

  'command.plan': 'der Plan einer Woche, oder aller auf einer Liste',
  'command.season': 'jede Woche bis zu einem Wettkampf',
  'command.running': 'Tempo, Puls und jeder Lauf einer Woche',
  'command.strength': 'das Krafttraining einer Woche, Satz für Satz',
  'command.checks': 'der Plan einer Woche, an dem gemessen, was man weiß',
  'command.calendar': 'die Einheiten einer Woche oder Saison als Datei für Kalender',
  'command.table': 'die Einheiten einer Woche oder die Wochen einer Saison als CSV-Tabelle',
  'command.basis': 'worauf jede Zahl und Regel der Methode beruht',
  'command.help':
    'weekwright plan --help nennt die Optionen eines Plans; weekwright season --help, weekwright running --help, weekwright strength --help, weekwright checks --help, weekwright calendar --help, weekwright table --help und weekwright basis --help die der anderen Befehle.',

  'option.hours': 'Stunden pro Woche, {least} bis {most}; {start}, wo nichts angegeben ist',
  'option.choice': '{choices}; {start}, wo nichts angegeben ist',
  'option.strength-cap':
    'höchstens so viele Minuten Kraft über sechs Stunden pro Woche, {least} bis {most}; {start}, wo nichts angegeben ist',
  'option.days': 'verfügbare Minuten der sieben Tage, von Montag an; die Einheiten werden auf sie gelegt',
  'option.method': 'eigene Methode, ein JSON-Dokument',
  'option.roster': 'Pläne für viele aus CSV oder NDJSON; - liest die Standardeingabe',
  'option.json': 'die Antwort als JSON; bei einer Liste ein Plan pro Zeile',
  'option.lang': 'Sprache der Antwort: {choices}',
  'option.help': 'dieser Text',
  'option.version': 'die Version',

  'handout.about':
    'Die Antwort ist eine Datei, auf der Standardausgabe. --week-of nennt die Woche durch einen ihrer Tage; steht stattdessen eine Option einer Saison da (etwa --date, --start oder --weeks), enthält die Datei jede Woche der Saison. Mit --days liegen die Einheiten auf Tagen; ohne, oder wo sie nicht passen, gelten sie für irgendeinen Tag der Woche. Die Optionen für Läufe und Kraft sind wie bei weekwright running und weekwright strength. Nichts, was über eine Person angegeben wird, wird aufbewahrt.',
  'calendar.about':
    'Ein Kalender nach RFC 5545. Wird er unter demselben Namen noch einmal eingelesen, werden Einheiten geändert, die ein Kalender schon hat; eine, die nicht mehr geplant ist, bleibt dort, bis sie von Hand gelöscht wird.',
  'table.about':
    'Eine Tabelle nach RFC 4180 in UTF-8, ohne Byte-Reihenfolge-Marke, mit Zahlen, wie Maschinen sie schreiben. Die einer Saison enthält die Minuten jeder Trainingsart, Woche für Woche.',
  'option.week-of': 'ein Tag der Woche, um die es geht',
  'option.name': 'wie der Plan heißt, höchstens {most} Zeichen; unter anderem Namen hat ein Plan eigene Termine',
  'option.contact': 'wen man fragt, am Ende jedes Termins; höchstens {most} Zeichen',
  'option.at': 'wann Einheiten anfangen, etwa 18:00; ganze Tage, wo nichts angegeben ist',
  'option.early':
    'wann die erste von mehreren Einheiten eines Tages anfängt, vor der Zeit von --at; {start}, wo nichts angegeben ist',
  'note.any-day':
    'Wochen, deren Einheiten für irgendeinen Tag gelten, weil sie nicht auf die angegebenen Tage passen: {weeks}.',

  'season.dates':
    'Tage werden als 2027-04-11 geschrieben. Zwei von date, start und weeks genügen; mit einem davon hat die Saison die üblichen Wochen der Methode. Was fehlt, ist wie in der Methode.',
  'option.date': 'der Tag des Wettkampfs',
  'option.start': 'ein Tag der ersten Woche',
  'option.weeks': 'Wochen bis zum Wettkampf, mit seiner eigenen',
  'option.most-hours': 'die meisten Stunden einer Woche',
  'option.rise': 'höchstens so viel mehr als das Höchste der vier Wochen davor',
  'option.easier-every': 'alle so viele Wochen ist eine leichter; 0 für keine',
  'option.easier-drop': 'was eine leichtere Woche verliert',
  'option.taper-weeks': 'Wochen des Taperings, mit der des Wettkampfs; 0 für keine',
  'option.taper-drop': 'was alle Wochen des Taperings zusammen verlieren',
  'option.upkeep-from': 'ab welcher Phase Kraft nur erhalten wird: {choices}',
  'option.upkeep-sessions': 'Krafteinheiten pro Woche, die sie erhalten',
  'option.recovery-weeks': 'Wochen der Erholung nach dem Wettkampf',
  'option.phases': 'die Phasen vor dem Tapering, aus {choices}; ohne Wochen nimmt eine Phase ihren Anteil',
  'option.events': 'weitere Wettkämpfe, je ein Tag und eines von {choices}',
  'option.by-hand': 'von Hand gesetzte Wochen: ein Tag, Stunden (0 für keine) und warum: {choices}',
  'option.weeks-off': 'Wochen ohne Training vor der Saison; die Stunden sind die davor',
  'option.longest-run': 'Minuten des längsten Laufs in den vier Wochen vor der Saison',

  'checks.about':
    'Die Eingaben der Woche sind wie bei einem Plan. Nichts, was über eine Person angegeben wird, wird aufbewahrt, und Antworten gehen in kein Dokument. Bei manchen gibt es keinen Plan: Der Rat steht in der Fehlerausgabe, und der Befehl endet mit 2.',
  'option.hours-before': 'Stunden einer üblichen Woche im letzten Monat, {least} bis {most}',
  'option.longest-run.checks': 'Minuten des längsten Laufs in den letzten 30 Tagen',
  'option.loads':
    'Belastungen der eigenen letzten Wochen, je {least} bis {most}, höchstens {weeks} Wochen: sieben Tage, von Montag an, oder eine Zahl für die Woche; eine Belastung ist Anstrengung mal Minuten',
  'option.effort':
    'wie hart sich Einheiten von {choices} als Ganzes anfühlen, {least} bis {most}; wie in der Methode, wo nichts angegeben ist',
  'option.answers': 'was zutrifft, von den Fragen vor dem Anfang; die Antworten stehen unten',
  'part.week': 'Woche {week}',
  'part.day': 'Woche {week}, {day}',

  'running.about':
    'Ein Wettkampf oder ein Schwellentempo ergibt Tempo und Strecken; ohne beides geht es nach Gefühl. Die Eingaben der Woche sind wie bei einem Plan. Nichts, was über eine Person angegeben wird, wird aufbewahrt.',
  'option.race': 'ein gelaufener Wettkampf und seine Zeit: 10k=45:00, half-marathon=1:39:17, 1500m=5:10',
  'option.race-date': 'der Tag des Wettkampfs',
  'option.threshold-pace':
    'das Tempo, das sich etwa eine Stunde halten lässt, je Kilometer, mit --unit mile je Meile; {least} bis {most} je Kilometer; ein Wettkampf geht vor',
  'option.age': 'in Jahren, {least} bis {most}',
  'option.highest-heart':
    'der höchste Puls, gemessen, {least} bis {most} Schläge je Minute; aus dem Alter geschätzt, wo nichts angegeben ist',
  'option.resting-heart': 'der Ruhepuls, {least} bis {most} Schläge je Minute',
  'option.weight': 'in Kilogramm, {least} bis {most}; ist es angegeben, wird die Energie geschätzt',
  'running.table.pace': 'Tempo {per}',
  'running.table.effort': 'Anstrengung, 0 bis 10',
  'running.table.feel': 'Nach Gefühl',
  'running.distance-of-week': 'Alle Läufe der Woche zusammen: {distance}.',
  'part.metres': 'Meter',
  'part.seconds': 'Zeit',

  'strength.about':
    'Übungen, die ein Gewicht aufnehmen, für --lifted: {movements}. Die Eingaben der Woche sind wie bei einem Plan. Nichts, was über eine Person angegeben wird, wird aufbewahrt.',
  'strength.movements': 'Wie die Übungen gehen',
  'option.equipment': 'was vorhanden ist: {choices}, oder none; {start}, wo nichts angegeben ist',
  'option.minutes': 'Minuten jeder Einheit, {least} bis {most}; wie geplant, wo nichts angegeben ist',
  'option.form': 'für Bewegungsmuster gewählte Übungen',
  'option.lifted':
    'Sätze, so schwer, wie es für so viele Wiederholungen geht, {least} bis {most} Kilogramm, 1- bis {repetitions}-mal: Daraus ergeben sich die Gewichte',

  'roster.empty': 'Die Liste ist leer; ihre erste Zeile muss Spalten nennen: {columns}.',
  'roster.fields': '{given} Felder; erlaubt: {expected}, wie in der Kopfzeile.',
  'roster.line': 'Zeile {line}: {text}',
  'roster.named-line': 'Zeile {line} ({name}): {text}',
  'roster.whole-line': 'die Zeile',
  'roster.quotes': 'Anführungszeichen, die nicht zusammenpassen; nach dieser Zeile wurde nichts gelesen.',

  'unreadable.EACCES': 'der Zugriff ist verweigert',
  'unreadable.EISDIR': 'es ist ein Ordner',
  'unreadable.ENOENT': 'es gibt keine solche Datei',
};
