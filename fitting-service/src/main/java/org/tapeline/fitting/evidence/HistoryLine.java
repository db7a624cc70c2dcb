package org.tapeline.fitting.evidence;

import java.util.UUID;
import org.tapeline.fitting.roster.Words;

/**
 * A sign-off in the list of a player's sign-offs.
 *
 * @param until when and why it ended; empty while nothing ended it
 */
public record HistoryLine(
    UUID session, String tag, String helmet, String fitter, String from, String until) {

  /** In the time of the field where it was fitted. */
  public static HistoryLine of(PastSignOff s) {
    Moments moments = Moments.at(s.field());
    return new HistoryLine(
        s.session(),
        s.tag(),
        Words.model(s.model()) + " " + Words.size(s.size()),
        s.fitter(),
        moments.whole(s.at()),
        s.end().map(e -> moments.whole(e.at()) + ": " + s.endSaid()).orElse(""));
  }
}
