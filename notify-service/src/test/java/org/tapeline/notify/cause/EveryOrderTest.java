package org.tapeline.notify.cause;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.function.Consumer;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.tapeline.journal.ReceivedEvent;
import org.tapeline.notify.notice.CauseTable;
import org.tapeline.notify.notice.CauseTableFile;
import org.tapeline.notify.notice.NoticeKind;
import org.tapeline.notify.notice.NoticeOfCase;

/** The events of a case in every order, sent after each step or not at all. */
@DisplayName("Whatever order the news of a re-fit case comes in,")
class EveryOrderTest {
  private static final CauseTable TABLE = CauseTableFile.read();
  private static final UUID CASE = new UUID(0, 1);
  private static final UUID PLAYER = new UUID(0, 2);
  private static final Instant NOW = Instant.parse("2025-09-12T17:00:00Z");
  private static final Instant SATURDAY = Instant.parse("2025-09-13T15:00:00Z");
  private static final Instant SUNDAY = Instant.parse("2025-09-14T15:00:00Z");

  private static ReceivedEvent event(long version) {
    UUID id = new UUID(1, version);
    return new ReceivedEvent(
        "fitting.events", id, "type", "refit", version, "key", NOW, id, id, null);
  }

  private static Consumer<RefitCaseRow> opened() {
    return row ->
        row.opened(
            new RefitOpened(CASE, PLAYER, "NORTH", "U10-HAWKS", "do-not-wear", "damage", NOW),
            event(1),
            NOW);
  }

  private static Consumer<RefitCaseRow> booked(long version, Instant at) {
    return row ->
        row.booked(
            new RefitBooked(
                CASE, PLAYER, "NORTH", at, at.plusSeconds(1200), "UTC", Optional.empty()),
            event(version));
  }

  private static Consumer<RefitCaseRow> unbooked(long version) {
    return row -> row.unbooked(event(version));
  }

  private static Consumer<RefitCaseRow> closed(long version) {
    return row -> row.closed(new RefitClosed(CASE, PLAYER, "fitted"), event(version));
  }

  private static List<List<Consumer<RefitCaseRow>>> orders(List<Consumer<RefitCaseRow>> events) {
    if (events.isEmpty()) {
      return List.of(List.of());
    }
    List<List<Consumer<RefitCaseRow>>> orders = new ArrayList<>();
    for (Consumer<RefitCaseRow> first : events) {
      List<Consumer<RefitCaseRow>> rest = new ArrayList<>(events);
      rest.remove(first);
      for (List<Consumer<RefitCaseRow>> order : orders(rest)) {
        List<Consumer<RefitCaseRow>> whole = new ArrayList<>(List.of(first));
        whole.addAll(order);
        orders.add(whole);
      }
    }
    return orders;
  }

  private static List<Step.Tell> tells(RefitCaseRow row, List<NoticeOfCase> told) {
    return WhenRefitCaseMovesThenTellGuardian.react(TABLE, row.view(), ToldSoFar.of(told), true)
        .stream()
        .filter(Step.Tell.class::isInstance)
        .map(Step.Tell.class::cast)
        .toList();
  }

  private static RefitCaseRow row() {
    RefitCaseRow row = new RefitCaseRow();
    row.refitCase = CASE;
    row.player = PLAYER;
    return row;
  }

  /** Everything that is told when each notice is sent before the next event comes. */
  private static List<Step.Tell> sentAtOnce(List<Consumer<RefitCaseRow>> order) {
    RefitCaseRow row = row();
    List<NoticeOfCase> told = new ArrayList<>();
    List<Step.Tell> sent = new ArrayList<>();
    for (Consumer<RefitCaseRow> event : order) {
      event.accept(row);
      for (int twice = 0; twice < 2; twice++) {
        for (Step.Tell tell : tells(row, told)) {
          sent.add(tell);
          told.add(
              new NoticeOfCase(
                  tell.kind(),
                  false,
                  true,
                  tell.slot().map(RefitCase.Booking::startsAt),
                  tell.slot().map(RefitCase.Booking::field)));
        }
      }
    }
    return sent;
  }

  @Test
  @DisplayName("what was not sent yet is one notice, with the last date")
  void nothingSent() {
    for (List<Consumer<RefitCaseRow>> order :
        orders(List.of(opened(), booked(2, SATURDAY), unbooked(3), booked(4, SUNDAY)))) {
      RefitCaseRow row = row();
      order.forEach(event -> event.accept(row));
      assertThat(tells(row, List.of()))
          .singleElement()
          .satisfies(
              tell -> {
                assertThat(tell.kind()).isEqualTo(NoticeKind.DO_NOT_WEAR_REFIT);
                assertThat(tell.slot().map(RefitCase.Booking::startsAt)).contains(SUNDAY);
              });
    }
  }

  @Test
  @DisplayName("a case that was closed before anything was sent leads to nothing")
  void closedUnsent() {
    for (List<Consumer<RefitCaseRow>> order :
        orders(List.of(opened(), booked(2, SATURDAY), unbooked(3), closed(4)))) {
      RefitCaseRow row = row();
      order.forEach(event -> event.accept(row));
      assertThat(tells(row, List.of())).isEmpty();
    }
  }

  @Test
  @DisplayName("who is told at every step hears no cause twice, and last the last date")
  void sentAtEveryStep() {
    for (List<Consumer<RefitCaseRow>> order :
        orders(List.of(opened(), booked(2, SATURDAY), unbooked(3), booked(4, SUNDAY)))) {
      List<Step.Tell> sent = sentAtOnce(order);
      Set<List<Object>> once = new HashSet<>();
      assertThat(sent).allMatch(tell -> once.add(List.of(tell.kind(), tell.about())));
      Optional<Instant> last = sent.getLast().slot().map(RefitCase.Booking::startsAt);
      assertThat(last).contains(SUNDAY);
    }
  }

  @Test
  @DisplayName("who was told anything hears once that it is fitted, and nothing after")
  void sentThenClosed() {
    for (List<Consumer<RefitCaseRow>> order :
        orders(List.of(opened(), booked(2, SATURDAY), booked(3, SUNDAY), closed(4)))) {
      List<Step.Tell> sent = sentAtOnce(order);
      if (!sent.isEmpty()) {
        assertThat(sent.getLast().kind()).isEqualTo(NoticeKind.FITTED_AGAIN);
        assertThat(sent).filteredOn(t -> t.kind() == NoticeKind.FITTED_AGAIN).hasSize(1);
      }
    }
  }
}
