import type { Expected } from './fault.js';
import type { Language } from './parameters.js';

/** Few words, so that the page can speak before, and without, the planner. The first four are those of shared/locales. */
export interface Texts {
  readonly heading: string;
  readonly 'unknown-field': string;
  readonly 'not-one-of': string;
  readonly duplicate: string;
  readonly expected: Readonly<Record<Expected, string>>;
  readonly missing: string;
}

export const texts: Readonly<Record<Language, Texts>> = {
  en: {
    heading: 'These values cannot be used:',
    'unknown-field': '{field} is not a known field here. Allowed: {fields}.',
    'not-one-of': '{field} is {value}; allowed: {choices}.',
    duplicate: '{field} is {value}, which is taken already; each name stands once.',
    expected: {
      colour: 'a CSS colour, such as #20618f',
      length: 'a CSS length, such as 8px',
      origin: 'an origin, such as https://club.example',
    },
    missing: 'The planner could not be loaded. Reload the page to try again.',
  },
  de: {
    heading: 'Diese Werte lassen sich nicht verwenden:',
    'unknown-field': '{field} ist hier kein bekanntes Feld. Erlaubt: {fields}.',
    'not-one-of': '{field} ist {value}; erlaubt: {choices}.',
    duplicate: '{field} ist {value} und damit schon vergeben; jeder Name steht einmal.',
    expected: {
      colour: 'eine CSS-Farbe wie #20618f',
      length: 'eine CSS-Länge wie 8px',
      origin: 'ein Ursprung (Origin) wie https://club.example',
    },
    missing: 'Der Planer ließ sich nicht laden. Die Seite neu laden, um es noch einmal zu versuchen.',
  },
  fr: {
    heading: 'Ces valeurs ne peuvent pas être utilisées :',
    'unknown-field': '{field} n’est pas un champ connu ici. Permis : {fields}.',
    'not-one-of': '{field} vaut {value} ; permis : {choices}.',
    duplicate: '{field} vaut {value}, déjà pris ; chaque nom figure une seule fois.',
    expected: {
      colour: 'une couleur CSS, comme #20618f',
      length: 'une longueur CSS, comme 8px',
      origin: 'une origine, comme https://club.example',
    },
    missing: 'Le planificateur n’a pas pu être chargé. Rechargez la page pour réessayer.',
  },
  es: {
    heading: 'Estos valores no se pueden usar:',
    'unknown-field': '{field} no es un campo conocido aquí. Se admite: {fields}.',
    'not-one-of': '{field} es {value}; se admite: {choices}.',
    duplicate: '{field} es {value}, que ya está en uso; cada nombre aparece una sola vez.',
    expected: {
      colour: 'un color de CSS, como #20618f',
      length: 'una longitud de CSS, como 8px',
      origin: 'un origen, como https://club.example',
    },
    missing: 'No se ha podido cargar el planificador. Recarga la página para volver a intentarlo.',
  },
  ar: {
    heading: 'لا يمكن استعمال هذه القيم:',
    'unknown-field': '{field}: حقل غير معروف هنا. المسموح: {fields}.',
    'not-one-of': '{field}: القيمة {value}؛ المسموح: {choices}.',
    duplicate: '{field}: القيمة {value} مستعملة من قبل؛ كل اسم يرد مرة واحدة.',
    expected: {
      colour: 'لون من CSS مثل #20618f',
      length: 'طول من CSS مثل 8px',
      origin: 'أصل مثل https://club.example',
    },
    missing: 'تعذّر تحميل المخطِّط. أعد تحميل الصفحة للمحاولة من جديد.',
  },
};
