package org.tapeline.fitting.whole;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.tapeline.fitting.refit.RefitEvent.RefitClosed;
import org.tapeline.fitting.refit.RefitEvent.RefitOpened;
import org.tapeline.fitting.session.Need;
import org.tapeline.journal.Journal;
import org.tapeline.journal.RecordedEvent;

/**
 * Does what inventory does on hearing of a case: keeps what it needs, or says that it is missing
 * and keeps it later; gives it back when the case is over.
 */
final class AnsweringInventory {
  private final Peers peers;
  private final Journal journal;
  private final Map<UUID, String> keptFor = new HashMap<>();
  private long position;

  AnsweringInventory(Peers peers, Journal journal) {
    this.peers = peers;
    this.journal = journal;
  }

  void answer(List<Telling> tellings) {
    List<RecordedEvent> news = journal.loadAfter(position, 10_000);
    for (RecordedEvent event : news) {
      position = event.position();
      if (event.data() instanceof RefitOpened opened) {
        tellings.stream().filter(t -> t.isAbout(opened.player())).forEach(t -> keeps(t, opened));
      } else if (event.data() instanceof RefitClosed closed) {
        tellings.stream()
            .filter(t -> t.isAbout(closed.player()))
            .forEach(t -> givesBack(t, closed));
      }
    }
  }

  private void keeps(Telling telling, RefitOpened opened) {
    String stream = "reservation-" + opened.refitCase();
    for (Need need : opened.needs()) {
      if (!need.needsHelmet()) {
        telling.answer(stream, peers.reserved(opened.refitCase(), opened.player(), need.key()));
        continue;
      }
      String size = need.size().orElseThrow();
      if (size.equals("youth-large")) {
        telling.answer(stream, peers.missing(opened.refitCase(), opened.player(), size));
      }
      String spare = spareOf(telling, opened.player());
      keptFor.put(opened.refitCase(), spare);
      telling.answer(stream, peers.reserved(opened.refitCase(), opened.player(), spare, size));
    }
  }

  private void givesBack(Telling telling, RefitClosed closed) {
    String spare = keptFor.get(closed.refitCase());
    if (spare != null) {
      telling.answer(
          "reservation-" + closed.refitCase(),
          peers.released(closed.refitCase(), closed.player(), spare));
    }
  }

  private static String spareOf(Telling telling, UUID player) {
    return telling.story.players.stream()
        .filter(p -> p.player().equals(player))
        .map(p -> p.tag() + "R")
        .findFirst()
        .orElseThrow();
  }
}
