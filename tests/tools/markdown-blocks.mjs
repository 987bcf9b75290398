const fence = /^```(\w+)(?: (\S+))?\n(.*?)^```$/gms;

/**
 * The fenced pieces of a Markdown text, in order: ` ```json harbour.json ` is the language and then a file's name.
 * @param {string} markdown
 */
export function codeBlocks(markdown) {
  return [...markdown.matchAll(fence)].map(([, language = '', name = '', text = '']) => ({ language, name, text }));
}

/**
 * Texts of the pieces that have a file's name, by that name.
 * @param {string} markdown
 * @returns {Readonly<Record<string, string>>}
 */
export function namedFiles(markdown) {
  const named = codeBlocks(markdown).filter(({ name }) => name !== '');
  return Object.fromEntries(named.map(({ name, text }) => [name, text]));
}

/**
 * The commands of a `console` piece, each with the lines that it printed.
 * @param {string} text
 */
export function consoleCommands(text) {
  const commands = text.split(/^\$ /m).slice(1);
  return commands.map((each) => {
    const end = each.indexOf('\n');
    return { command: each.slice(0, end), output: each.slice(end + 1) };
  });
}

/**
 * Writes every `console` piece again, with what `answer` says that its commands print.
 * @param {string} markdown
 * @param {(command: string) => Promise<string>} answer
 */
export async function answerConsoles(markdown, answer) {
  let answered = markdown;
  for (const { language, text } of codeBlocks(markdown)) {
    if (language !== 'console') continue;
    let fresh = '';
    for (const { command } of consoleCommands(text)) fresh += `$ ${command}\n${await answer(command)}`;
    answered = answered.replace(`\`\`\`console\n${text}`, () => `\`\`\`console\n${fresh}`);
  }
  return answered;
}
