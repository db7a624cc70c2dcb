package org.tapeline.fitting.session;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.tapeline.fitting.protocol.Protocol;

/**
 * A fit session as its events tell.
 *
 * @param protocolVersion of the protocol with which it was opened; 0 before that
 * @param fitter who has it in hand
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
    Instant openedAt,
    Optional<Helmet> helmet,
    Map<String, Work> work) {

  /** Where the session stands. */
  public enum Status {
    NOT_OPENED,
    OPEN,
    /** Put aside for a while: to be resumed by whoever goes on with it. */
    PAUSED,
    PASSED,
    FAILED,
    ABANDONED
  }

  /** The helmet on the head. */
  public record Helmet(String tag, String model, String size) {}

  /** An answer that counts. */
  public record AnsweredCheck(boolean passed, Optional<String> finding, Instant at) {}

  /**
   * A remedy that was applied, or passed over.
   *
   * @param item the part; empty for one that takes none
   */
  public record Applied(String check, String remedy, Optional<String> item) {}

  /**
   * A remedy that is not possible here.
   *
   * @param why {@code no-part} or {@code not-possible}
   */
  public record PassedOver(Applied remedy, String why) {}

  /**
   * What was done on one helmet.
   *
   * @param answers the answers that count: those given since the last change that touched them
   * @param applied remedies in the order in which they were applied
   * @param passedOver remedies that are not possible here
   */
  public record Work(
      Helmet helmet,
      Map<String, AnsweredCheck> answers,
      List<Applied> applied,
      List<PassedOver> passedOver) {

    public Work {
      answers = Map.copyOf(answers);
      applied = List.copyOf(applied);
      passedOver = List.copyOf(passedOver);
    }

    static Work on(Helmet helmet) {
      return new Work(helmet, Map.of(), List.of(), List.of());
    }

    /** Parts that were fitted from stock. */
    public List<String> parts() {
      return applied.stream().flatMap(a -> a.item().stream()).toList();
    }
  }

  public static final FitSession NONE =
      new FitSession(
          Status.NOT_OPENED,
          null,
          null,
          "",
          "",
          "",
          "",
          0,
          List.of(),
          Instant.EPOCH,
          Optional.empty(),
          Map.of());

  public boolean open() {
    return status == Status.OPEN;
  }

  /** Answers to one version of a protocol are no answers to another. */
  public boolean openedWith(Protocol inForce) {
    return protocol.equals(inForce.id()) && protocolVersion == inForce.version();
  }

  /** Neither over nor not begun. */
  public boolean unfinished() {
    return status == Status.OPEN || status == Status.PAUSED;
  }

  /** What was done on the helmet on the head; empty when there is none. */
  public Optional<Work> now() {
    return helmet.map(h -> work.getOrDefault(h.tag(), Work.on(h)));
  }

  public Map<String, AnsweredCheck> answers() {
    return now().map(Work::answers).orElse(Map.of());
  }

  public List<String> parts() {
    return now().map(Work::parts).orElse(List.of());
  }

  /** Parts that went into any helmet of this session: they are no longer on the shelf. */
  public List<String> partsUsed() {
    return work.values().stream().flatMap(done -> done.parts().stream()).toList();
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
