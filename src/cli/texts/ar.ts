import type { english } from './en.js';

/** The command's own texts in Arabic. */
export const arabic: Readonly<Record<keyof typeof english, string>> = {
  about: 'يوزع ساعات أسبوع تدريب العداء على أنواع التدريب، بحسب مرحلة الموسم والمستوى والسباق.',

  columns:
    'أعمدة قائمة CSV، بأي ترتيب، مع سطر عناوين: {columns}. الخلية الفارغة أو العمود المتروك يعني قيمة الخيار المعطى، وإلا فقيمة البداية في الطريقة. `days` فيه دقائق الأيام السبعة، من الاثنين، وبينها مسافات.',
  ndjson:
    'كل سطر من قائمة NDJSON كائن فيه ما يراد من: {fields}. `days` قائمة من سبعة أرقام، ويقوم مقام `week` لا يقال عنه أكثر من ذلك.',
  'exit-codes':
    'ينتهي بالرمز 0 إذا سار كل شيء على ما يرام، و1 إذا كانت أسطر من القائمة معيبة، و2 إذا تعذر تخطيط أي شيء.',

  'fault.early': '--early: القيمة {early}؛ المسموح: قبل --at، وهو {at}.',
  'fault.extra': '{given}: وسيط زائد على اللازم.',
  'fault.missing-value': '{option}: يحتاج إلى قيمة.',
  'fault.no-week': '--week-of ناقص: به يسمى الأسبوع. أو يطلب موسم باستعمال --date أو --start أو --weeks.',
  'fault.one-week': '{option}: لأسبوع واحد فقط؛ والموسم مطلوب بسبب {season}.',
  'fault.twice': '{option}: ورد مرتين؛ المسموح: مرة واحدة.',
  'fault.unknown-command': '{given}: ليس أمرا. المسموح: {allowed}.',
  'fault.unknown-option': '{given}: ليس خيارا هنا. المسموح: {allowed}.',
  'fault.unwanted-value': '{option}: لا يأخذ قيمة؛ المعطى: {given}.',

  'heading.answers': 'الإجابات',
  'heading.commands': 'الأوامر',
  'heading.movements': 'الأنماط الحركية وتمارينها',
  'heading.options': 'الخيارات',
  'heading.usage': 'الاستعمال',

  'command.plan': 'خطة أسبوع واحد، أو خطة كل عداء في قائمة',
  'command.season': 'كل الأسابيع حتى السباق',
  'command.running': 'الوتيرة والنبض وكل جلسات الجري في أسبوع',
  'command.strength': 'جلسات القوة في أسبوع، مجموعة مجموعة',
  'command.checks': 'خطة أسبوع مقارنة بما هو معروف',
  'command.calendar': 'جلسات أسبوع أو موسم في ملف للتقويم',
  'command.table': 'جلسات أسبوع، أو أسابيع موسم، في جدول CSV',
  'command.basis': 'ما يستند إليه كل رقم وكل قاعدة في الطريقة',
  'command.help':
    'weekwright plan --help يسرد خيارات الخطة؛ و weekwright season --help و weekwright running --help و weekwright strength --help و weekwright checks --help و weekwright calendar --help و weekwright table --help و weekwright basis --help خيارات الأوامر الأخرى.',

  'option.hours': 'الساعات في الأسبوع، من {least} إلى {most}؛ وإن ترك: {start}',
  'option.choice': '{choices}؛ وإن ترك: {start}',
  'option.strength-cap': 'أكثر دقائق القوة فوق ست ساعات في الأسبوع، من {least} إلى {most}؛ وإن ترك: {start}',
  'option.days': 'الدقائق المتاحة في الأيام السبعة، من الاثنين؛ وتوزع عليها الجلسات',
  'option.method': 'طريقة مدرب، مستند JSON',
  'option.roster': 'خطط لعدائين كثيرين من CSV أو NDJSON؛ والعلامة - تقرأ الدخل القياسي',
  'option.json': 'الإجابة بصيغة JSON؛ وللقائمة خطة في كل سطر',
  'option.lang': 'لغة الإجابة: {choices}',
  'option.help': 'هذا النص',
  'option.version': 'النسخة',

  'handout.about':
    'الإجابة ملف، على الخرج القياسي. --week-of يسمي الأسبوع بأي يوم من أيامه؛ وإذا ورد بدلا منه خيار من خيارات الموسم (ومنها --date و --start و --weeks) ففي الملف كل أسابيع الموسم. مع --days تكون الجلسات على أيام؛ ومن دونه، أو حيث لا تتسع لها الأيام، تكون في أي يوم من الأسبوع. خيارات الجري وتمارين القوة كما في weekwright running و weekwright strength. لا يحتفظ بشيء مما يذكر عن شخص.',
  'calendar.about':
    'تقويم وفق RFC 5545. عند استيراده مرة أخرى بالاسم نفسه يجري تحديث الجلسات الموجودة أصلا في التقويم؛ والجلسة التي لم تعد مخططة تبقى هناك حتى تزال يدويا.',
  'table.about':
    'جدول وفق RFC 4180 بترميز UTF-8، بلا علامة ترتيب البايتات، وبأرقام كما تكتبها الآلات. وفي جدول الموسم دقائق كل نوع من التدريب بحسب الأسبوع.',
  'option.week-of': 'يوم من الأسبوع المطلوب',
  'option.name': 'اسم الخطة، وعدد حروفه {most} على الأكثر؛ وللخطط ذات الأسماء الأخرى مواعيدها الخاصة',
  'option.contact': 'جهة الاتصال للأسئلة، في آخر كل موعد؛ وعدد الحروف {most} على الأكثر',
  'option.at': 'متى تبدأ الجلسات، مثل 18:00؛ وإن ترك فلها أيام كاملة',
  'option.early': 'متى تبدأ الأولى من عدة جلسات في يوم، قبل وقت --at؛ وإن ترك: {start}',
  'note.any-day': 'أسابيع جلساتها في أي يوم، لأن الأيام المعطاة لا تتسع لها: {weeks}.',

  'season.dates':
    'تكتب التواريخ بالشكل 2027-04-11. يكفي اثنان من date و start و weeks؛ ومع واحد منها يكون للموسم عدد الأسابيع المعتاد في الطريقة. وما يترك يكون كما في الطريقة.',
  'option.date': 'يوم السباق',
  'option.start': 'يوم من الأسبوع الأول',
  'option.weeks': 'الأسابيع حتى السباق، ومنها أسبوعه',
  'option.most-hours': 'أكثر الساعات في الأسبوع',
  'option.rise': 'أكبر زيادة لأسبوع على أعلى الأسابيع الأربعة السابقة',
  'option.easier-every': 'واحد أخف كل هذا العدد من الأسابيع؛ و0 لتركه',
  'option.easier-drop': 'ما ينقص في الأسبوع الأخف',
  'option.taper-weeks': 'أسابيع تخفيف ما قبل السباق، ومنها أسبوع السباق؛ و0 لتركه',
  'option.taper-drop': 'ما ينقص في أسابيع تخفيف ما قبل السباق كلها معا',
  'option.upkeep-from': 'المرحلة التي يكتفى منها بالحفاظ على القوة: {choices}',
  'option.upkeep-sessions': 'جلسات القوة في الأسبوع للحفاظ عليها',
  'option.recovery-weeks': 'أسابيع الراحة بعد السباق',
  'option.phases': 'المراحل قبل تخفيف ما قبل السباق، من {choices}؛ والمرحلة التي لا تذكر أسابيعها تأخذ نصيبها',
  'option.events': 'سباقات أخرى، كل منها تاريخ وواحد من {choices}',
  'option.by-hand': 'أسابيع مضبوطة يدويا: يوم، وساعات (0 لأسبوع بلا تدريب)، والسبب: {choices}',
  'option.weeks-off': 'أسابيع بلا تدريب قبل الموسم؛ والساعات هي التي كانت قبلها',
  'option.longest-run': 'دقائق أطول جري في الأسابيع الأربعة قبل الموسم',

  'checks.about':
    'مدخلات الأسبوع كما في الخطة. لا يحتفظ بشيء مما يذكر عن شخص، ولا تدخل الإجابات أي مستند. مع بعضها لا تكون هناك خطة: تظهر النصيحة على مجرى الأخطاء، وينتهي الأمر بالرمز 2.',
  'option.hours-before': 'ساعات أسبوع معتاد في الشهر الأخير، من {least} إلى {most}',
  'option.longest-run.checks': 'دقائق أطول جري في آخر 30 يوما',
  'option.loads':
    'أحمال الأسابيع الشخصية الأخيرة، كل منها من {least} إلى {most}، وعدد الأسابيع {weeks} على الأكثر: سبعة أيام من الاثنين، أو رقم واحد للأسبوع؛ والحِمل هو الجهد مضروبا في الدقائق',
  'option.effort': 'مدى شدة الإحساس بالجلسات ككل ({choices})، من {least} إلى {most}؛ وإن ترك فكما في الطريقة',
  'option.answers': 'ما ينطبق من الأسئلة قبل البدء؛ والإجابات مسرودة أدناه',
  'part.week': 'الأسبوع {week}',
  'part.day': 'الأسبوع {week}، {day}',

  'running.about':
    'سباق أو وتيرة عتبة يعطي الوتيرة والمسافات؛ ومن دونهما يكون الجري بالإحساس. مدخلات الأسبوع كما في الخطة. لا يحتفظ بشيء مما يذكر عن شخص.',
  'option.race': 'سباق جرى خوضه وزمنه: 10k=45:00, half-marathon=1:39:17, 1500m=5:10',
  'option.race-date': 'يوم السباق',
  'option.threshold-pace':
    'الوتيرة التي يمكن الثبات عليها نحو ساعة، لكل كيلومتر، أو لكل ميل مع --unit mile؛ من {least} إلى {most} لكل كيلومتر؛ وإن ذكر سباق فهو المعتمد قبلها',
  'option.age': 'بالسنوات، من {least} إلى {most}',
  'option.highest-heart': 'أعلى نبض كما قيس، من {least} إلى {most} نبضة في الدقيقة؛ وإن ترك فيقدر من العمر',
  'option.resting-heart': 'نبض الراحة، من {least} إلى {most} نبضة في الدقيقة',
  'option.weight': 'بالكيلوغرام، من {least} إلى {most}؛ وتقدر الطاقة حيث يذكر',
  'running.table.pace': 'الوتيرة {per}',
  'running.table.effort': 'الجهد، من 0 إلى 10',
  'running.table.feel': 'بالإحساس',
  'running.distance-of-week': 'كل جلسات الجري في الأسبوع معا: {distance}.',
  'part.metres': 'الأمتار',
  'part.seconds': 'الزمن',

  'strength.about':
    'التمارين التي تقبل وزنا، للخيار --lifted: {movements}. مدخلات الأسبوع كما في الخطة. لا يحتفظ بشيء مما يذكر عن شخص.',
  'strength.movements': 'كيف تؤدى التمارين',
  'option.equipment': 'المعدات المتوفرة للتدريب: {choices}، أو none؛ وإن ترك: {start}',
  'option.minutes': 'دقائق كل جلسة، من {least} إلى {most}؛ وإن ترك فكما في الخطة',
  'option.form': 'تمارين مختارة للأنماط الحركية',
  'option.lifted':
    'مجموعات بأثقل وزن يسمح بهذا العدد من التكرارات، من {least} إلى {most} كغم، وعدد التكرارات من 1 إلى {repetitions}: ومنها تنتج الأوزان',

  'roster.empty': 'القائمة فارغة؛ ويجب أن يسمي سطرها الأول الأعمدة: {columns}.',
  'roster.fields': 'عدد الحقول {given}؛ المسموح: {expected}، كما في سطر العناوين.',
  'roster.line': 'السطر {line}: {text}',
  'roster.named-line': 'السطر {line} ({name}): {text}',
  'roster.whole-line': 'السطر',
  'roster.quotes': 'علامات اقتباس غير متوافقة؛ ولم يقرأ شيء بعد هذا السطر.',

  'unreadable.EACCES': 'الوصول مرفوض',
  'unreadable.EISDIR': 'هو مجلد',
  'unreadable.ENOENT': 'لا يوجد ملف كهذا',
};
