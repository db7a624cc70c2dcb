package org.tapeline.notify.wish;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Comparator;
import java.util.List;
import java.util.UUID;
import java.util.stream.Stream;
import org.tapeline.journal.Journal;
import org.tapeline.journal.RecordedEvent;
import org.tapeline.journal.StreamName;
import org.tapeline.notify.optout.OptOuts;
import org.tapeline.notify.optout.OptedIn;
import org.tapeline.notify.optout.OptedOut;

/** What a person asked for and when, from the journal, which cannot be altered: the proof. */
@ApplicationScoped
class ContactHistory {
  private static final DateTimeFormatter TIME =
      DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm:ss 'UTC'").withZone(ZoneOffset.UTC);

  private final Journal journal;
  private final OptOuts optOuts;

  ContactHistory(Journal journal, OptOuts optOuts) {
    this.journal = journal;
    this.optOuts = optOuts;
  }

  /**
   * @param event the id in the journal
   */
  record Turn(String at, String what, UUID event) {}

  /** Newest first. */
  @Transactional
  List<Turn> of(UUID guardian) {
    String id = guardian.toString();
    return Stream.concat(
            optOuts.history(id).stream(), journal.load(StreamName.of("wishes", id, id)).stream())
        .sorted(Comparator.comparing(RecordedEvent::time).reversed())
        .map(event -> new Turn(TIME.format(event.time()), words(event.data()), event.id()))
        .toList();
  }

  private static String words(Object event) {
    return switch (event) {
      case OptedOut out -> "News turned off by the link of notice " + out.notice();
      case OptedIn in -> "News turned on again by the " + in.by();
      case WishesSet set -> "Wishes set by the " + set.by() + ": " + wishes(set);
      default -> event.getClass().getSimpleName();
    };
  }

  private static String wishes(WishesSet set) {
    String channels =
        set.channels().isEmpty() ? "any channel" : "first " + set.channels().getFirst();
    String quiet =
        set.quietFrom() == null
            ? "no quiet hours"
            : "quiet from " + set.quietFrom() + " to " + set.quietTo();
    return channels + ", " + quiet + (set.zone() == null ? "" : ", " + set.zone());
  }
}
