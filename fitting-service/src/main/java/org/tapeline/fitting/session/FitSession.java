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
 * @param protocolVersion of the protocol with which it was opened; 0 before that
 * @param helmet the helmet on the head
 * @param work what was done on each helmet, by its tag
 */
public record FitSession(
    Status status,
    UUID session,
    UUID player,
    String field,
    String team,
    String fitter,
    String protocol,
    int protocolVersion,
    List<FitSessionEvent.AdvisedSize> advised,
    Optional<Helmet> helmet,
    Map<String, Work> work) {

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

  /**
   * What was done on one helmet.
   *
   * @param answers the answers that count: those given since the last change that touched them
   * @param tried remedies that were applied, as {@code check/remedy}
   * @param parts parts that were fitted to it from stock
   */
  public record Work(Map<String, AnsweredCheck> answers, Set<String> tried, List<String> parts) {
    static final Work NONE = new Work(Map.of(), Set.of(), List.of());

    public Work {
      answers = Map.copyOf(answers);
      tried = Set.copyOf(tried);
      parts = List.copyOf(parts);
    }
  }

  public static final FitSession NONE =
      new FitSession(
          Status.NOT_OPENED, null, null, "", "", "", "", 0, List.of(), Optional.empty(), Map.of());

  public boolean open() {
    return status == Status.OPEN;
  }

  /** What was done on the helmet on the head; nothing when there is none. */
  public Work now() {
    return helmet.map(h -> work.getOrDefault(h.tag(), Work.NONE)).orElse(Work.NONE);
  }

  public Map<String, AnsweredCheck> answers() {
    return now().answers();
  }

  public List<String> parts() {
    return now().parts();
  }

  public boolean tried(String check, String remedy) {
    return now().tried().contains(check + "/" + remedy);
  }

  public boolean passed(String check) {
    return answers().containsKey(check) && answers().get(check).passed();
  }

  public boolean failed(String check) {
    return answers().containsKey(check) && !answers().get(check).passed();
  }

  /** What was found wrong; empty for a check that did not fail or whose finding was not said. */
  public String finding(String check) {
    AnsweredCheck answer = answers().get(check);
    return answer == null ? "" : answer.finding().orElse("");
  }
}
