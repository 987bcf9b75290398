import type { AdviceId } from '../method/check-rules.js';

/** What may hold for a runner before the start; all of it is asked as a plain yes. */
export const answerIds = [
  'symptoms',
  'bone-pain',
  'known-disease',
  'not-active',
  'easy-only',
  'pain',
  'pregnant',
  'recent-birth',
  'low-energy',
] as const;
export type AnswerId = (typeof answerIds)[number];

/** What the answers lead to. */
export interface Screening {
  readonly advice: AdviceId;
  /** True where there is no plan at all. */
  readonly stops: boolean;
  /** The answers that led to it. */
  readonly because: readonly AnswerId[];
  /** Answers that call for a caution, whatever the advice. */
  readonly cautions: readonly AnswerId[];
}

const cautionIds: readonly AnswerId[] = ['pain', 'pregnant', 'recent-birth', 'low-energy'];

/**
 * The published screening: present activity, symptoms or known disease, and the wanted intensity. Symptoms, and warning
 * signs of bone stress, stop everything; so does a known disease before somebody who is not active has asked.
 *
 * @source Riebe et al. 2015 and ACSM's Guidelines, 10th ed., chapter 2 (E01, E02 in shared/evidence); bone: Warden et al.
 *   2014 (E05).
 * @example screen(['known-disease']).advice // 'ask-before-hard'
 */
export function screen(answers: readonly AnswerId[]): Screening {
  const has = (id: AnswerId): boolean => answers.includes(id);
  const told = (advice: AdviceId, because: readonly AnswerId[]): Screening => ({
    advice,
    stops: advice === 'stop' || advice === 'ask-first',
    because: because.filter(has),
    cautions: cautionIds.filter(has),
  });
  if (has('symptoms') || has('bone-pain')) return told('stop', ['symptoms', 'bone-pain']);
  if (has('known-disease') && has('not-active')) return told('ask-first', ['known-disease', 'not-active']);
  // The published screening lets easy training go on; a plan of runs is more than that, and the advice says so.
  if (has('known-disease'))
    return told(has('easy-only') ? 'stay-easy' : 'ask-before-hard', ['known-disease', 'easy-only']);
  if (has('not-active')) return told('start-easy', ['not-active']);
  return told('go', ['easy-only']);
}
