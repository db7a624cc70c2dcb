package org.tapeline.proof.faults.compare;

import java.sql.SQLException;

/** Compares one thing with what it must be, by a way of its own. */
interface Check {
  void look(Evidence evidence, Findings findings) throws SQLException;
}
