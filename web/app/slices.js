/** Long work in slices, so that the screen goes on drawing and a touch is answered meanwhile. */

/** So long a slice may take: well below what a person takes for a pause. */
const SLICE_MS = 24;

export class Slices {
  #since = performance.now();

  /** Whether it is time to let the page draw. */
  get full() {
    return performance.now() - this.#since > SLICE_MS;
  }

  /** Lets the page draw. @returns {Promise<void>} */
  async next() {
    await new Promise((done) => setTimeout(done));
    this.#since = performance.now();
  }
}
