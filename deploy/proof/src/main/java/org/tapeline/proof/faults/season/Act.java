package org.tapeline.proof.faults.season;

import java.util.Random;

/** Something that people do in a season: one or several commands. */
interface Act {
  /**
   * Does it once, as far as it goes.
   *
   * @throws Gate.Away when something could not be looked up just now
   */
  void once(Gate gate, Random random) throws Gate.Away;
}
