import type { english } from './en.js';

/** The command's own texts in Spanish. */
export const spanish: Readonly<Record<keyof typeof english, string>> = {
  about:
    'Reparte las horas de la semana de entrenamiento de quien corre entre tipos de entrenamiento, según la fase de la temporada, el nivel y la competición.',

  columns:
    'Columnas de una lista CSV, en cualquier orden, con una línea de encabezado: {columns}. Una celda vacía o una columna omitida equivale a la opción indicada o, si no la hay, al valor inicial del método. `days` contiene los minutos de los siete días, desde el lunes, separados por espacios.',
  ndjson:
    'Una línea de una lista NDJSON es un objeto con cualquiera de: {fields}. `days` es una lista de siete números y equivale a una `week` de la que no se dice nada más.',
  'exit-codes':
    'Termina con 0 si todo fue bien, con 1 si había líneas defectuosas en una lista, con 2 si no se pudo planificar nada.',

  'fault.early': '--early es {early}; se admite: antes de --at, que es {at}.',
  'fault.extra': '{given} es un argumento de más.',
  'fault.missing-value': '{option} necesita un valor.',
  'fault.no-week': 'Falta --week-of: indica la semana. O pedir una temporada, con --date, --start o --weeks.',
  'fault.one-week': '{option} es para una sola semana; con {season} se pide una temporada.',
  'fault.twice': '{option} aparece dos veces; se admite: una.',
  'fault.unknown-command': '{given} no es un comando. Se admite: {allowed}.',
  'fault.unknown-option': '{given} no es una opción aquí. Se admite: {allowed}.',
  'fault.unwanted-value': '{option} no lleva valor; recibido: {given}.',

  'heading.answers': 'Respuestas',
  'heading.commands': 'Comandos',
  'heading.movements': 'Patrones y sus ejercicios',
  'heading.options': 'Opciones',
  'heading.usage': 'Uso',

  'command.plan': 'el plan de una semana, o de cada persona de una lista',
  'command.season': 'todas las semanas hasta una competición',
  'command.running': 'ritmos, frecuencias cardíacas y todas las carreras de una semana',
  'command.strength': 'las sesiones de fuerza de una semana, serie a serie',
  'command.checks': 'el plan de una semana comparado con lo que se sabe',
  'command.calendar': 'las sesiones de una semana o una temporada como archivo para calendarios',
  'command.table': 'las sesiones de una semana, o las semanas de una temporada, como tabla CSV',
  'command.basis': 'en qué se basan todos los números y reglas del método',
  'command.help':
    'weekwright plan --help muestra las opciones de un plan; weekwright season --help, weekwright running --help, weekwright strength --help, weekwright checks --help, weekwright calendar --help, weekwright table --help y weekwright basis --help, las de los demás comandos.',

  'option.hours': 'horas por semana, de {least} a {most}; {start} si se omite',
  'option.choice': '{choices}; {start} si se omite',
  'option.strength-cap':
    'máximo de minutos de fuerza por encima de seis horas por semana, de {least} a {most}; {start} si se omite',
  'option.days': 'minutos disponibles en los siete días, desde el lunes; las sesiones se colocan en ellos',
  'option.method': 'el método propio, un documento JSON',
  'option.roster': 'planes para muchas personas a partir de CSV o NDJSON; - lee la entrada estándar',
  'option.json': 'la respuesta como JSON; de una lista, un plan por línea',
  'option.lang': 'idioma de la respuesta: {choices}',
  'option.help': 'este texto',
  'option.version': 'la versión',

  'handout.about':
    'La respuesta es un archivo, en la salida estándar. --week-of indica la semana con cualquiera de sus días; si en su lugar hay una opción de temporada (entre ellas --date, --start o --weeks), el archivo contiene todas las semanas de la temporada. Con --days, las sesiones están en días; sin esa opción, o si no caben, en cualquier día de la semana. Las opciones de carreras y fuerza son las de weekwright running y weekwright strength. No se conserva nada de lo que se indica sobre una persona.',
  'calendar.about':
    'Un calendario según RFC 5545. Si se importa de nuevo con el mismo nombre, se actualizan las sesiones que un calendario ya tiene; una sesión que ya no está prevista sigue allí hasta que se quita a mano.',
  'table.about':
    'Una tabla según RFC 4180 en UTF-8, sin marca de orden de bytes, con los números como los escriben las máquinas. La de una temporada contiene los minutos de cada tipo de entrenamiento por semana.',
  'option.week-of': 'un día de la semana que se pide',
  'option.name':
    'el nombre del plan, {most} caracteres como máximo; los planes con otros nombres tienen citas propias en el calendario',
  'option.contact': 'a quién preguntar, al final de cada cita del calendario; {most} caracteres como máximo',
  'option.at': 'cuándo empiezan las sesiones, como 18:00; ocupan días enteros si se omite',
  'option.early':
    'cuándo empieza la primera de varias sesiones de un día, antes de la hora de --at; {start} si se omite',
  'note.any-day': 'Semanas cuyas sesiones son para cualquier día, porque no caben en los días indicados: {weeks}.',

  'season.dates':
    'Las fechas se escriben como 2027-04-11. Bastan dos de date, start y weeks; con una sola, la temporada tiene las semanas habituales del método. Lo que se omite queda como en el método.',
  'option.date': 'el día de la competición',
  'option.start': 'un día de la primera semana',
  'option.weeks': 'semanas hasta la competición, incluida la suya',
  'option.most-hours': 'el máximo de horas de una semana',
  'option.rise': 'cuánto puede superar una semana, como máximo, a la más alta de las cuatro anteriores',
  'option.easier-every': 'cada cuántas semanas hay una más ligera; 0 para ninguna',
  'option.easier-drop': 'lo que pierde una semana más ligera',
  'option.taper-weeks': 'semanas de la puesta a punto, incluida la de la competición; 0 para ninguna',
  'option.taper-drop': 'lo que pierden todas las semanas de la puesta a punto juntas',
  'option.upkeep-from': 'desde qué fase la fuerza solo se mantiene: {choices}',
  'option.upkeep-sessions': 'sesiones de fuerza por semana que la mantienen',
  'option.recovery-weeks': 'semanas de descanso después de la competición',
  'option.phases': 'las fases antes de la puesta a punto, entre {choices}; sin semanas, una fase toma su parte',
  'option.events': 'otras competiciones, cada una con una fecha y una de {choices}',
  'option.by-hand': 'semanas fijadas a mano: un día, las horas (0 para una semana libre) y el motivo: {choices}',
  'option.weeks-off': 'semanas sin entrenamiento antes de la temporada; las horas son las anteriores a ellas',
  'option.longest-run': 'minutos de la carrera más larga en las cuatro semanas anteriores a la temporada',

  'checks.about':
    'Los datos de la semana son como los de un plan. No se conserva nada de lo que se indica sobre una persona, y las respuestas no van a ningún documento. Con algunas de ellas no hay plan: el consejo aparece en la salida de errores, y el comando termina con 2.',
  'option.hours-before': 'horas de una semana habitual del último mes, de {least} a {most}',
  'option.longest-run.checks': 'minutos de la carrera más larga de los últimos 30 días',
  'option.loads':
    'cargas de las últimas semanas propias, de {least} a {most} cada una, {weeks} semanas como máximo: siete días, desde el lunes, o un número para la semana; una carga es el esfuerzo multiplicado por los minutos',
  'option.effort':
    'el esfuerzo que se siente en conjunto en las sesiones de {choices}, de {least} a {most}; como en el método si se omite',
  'option.answers': 'lo que es cierto, de las preguntas previas; las respuestas se enumeran abajo',
  'part.week': 'semana {week}',
  'part.day': 'semana {week}, {day}',

  'running.about':
    'Una competición o un ritmo umbral dan ritmos y distancias; sin ellos, se corre por sensaciones. Los datos de la semana son como los de un plan. No se conserva nada de lo que se indica sobre una persona.',
  'option.race': 'una competición ya corrida y su tiempo: 10k=45:00, half-marathon=1:39:17, 1500m=5:10',
  'option.race-date': 'el día de la competición',
  'option.threshold-pace':
    'el ritmo que se puede mantener alrededor de una hora, por kilómetro, o por milla con --unit mile; de {least} a {most} por kilómetro; una competición cuenta antes',
  'option.age': 'en años, de {least} a {most}',
  'option.highest-heart':
    'la frecuencia cardíaca máxima medida, de {least} a {most} latidos por minuto; estimada por la edad si se omite',
  'option.resting-heart': 'la frecuencia cardíaca en reposo, de {least} a {most} latidos por minuto',
  'option.weight': 'en kilogramos, de {least} a {most}; la energía se estima si se indica',
  'running.table.pace': 'Ritmo {per}',
  'running.table.effort': 'Esfuerzo, de 0 a 10',
  'running.table.feel': 'Por sensaciones',
  'running.distance-of-week': 'Todas las carreras de la semana juntas: {distance}.',
  'part.metres': 'metros',
  'part.seconds': 'tiempo',

  'strength.about':
    'Ejercicios que llevan peso, para --lifted: {movements}. Los datos de la semana son como los de un plan. No se conserva nada de lo que se indica sobre una persona.',
  'strength.movements': 'Cómo se hacen los ejercicios',
  'option.equipment': 'lo disponible para entrenar: {choices}, o none; {start} si se omite',
  'option.minutes': 'minutos de cada sesión, de {least} a {most}; según lo previsto si se omite',
  'option.form': 'ejercicios elegidos para los patrones',
  'option.lifted':
    'series con el mayor peso que permiten esas repeticiones, de {least} a {most} kilogramos, de 1 a {repetitions} veces: de ellas se deducen los pesos',

  'roster.empty': 'La lista está vacía; su primera línea tiene que nombrar columnas: {columns}.',
  'roster.fields': '{given} campos; se admite: {expected}, como en el encabezado.',
  'roster.line': 'Línea {line}: {text}',
  'roster.named-line': 'Línea {line} ({name}): {text}',
  'roster.whole-line': 'la línea',
  'roster.quotes': 'Comillas que no coinciden; después de esta línea no se leyó nada.',

  'unreadable.EACCES': 'acceso denegado',
  'unreadable.EISDIR': 'es una carpeta',
  'unreadable.ENOENT': 'no existe tal archivo',
};
