const softHyphen = '\u00AD';

/** A text for other programs, without the places where a screen may break a word: they would not find the word. */
export const plainText = (text: string): string => text.replaceAll(softHyphen, '');
