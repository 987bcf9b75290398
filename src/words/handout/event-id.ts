/**
 * The identifier of an event: the same for the same plan and the same session, so that a calendar that is given it again
 * updates what it has. A plan is told from others by its name, which is not to be read in the identifier: of it there is
 * only a number of 32 bits (FNV-1a, Fowler, Noll and Vo; constants from memory), which names that differ rarely share.
 *
 * @param session what tells the session from others of its plan: letters, digits and hyphens.
 */
export const eventId = (name: string, session: string): string => `${session}-${numberOf(name)}@weekwright`;

function numberOf(name: string): string {
  let hash = 0x811c9dc5;
  for (const unit of Array.from({ length: name.length }, (_, index) => name.charCodeAt(index)))
    hash = Math.imul(hash ^ unit, 0x01000193);
  return (hash >>> 0).toString(36);
}
