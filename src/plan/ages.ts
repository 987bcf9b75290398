/**
 * Ages in years at which other guidance begins. Below the first numbers for adults do not hold: youth lifting asks for
 * supervision (Faigenbaum et al. 2009). From the second on, strength is kept by two sessions a week (Spiering et al.
 * 2021), and balance and strength are asked for on three days (World Health Organization 2020).
 */
export const ages = { adult: 18, older: 65 } as const;
