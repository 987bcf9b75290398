// The development server has no `.js` beside a `.ts`: workers are fetched from their source.
const RealWorker = globalThis.Worker;

export const SourceWorker = class extends RealWorker {
  constructor(url: string | URL, options?: WorkerOptions) {
    super(String(url).replace(/\.js$/, '.ts'), options);
  }
};

globalThis.Worker = SourceWorker;
