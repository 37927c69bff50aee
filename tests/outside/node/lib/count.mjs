// Counts checks. A check that throws or gives false is a failure; its name is printed, and nothing stops.

export class Count {
  constructor() {
    this.passed = 0;
    this.failed = 0;
  }

  note(name, good, why = '') {
    if (good) this.passed += 1;
    else {
      this.failed += 1;
      console.log(`FAILED ${name}${why ? `: ${why}` : ''}`);
    }
    return good;
  }

  async check(name, action) {
    try {
      const outcome = await action();
      this.note(name, outcome !== false && typeof outcome !== 'string', typeof outcome === 'string' ? outcome : '');
    } catch (error) {
      this.note(name, false, error.message);
    }
  }

  close() {
    console.log(`${this.passed} passed, ${this.failed} failed`);
    process.exitCode = this.failed === 0 ? 0 : 1;
  }
}
