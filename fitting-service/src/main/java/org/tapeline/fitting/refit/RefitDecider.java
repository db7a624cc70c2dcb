package org.tapeline.fitting.refit;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.tapeline.fitting.refit.RefitCase.Status;
import org.tapeline.fitting.refit.RefitCommand.Book;
import org.tapeline.fitting.refit.RefitCommand.Close;
import org.tapeline.fitting.refit.RefitCommand.Open;
import org.tapeline.fitting.refit.RefitCommand.Unbook;
import org.tapeline.fitting.refit.RefitEvent.RefitBooked;
import org.tapeline.fitting.refit.RefitEvent.RefitClosed;
import org.tapeline.fitting.refit.RefitEvent.RefitOpened;
import org.tapeline.fitting.refit.RefitEvent.RefitUnbooked;

/**
 * The rules of a re-fit case. A command that is late (the case is over, the slot is the same) comes
 * to nothing.
 */
public final class RefitDecider {
  private RefitDecider() {}

  /**
   * @throws IllegalArgumentException when a case is to be opened that needs nothing
   */
  public static List<RefitEvent> decide(RefitCase state, RefitCommand command) {
    return switch (command) {
      case Open c -> open(state, c);
      case Book c -> book(state, c);
      case Unbook c ->
          state.status() == Status.OPEN && isOn(c.fitDay(), state)
              ? List.of(new RefitUnbooked(c.refitCase(), c.player(), c.fitDay(), c.why(), c.at()))
              : List.of();
      case Close c ->
          state.status() == Status.OPEN
              ? List.of(new RefitClosed(c.refitCase(), c.player(), c.outcome().code(), c.at()))
              : List.of();
    };
  }

  private static List<RefitEvent> open(RefitCase state, Open c) {
    if (c.needs().isEmpty()) {
      throw new IllegalArgumentException("A re-fit case needs something");
    }
    return state.status() != Status.NOT_OPENED
        ? List.of()
        : List.of(
            new RefitOpened(
                c.refitCase(),
                c.player(),
                c.field(),
                c.team(),
                "do-not-wear",
                c.why(),
                c.tag(),
                c.needs(),
                c.at()));
  }

  private static boolean isOn(UUID fitDay, RefitCase state) {
    return state.booking().filter(b -> b.fitDay().equals(fitDay)).isPresent();
  }

  private static boolean same(RefitBooked b, Book c) {
    return b.fitDay().equals(c.fitDay())
        && b.field().equals(c.field())
        && b.startsAt().equals(c.startsAt())
        && b.endsAt().equals(c.endsAt());
  }

  private static List<RefitEvent> book(RefitCase state, Book c) {
    boolean same = state.booking().filter(b -> same(b, c)).isPresent();
    return state.status() != Status.OPEN || same
        ? List.of()
        : List.of(
            new RefitBooked(
                c.refitCase(),
                c.player(),
                c.field(),
                c.fitDay(),
                c.startsAt(),
                c.endsAt(),
                c.zone(),
                c.waitsForArrival(),
                c.chosenWith(),
                c.at()));
  }

  public static RefitCase evolve(RefitCase state, RefitEvent event) {
    return switch (event) {
      case RefitOpened e -> new RefitCase(Status.OPEN, e.needs(), Optional.empty());
      case RefitBooked e -> new RefitCase(state.status(), state.needs(), Optional.of(e));
      case RefitUnbooked e -> new RefitCase(state.status(), state.needs(), Optional.empty());
      case RefitClosed e -> new RefitCase(Status.CLOSED, state.needs(), state.booking());
    };
  }
}
