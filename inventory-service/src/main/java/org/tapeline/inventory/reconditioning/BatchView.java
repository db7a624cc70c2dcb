package org.tapeline.inventory.reconditioning;

import java.util.List;
import java.util.UUID;
import org.tapeline.inventory.place.Places;
import org.tapeline.journal.DerivedId;

/**
 * A batch as its page shows it.
 *
 * @param formId what commands on this page are derived from: a new one each time it is shown
 */
public record BatchView(
    BatchSummary batch,
    List<BatchLine> lines,
    List<Places.Place> places,
    String currency,
    Said said,
    UUID formId) {

  public boolean isDraft() {
    return batch.state().equals("draft");
  }

  public boolean isClosed() {
    return batch.state().equals("closed");
  }

  public boolean isSent() {
    return batch.state().equals("sent");
  }

  /** Something has gone of which nothing is known yet. */
  public boolean isAwaited() {
    return !isDraft() && batch.unknown() > 0;
  }

  public List<BatchLine> out() {
    return lines.stream().filter(BatchLine::isOut).toList();
  }

  public List<BatchLine> back() {
    return lines.stream().filter(l -> !l.isOut()).toList();
  }

  public String total() {
    return new Money(batch.costCents(), currency).says();
  }

  public String cost(BatchLine line) {
    return line.costCents().map(c -> new Money(c, currency).says()).orElse("");
  }

  /** Whether the place is chosen: what was typed, else from where they went. */
  public boolean isAt(String place) {
    String typed = said.receipt().place();
    return place.equals(typed.isEmpty() ? batch.place() : typed);
  }

  /** The id of a command on this page. */
  public UUID id(String what) {
    return DerivedId.from(formId, what);
  }

  /** The id of a command that concerns one helmet. */
  public UUID idOf(String what, String tag) {
    return id(what + " " + tag);
  }
}
