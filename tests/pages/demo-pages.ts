/** The demo pages, and how many planners each of them has. */
export const demoPages = [
  { path: '/demo/index.html', planners: 0 },
  { path: '/demo/club.html', planners: 2 },
  { path: '/demo/blog.html', planners: 1 },
  { path: '/demo/consultation.html', planners: 1 },
  { path: '/demo/strict.html', planners: 1 },
  { path: '/demo/intake.html', planners: 1 },
] as const;

export const pagesWithPlanner = demoPages.filter(({ planners }) => planners > 0);
