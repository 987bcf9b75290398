import { executeServerCommand } from '@web/test-runner-commands';
import { needs } from './instruments.js';

/** Media features by their names in CSS; what is left out is as browsers start. */
export interface MediaFeatures {
  readonly 'prefers-color-scheme'?: 'light' | 'dark';
  readonly 'prefers-reduced-motion'?: 'reduce' | 'no-preference';
  readonly 'forced-colors'?: 'active' | 'none';
}

const usual: Required<MediaFeatures> = {
  'prefers-color-scheme': 'light',
  'prefers-reduced-motion': 'no-preference',
  'forced-colors': 'none',
};

/** Has the browser behave as on a device with these features. */
export async function useMedia(features: MediaFeatures = {}): Promise<void> {
  await executeServerCommand('media-features', { ...usual, ...features });
}

/** Tests on a device with these features; they are there where features can be set. */
export function describeWithMedia(name: string, features: MediaFeatures, register: () => void): void {
  needs('media', () => {
    describe(name, () => {
      before(() => useMedia(features));
      after(() => useMedia());
      register();
    });
  });
}
