package org.tapeline.fitting.session;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;

/**
 * A fit session as its events tell.
 *
 * @param answers the answers that count: those given since the last change that touched them
 * @param tried remedies that were applied to the helmet on the head, as {@code check/remedy}
 * @param parts parts that were taken from stock
 */
public record FitSession(
    Status status,
    UUID session,
    UUID player,
    String field,
    String team,
    String fitter,
    List<FitSessionEvent.AdvisedSize> advised,
    Optional<Helmet> helmet,
    Map<String, AnsweredCheck> answers,
    Set<String> tried,
    List<String> parts) {

  /** Where the session stands. */
  public enum Status {
    NOT_OPENED,
    OPEN,
    PASSED,
    FAILED,
    ABANDONED
  }

  /** The helmet on the head. */
  public record Helmet(String tag, String model, String size) {}

  /** An answer that counts. */
  public record AnsweredCheck(boolean passed, Optional<String> finding, Instant at) {}

  public static final FitSession NONE =
      new FitSession(
          Status.NOT_OPENED,
          null,
          null,
          "",
          "",
          "",
          List.of(),
          Optional.empty(),
          Map.of(),
          Set.of(),
          List.of());

  public boolean open() {
    return status == Status.OPEN;
  }

  public boolean passed(String check) {
    return answers.containsKey(check) && answers.get(check).passed();
  }

  public boolean failed(String check) {
    return answers.containsKey(check) && !answers.get(check).passed();
  }
}
