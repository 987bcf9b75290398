/** The least and the most minutes that a session may be given. */
export const sessionMinutes = { least: 1, most: 1440 } as const;
