/** What a page may say of the season. */
export interface SeasonAttributes {
  readonly eventDate: string | null | undefined;
  readonly mostHours: number | null | undefined;
  /** The request of a season as plain data, not yet checked. */
  readonly season: unknown;
}
