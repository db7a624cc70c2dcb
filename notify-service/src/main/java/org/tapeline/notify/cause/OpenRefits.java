package org.tapeline.notify.cause;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.tapeline.notify.notice.NoticeRow;

/** The re-fit cases that are open, to be shown; always in the caller's transaction. */
@ApplicationScoped
public class OpenRefits {

  /** Those of a player; one at most but for a moment, when two events of it cross. */
  public List<RefitCase> of(Collection<UUID> players) {
    return players.stream()
        .sorted()
        .flatMap(
            player ->
                RefitCaseRow.<RefitCaseRow>list("player = ?1 and outcome is null", player).stream())
        .flatMap(row -> of(row.refitCase).stream())
        .toList();
  }

  /** Whether that guardian chose the slot that the case has. */
  boolean chosenBy(UUID refitCase, String recipient) {
    return NoticeRow.count(
            "recipient = ?1 and notice = (select bookingNotice from RefitCaseRow where refitCase ="
                + " ?2)",
            recipient,
            refitCase)
        > 0;
  }

  /** Empty when it is over, or not heard of in full. */
  public Optional<RefitCase> of(UUID refitCase) {
    return RefitCaseRow.<RefitCaseRow>findByIdOptional(refitCase)
        .map(RefitCaseRow::view)
        .filter(found -> found.opening().isPresent() && found.closing().isEmpty());
  }
}
