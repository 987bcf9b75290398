import type { english } from './en.js';

/** The command's own texts in French. */
export const french: Readonly<Record<keyof typeof english, string>> = {
  about:
    'Répartit les heures d’une semaine d’entraînement à la course à pied entre les types d’entraînement, selon la phase de la saison, le niveau et la compétition.',

  columns:
    'Colonnes d’une liste CSV, dans n’importe quel ordre, avec une ligne d’en-tête : {columns}. Une cellule vide ou une colonne absente vaut l’option donnée, sinon la valeur de départ de la méthode. `days` contient les minutes des sept jours, à partir de lundi, séparées par des espaces.',
  ndjson:
    'Une ligne d’une liste NDJSON est un objet avec n’importe lesquels de : {fields}. `days` est une liste de sept nombres, et remplace une `week` dont rien de plus n’est dit.',
  'exit-codes':
    'Se termine par 0 si tout a réussi, 1 si des lignes d’une liste étaient fautives, 2 si rien n’a pu être planifié.',

  'fault.early': '--early vaut {early} ; permis : avant --at, qui vaut {at}.',
  'fault.extra': '{given} est un argument de trop.',
  'fault.missing-value': '{option} demande une valeur.',
  'fault.no-week':
    '--week-of manque : cette option nomme la semaine. Ou demander une saison, avec --date, --start ou --weeks.',
  'fault.one-week': '{option} ne vaut que pour une semaine seule ; une saison est demandée par {season}.',
  'fault.twice': '{option} figure deux fois ; permis : une fois.',
  'fault.unknown-command': '{given} n’est pas une commande. Permis : {allowed}.',
  'fault.unknown-option': '{given} n’est pas une option ici. Permis : {allowed}.',
  'fault.unwanted-value': '{option} ne prend pas de valeur ; reçu : {given}.',

  'heading.answers': 'Réponses',
  'heading.commands': 'Commandes',
  'heading.movements': 'Types de mouvement et leurs exercices',
  'heading.options': 'Options',
  'heading.usage': 'Utilisation',

  'command.plan': 'le plan d’une semaine, ou de toutes les personnes d’une liste',
  'command.season': 'chaque semaine jusqu’à une compétition',
  'command.running': 'allures, fréquences cardiaques et chaque sortie d’une semaine',
  'command.strength': 'les séances de renforcement d’une semaine, série par série',
  'command.checks': 'le plan d’une semaine comparé à ce que l’on sait',
  'command.calendar': 'les séances d’une semaine ou d’une saison en fichier pour agendas',
  'command.table': 'les séances d’une semaine, ou les semaines d’une saison, en tableau CSV',
  'command.basis': 'sur quoi repose chaque nombre et chaque règle de la méthode',
  'command.help':
    'weekwright plan --help donne les options d’un plan ; weekwright season --help, weekwright running --help, weekwright strength --help, weekwright checks --help, weekwright calendar --help, weekwright table --help et weekwright basis --help celles des autres commandes.',

  'option.hours': 'heures par semaine, {least} à {most} ; {start} par défaut',
  'option.choice': '{choices} ; {start} par défaut',
  'option.strength-cap':
    'maximum de minutes de renforcement au-delà de six heures par semaine, {least} à {most} ; {start} par défaut',
  'option.days': 'minutes disponibles sur les sept jours, à partir de lundi ; les séances y sont placées',
  'option.method': 'une méthode personnelle, un document JSON',
  'option.roster': 'des plans pour beaucoup de personnes depuis CSV ou NDJSON ; - lit l’entrée standard',
  'option.json': 'la réponse en JSON ; pour une liste, un plan par ligne',
  'option.lang': 'langue de la réponse : {choices}',
  'option.help': 'ce texte',
  'option.version': 'la version',

  'handout.about':
    'La réponse est un fichier, sur la sortie standard. --week-of nomme la semaine par l’un de ses jours ; quand une option de saison figure à sa place (dont --date, --start ou --weeks), le fichier contient chaque semaine de la saison. Avec --days, les séances sont sur des jours ; sans cette option, ou si elles n’y tiennent pas, elles valent pour n’importe quel jour de la semaine. Les options de course et de renforcement sont celles de weekwright running et de weekwright strength. Rien de ce qui est indiqué sur une personne n’est gardé.',
  'calendar.about':
    'Un agenda selon RFC 5545. Importé à nouveau sous le même nom, il met à jour les séances déjà présentes dans un agenda ; une séance qui n’est plus prévue y reste jusqu’à ce qu’elle soit retirée à la main.',
  'table.about':
    'Un tableau selon RFC 4180 en UTF-8, sans marque d’ordre des octets, avec des nombres tels que les machines les écrivent. Celui d’une saison contient les minutes de chaque type d’entraînement par semaine.',
  'option.week-of': 'un jour de la semaine demandée',
  'option.name': 'nom du plan, {most} caractères au plus ; des plans d’autres noms ont leurs propres événements',
  'option.contact': 'à qui poser des questions, à la fin de chaque événement ; {most} caractères au plus',
  'option.at': 'heure de début des séances, comme 18:00 ; par défaut, elles durent des jours entiers',
  'option.early':
    'heure de début de la première de plusieurs séances d’un jour, avant celle de --at ; {start} par défaut',
  'note.any-day':
    'Semaines dont les séances valent pour n’importe quel jour, car elles ne tiennent pas sur les jours donnés : {weeks}.',

  'season.dates':
    'Les dates s’écrivent comme 2027-04-11. Deux parmi date, start et weeks suffisent ; avec une seule, la saison a les semaines habituelles de la méthode. Ce qui est omis est comme dans la méthode.',
  'option.date': 'le jour de la compétition',
  'option.start': 'un jour de la première semaine',
  'option.weeks': 'semaines jusqu’à la compétition, la sienne comprise',
  'option.most-hours': 'le maximum d’heures d’une semaine',
  'option.rise': 'ce qu’une semaine peut avoir au plus au-dessus du maximum des quatre semaines précédentes',
  'option.easier-every': 'une semaine allégée toutes les tant de semaines ; 0 pour aucune',
  'option.easier-drop': 'ce que perd une semaine allégée',
  'option.taper-weeks': 'semaines d’affûtage, celle de la compétition comprise ; 0 pour aucune',
  'option.taper-drop': 'ce que perdent ensemble toutes les semaines d’affûtage',
  'option.upkeep-from': 'à partir de quelle phase le renforcement n’est qu’entretenu : {choices}',
  'option.upkeep-sessions': 'séances de renforcement par semaine qui l’entretiennent',
  'option.recovery-weeks': 'semaines de repos après la compétition',
  'option.phases': 'les phases avant l’affûtage, parmi {choices} ; sans semaines, une phase prend sa part',
  'option.events': 'autres compétitions, chacune une date et l’un de {choices}',
  'option.by-hand':
    'semaines réglées à la main : un jour, des heures (0 pour une semaine libre), et pourquoi : {choices}',
  'option.weeks-off': 'semaines sans entraînement avant la saison ; les heures sont celles d’avant elles',
  'option.longest-run': 'minutes de la sortie la plus longue des quatre semaines avant la saison',

  'checks.about':
    'Les réglages de la semaine sont ceux d’un plan. Rien de ce qui est indiqué sur une personne n’est gardé, et les réponses n’entrent dans aucun document. Avec certaines d’entre elles, il n’y a pas de plan : le conseil figure sur la sortie d’erreur, et la commande se termine par 2.',
  'option.hours-before': 'heures d’une semaine habituelle du dernier mois, {least} à {most}',
  'option.longest-run.checks': 'minutes de la sortie la plus longue des 30 derniers jours',
  'option.loads':
    'charges des dernières semaines (historique personnel), {least} à {most} chacune, {weeks} semaines au plus : sept jours, à partir de lundi, ou un nombre pour la semaine ; une charge est l’effort multiplié par les minutes',
  'option.effort':
    'effort ressenti pour des séances entières de {choices}, {least} à {most} ; par défaut, comme dans la méthode',
  'option.answers': 'ce qui est vrai, parmi les questions avant de commencer ; les réponses sont listées plus bas',
  'part.week': 'semaine {week}',
  'part.day': 'semaine {week}, {day}',

  'running.about':
    'Une compétition ou une allure au seuil donne allures et distances ; sans l’une ni l’autre, les sorties se font au ressenti. Les réglages de la semaine sont ceux d’un plan. Rien de ce qui est indiqué sur une personne n’est gardé.',
  'option.race': 'une compétition courue, et son temps : 10k=45:00, half-marathon=1:39:17, 1500m=5:10',
  'option.race-date': 'le jour de cette compétition',
  'option.threshold-pace':
    'l’allure tenable environ une heure, par kilomètre, ou par mile avec --unit mile ; {least} à {most} par kilomètre ; une compétition passe avant',
  'option.age': 'en années, {least} à {most}',
  'option.highest-heart':
    'la fréquence cardiaque maximale mesurée, {least} à {most} battements par minute ; par défaut, estimée d’après l’âge',
  'option.resting-heart': 'la fréquence cardiaque de repos, {least} à {most} battements par minute',
  'option.weight': 'en kilogrammes, {least} à {most} ; l’énergie est estimée s’il est indiqué',
  'running.table.pace': 'Allure {per}',
  'running.table.effort': 'Effort, 0 à 10',
  'running.table.feel': 'Au ressenti',
  'running.distance-of-week': 'Toutes les sorties de la semaine ensemble : {distance}.',
  'part.metres': 'mètres',
  'part.seconds': 'temps',

  'strength.about':
    'Exercices qui prennent un poids, pour --lifted : {movements}. Les réglages de la semaine sont ceux d’un plan. Rien de ce qui est indiqué sur une personne n’est gardé.',
  'strength.movements': 'Comment se font les exercices',
  'option.equipment': 'matériel disponible : {choices}, ou none ; {start} par défaut',
  'option.minutes': 'minutes de chaque séance, {least} à {most} ; par défaut, comme prévu',
  'option.form': 'exercices choisis pour des types de mouvement',
  'option.lifted':
    'séries aussi lourdes que le nombre de répétitions le permet, {least} à {most} kilogrammes, 1 à {repetitions} fois : les poids en découlent',

  'roster.empty': 'La liste est vide ; sa première ligne doit nommer des colonnes : {columns}.',
  'roster.fields': '{given} champs ; permis : {expected}, comme dans l’en-tête.',
  'roster.line': 'Ligne {line} : {text}',
  'roster.named-line': 'Ligne {line} ({name}) : {text}',
  'roster.whole-line': 'la ligne',
  'roster.quotes': 'Des guillemets ne se correspondent pas ; rien n’a été lu après cette ligne.',

  'unreadable.EACCES': 'l’accès est refusé',
  'unreadable.EISDIR': 'c’est un dossier',
  'unreadable.ENOENT': 'ce fichier n’existe pas',
};
