import { executeServerCommand } from '@web/test-runner-commands';

/** Firefox gives the focus to its own bars behind the last thing of a page, and a page does not get it back by itself. */
beforeEach(async () => {
  if (!document.hasFocus()) await executeServerCommand('focus-page');
});
