package org.tapeline.fitting.refit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.tapeline.fitting.refit.RefitCommand.Book;
import org.tapeline.fitting.refit.RefitCommand.Close;
import org.tapeline.fitting.refit.RefitCommand.Open;
import org.tapeline.fitting.refit.RefitCommand.Outcome;
import org.tapeline.fitting.refit.RefitCommand.Unbook;
import org.tapeline.fitting.refit.RefitEvent.RefitBooked;
import org.tapeline.fitting.refit.RefitEvent.RefitClosed;
import org.tapeline.fitting.refit.RefitEvent.RefitOpened;
import org.tapeline.fitting.refit.RefitEvent.RefitUnbooked;
import org.tapeline.fitting.session.Need;

@DisplayName("A re-fit case")
class RefitDeciderTest {
  private static final UUID CASE = UUID.randomUUID();
  private static final UUID PLAYER = UUID.randomUUID();
  private static final UUID DAY = UUID.randomUUID();
  private static final UUID OTHER_DAY = UUID.randomUUID();
  private static final Instant AT = Instant.parse("2026-08-01T15:06:00Z");
  private static final Instant SLOT = Instant.parse("2026-08-04T22:30:00Z");
  private static final List<Need> NEEDS = List.of(Need.helmet("model-a", "youth-small"));
  private static final RefitOpened OPENED =
      new RefitOpened(
          CASE,
          PLAYER,
          "NORTH",
          "U10-HAWKS",
          "do-not-wear",
          "damage",
          Optional.of("LV0001"),
          NEEDS,
          AT);
  private static final RefitClosed CLOSED = new RefitClosed(CASE, PLAYER, "fitted", AT);

  private static Open open(List<Need> needs) {
    return new Open(CASE, PLAYER, "NORTH", "U10-HAWKS", "damage", Optional.of("LV0001"), needs, AT);
  }

  private static Book book(UUID day, Instant slot) {
    return new Book(
        CASE,
        PLAYER,
        "NORTH",
        day,
        slot,
        slot.plusSeconds(900),
        "America/Chicago",
        true,
        Optional.empty(),
        AT);
  }

  private static RefitBooked booked(UUID day, Instant slot) {
    return new RefitBooked(
        CASE,
        PLAYER,
        "NORTH",
        day,
        slot,
        slot.plusSeconds(900),
        "America/Chicago",
        true,
        Optional.empty(),
        AT);
  }

  private static List<RefitEvent> when(RefitCommand command, RefitEvent... given) {
    RefitCase state = RefitCase.NONE;
    for (RefitEvent event : given) {
      state = RefitDecider.evolve(state, event);
    }
    return RefitDecider.decide(state, command);
  }

  @Test
  @DisplayName("is opened with its needs, and nobody may wear the helmet meanwhile")
  void opened() {
    assertThat(when(open(NEEDS))).containsExactly(OPENED);
  }

  @Test
  @DisplayName("is opened once, also when it is over")
  void openedOnce() {
    assertThat(when(open(NEEDS), OPENED)).isEmpty();
    assertThat(when(open(NEEDS), OPENED, CLOSED)).isEmpty();
  }

  @Test
  @DisplayName("that needs nothing cannot be")
  void needsSomething() {
    assertThatThrownBy(() -> when(open(List.of()))).isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  @DisplayName("is booked while it is open, and only then")
  void bookedWhileOpen() {
    assertThat(when(book(DAY, SLOT), OPENED)).containsExactly(booked(DAY, SLOT));
    assertThat(when(book(DAY, SLOT))).isEmpty();
    assertThat(when(book(DAY, SLOT), OPENED, CLOSED)).isEmpty();
  }

  @Test
  @DisplayName("is booked again for another day or hour, and not for the one that it has")
  void bookedAgain() {
    assertThat(when(book(DAY, SLOT), OPENED, booked(DAY, SLOT))).isEmpty();
    Instant later = SLOT.plusSeconds(900);
    assertThat(when(book(DAY, later), OPENED, booked(DAY, SLOT)))
        .containsExactly(booked(DAY, later));
    assertThat(when(book(OTHER_DAY, SLOT), OPENED, booked(DAY, SLOT)))
        .containsExactly(booked(OTHER_DAY, SLOT));
  }

  @Test
  @DisplayName("that was moved away and back has the newest slot")
  void movedBack() {
    assertThat(when(book(DAY, SLOT), OPENED, booked(DAY, SLOT), booked(OTHER_DAY, SLOT)))
        .containsExactly(booked(DAY, SLOT));
  }

  @Test
  @DisplayName("is closed once, as fitted or as cancelled")
  void closed() {
    assertThat(when(new Close(CASE, PLAYER, Outcome.FITTED, AT), OPENED)).containsExactly(CLOSED);
    assertThat(when(new Close(CASE, PLAYER, Outcome.CANCELLED, AT), OPENED, booked(DAY, SLOT)))
        .containsExactly(new RefitClosed(CASE, PLAYER, "cancelled", AT));
    assertThat(when(new Close(CASE, PLAYER, Outcome.FITTED, AT), OPENED, CLOSED)).isEmpty();
    assertThat(when(new Close(CASE, PLAYER, Outcome.FITTED, AT))).isEmpty();
  }

  private static Unbook unbook(UUID day) {
    return new Unbook(CASE, PLAYER, day, "cancelled", AT);
  }

  @Test
  @DisplayName(
      "loses its slot with the fit day, and can then be booked on the very same slot again")
  void unbooked() {
    RefitUnbooked gone = new RefitUnbooked(CASE, PLAYER, DAY, "cancelled", AT);
    assertThat(when(unbook(DAY), OPENED, booked(DAY, SLOT))).containsExactly(gone);
    assertThat(when(book(DAY, SLOT), OPENED, booked(DAY, SLOT), gone))
        .containsExactly(booked(DAY, SLOT));
  }

  @Test
  @DisplayName(
      "does not lose the slot of another day, nor one that it has not, nor when it is over")
  void keepsSlot() {
    assertThat(when(unbook(OTHER_DAY), OPENED, booked(DAY, SLOT))).isEmpty();
    assertThat(when(unbook(DAY), OPENED)).isEmpty();
    assertThat(when(unbook(DAY), OPENED, booked(DAY, SLOT), CLOSED)).isEmpty();
  }

  @Test
  @DisplayName(
      "is booked anew when its day is held at another field or its slot is of another length")
  void otherField() {
    Book elsewhere =
        new Book(
            CASE,
            PLAYER,
            "RIVER",
            DAY,
            SLOT,
            SLOT.plusSeconds(900),
            "America/Chicago",
            true,
            Optional.empty(),
            AT);
    Book longer =
        new Book(
            CASE,
            PLAYER,
            "NORTH",
            DAY,
            SLOT,
            SLOT.plusSeconds(1200),
            "America/Chicago",
            true,
            Optional.empty(),
            AT);
    assertThat(when(elsewhere, OPENED, booked(DAY, SLOT))).hasSize(1);
    assertThat(when(longer, OPENED, booked(DAY, SLOT))).hasSize(1);
    assertThat(when(book(DAY, SLOT), OPENED, booked(DAY, SLOT))).isEmpty();
  }
}
