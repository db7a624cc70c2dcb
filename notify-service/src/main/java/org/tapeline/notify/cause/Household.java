package org.tapeline.notify.cause;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.tapeline.notify.notice.NoticeKind;

/**
 * Puts together what one guardian is to be told of several children: what is of one kind and ready
 * within the window becomes one notice. Nothing waits when no other child can have any.
 */
public final class Household {
  private static final Comparator<Piece> BY_DATE =
      Comparator.comparing(
              (Piece piece) ->
                  piece.tell().slot().map(RefitCase.Booking::startsAt).orElse(Instant.MAX))
          .thenComparing(Piece::player);

  private Household() {}

  /**
   * @param ready all that is ready for one guardian
   * @param children how many players the guardian stands for, 1 or more
   * @return what goes out now, each list as one notice; what is in none waits
   */
  public static List<List<Piece>> now(List<Piece> ready, int children, Instant now) {
    List<List<Piece>> notices = new ArrayList<>();
    Map<NoticeKind, List<Piece>> together = new EnumMap<>(NoticeKind.class);
    for (Piece piece : ready) {
      if (piece.merges()) {
        together.computeIfAbsent(piece.tell().kind(), kind -> new ArrayList<>()).add(piece);
      } else {
        notices.add(List.of(piece));
      }
    }
    together.values().stream()
        .filter(pieces -> goes(pieces, children, now))
        .forEach(pieces -> notices.add(pieces.stream().sorted(BY_DATE).toList()));
    return notices;
  }

  private static boolean goes(List<Piece> pieces, int children, Instant now) {
    boolean waitIsOver = pieces.stream().anyMatch(p -> !now.isBefore(p.holdUntil()));
    boolean all = pieces.stream().map(Piece::player).distinct().count() >= children;
    return waitIsOver || all && pieces.stream().allMatch(Piece::complete);
  }
}
