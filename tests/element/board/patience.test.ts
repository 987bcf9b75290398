import { aTimeout, expect, waitUntil } from '@open-wc/testing';
import { PatientSolver } from '../../../src/element/board/patient-solver.js';
import { solveWeek } from '../../../src/plan/week/week-solver.js';
import { hardProblem } from './hard-problem.js';
import { SourceWorker } from './workers.js';

/** A solver, and how often something has arrived. */
function solver() {
  const arrivals: number[] = [];
  const patient = new PatientSolver(() => arrivals.push(performance.now()), 6);
  return { patient, arrivals };
}
function duration(act: () => void): number {
  const start = performance.now();
  act();
  return performance.now() - start;
}
const patience = { timeout: 15_000 };

/** A worker that cannot be had: the page forbids it, or the file is not there. */
const withoutWorkers: Readonly<Record<string, typeof Worker>> = {
  'that are refused': class extends SourceWorker {
    constructor() {
      super(refuse());
    }
  },
  'whose file is not there': class extends SourceWorker {
    constructor() {
      super('/nowhere/week-worker.js', { type: 'module' });
    }
  },
};

function refuse(): never {
  throw new DOMException('refused', 'SecurityError');
}

describe('a week that takes long', () => {
  it('is being looked for at first, and then is there once with the proven answer', async () => {
    const { patient, arrivals } = solver();
    const problem = hardProblem(0);
    expect(patient.solve(problem)).to.deep.equal({ state: 'looking' });
    await waitUntil(() => arrivals.length > 0, 'it arrives', patience);
    expect(patient.solve(problem)).to.deep.equal(solveWeek(problem));
    await aTimeout(300);
    expect(arrivals).to.have.length(1);
  });

  it('asked for again meanwhile it is not begun again', async () => {
    const { patient, arrivals } = solver();
    const problem = hardProblem(1);
    for (let time = 0; time < 5; time += 1) expect(patient.solve(problem).state).to.equal('looking');
    await waitUntil(() => arrivals.length > 0, 'it arrives', patience);
    await aTimeout(300);
    expect(arrivals).to.have.length(1);
  });

  it('is known from then on', async () => {
    const { patient, arrivals } = solver();
    const problem = hardProblem(2);
    patient.solve(problem);
    await waitUntil(() => arrivals.length > 0, 'it arrives', patience);
    expect(patient.solve(problem)).to.equal(patient.solve(problem));
  });

  it('keeps the page for a small part of what it takes', () => {
    const { patient } = solver();
    // Held against the whole of it here and now: the machine may be slow, or busy with other things.
    const parts = [0, 1, 2, 3].map((which) => {
      const problem = hardProblem(which);
      const whole = duration(() => solveWeek(problem));
      const first = duration(() => {
        expect(patient.solve(problem).state).to.equal('looking');
      });
      return first / whole;
    });
    patient.stop();
    expect(Math.min(...parts), parts.join()).to.be.lessThan(0.2);
  });

  it('stopped it never arrives', async () => {
    const { patient, arrivals } = solver();
    patient.solve(hardProblem(3));
    patient.stop();
    await aTimeout(1500);
    expect(arrivals).to.deep.equal([]);
  });

  it('among too many the oldest is cancelled: the others arrive', async () => {
    const arrivals: number[] = [];
    const patient = new PatientSolver(() => arrivals.push(0), 1);
    const [first, second] = [hardProblem(4), hardProblem(5)];
    expect([patient.solve(first).state, patient.solve(second).state]).to.deep.equal(['looking', 'looking']);
    await waitUntil(() => arrivals.length > 0, 'the second arrives', patience);
    expect(patient.solve(second).state).to.equal('laid');
    await aTimeout(1500);
    expect(arrivals).to.have.length(1);
    expect(patient.solve(first).state).to.equal('looking');
    patient.stop();
  });
});

for (const [name, Stub] of Object.entries(withoutWorkers))
  describe(`with workers ${name}`, () => {
    before(() => {
      globalThis.Worker = Stub;
    });
    after(() => {
      globalThis.Worker = SourceWorker;
    });

    it('a week that takes long arrives once, and the page is served in between', async () => {
      const { patient, arrivals } = solver();
      const problem = hardProblem(0);
      expect(patient.solve(problem).state).to.equal('looking');
      const gaps: number[] = [];
      let last = performance.now();
      const beat = setInterval(() => {
        gaps.push(performance.now() - last);
        last = performance.now();
      }, 0);
      await waitUntil(() => arrivals.length > 0, 'it arrives', { ...patience, interval: 20 });
      clearInterval(beat);
      expect(gaps.length).to.be.greaterThan(3);
      expect(patient.solve(problem)).to.deep.equal(solveWeek(problem));
      await aTimeout(300);
      expect(arrivals).to.have.length(1);
    });

    it('stopped it never arrives', async () => {
      const { patient, arrivals } = solver();
      patient.solve(hardProblem(1));
      patient.stop();
      await aTimeout(1500);
      expect(arrivals).to.deep.equal([]);
    });
  });
