// Stands first in every built page that a test opens: what the page refuses and what nobody caught, from the start.
globalThis.heard = [];
addEventListener('securitypolicyviolation', ({ effectiveDirective, blockedURI, sample }) =>
  globalThis.heard.push(`refused: ${effectiveDirective} ${blockedURI} ${sample}`),
);
addEventListener('error', ({ message }) => globalThis.heard.push(`error: ${message}`));
addEventListener('unhandledrejection', ({ reason }) => globalThis.heard.push(`rejected: ${reason}`));
