package org.tapeline.notify.notice;

import java.time.Duration;
import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.tapeline.notify.notice.CauseName.Recipient;

/**
 * Which cause leads to which notice, for whom, with which urgency, how long it may wait for others,
 * and what overtakes it ({@code causes.json}).
 */
public final class CauseTable {
  private final int version;
  private final Map<CauseName, CauseRule> byCause = new EnumMap<>(CauseName.class);

  /**
   * @param version rises with every change; 1 or more
   * @param rules one for each {@link CauseName}
   * @throws IllegalArgumentException when one is missing or stands twice
   */
  public CauseTable(int version, List<CauseRule> rules) {
    if (version < 1) {
      throw new IllegalArgumentException("causes.json: a version is 1 or more");
    }
    this.version = version;
    for (CauseRule rule : rules) {
      if (byCause.put(rule.cause(), rule) != null) {
        throw new IllegalArgumentException("causes.json: twice " + rule.cause().code());
      }
    }
    for (CauseName cause : CauseName.values()) {
      if (!byCause.containsKey(cause)) {
        throw new IllegalArgumentException("causes.json: nothing for " + cause.code());
      }
    }
  }

  public int version() {
    return version;
  }

  /** In the order of {@link CauseName}. */
  public List<CauseRule> rules() {
    return List.copyOf(byCause.values());
  }

  public CauseRule of(CauseName cause) {
    return byCause.get(cause);
  }

  public boolean tells(CauseName cause, Recipient recipient) {
    return of(cause).to().contains(recipient);
  }

  /**
   * The window of a cause, shortened where a setting says so.
   *
   * @param atMost no window is longer
   */
  public Duration window(CauseName cause, Duration atMost) {
    Duration window = of(cause).window();
    return window.compareTo(atMost) > 0 ? atMost : window;
  }

  /** Kinds of later news after which a notice of this kind is not sent any more. */
  Set<NoticeKind> overtakes(NoticeKind kind) {
    Set<NoticeKind> kinds = new LinkedHashSet<>();
    of(kind).forEach(rule -> kinds.addAll(rule.overtakenBy()));
    return kinds;
  }

  /** Whether its own date ends a notice of this kind. */
  boolean endsWithItsDate(NoticeKind kind) {
    return of(kind).stream().anyMatch(CauseRule::overtakenByItsDate);
  }

  /** Whether several children of one guardian are told of in one notice. */
  public boolean mergesHouseholds(NoticeKind kind) {
    return of(kind).stream().anyMatch(CauseRule::household);
  }

  private List<CauseRule> of(NoticeKind kind) {
    return byCause.values().stream().filter(rule -> rule.kind() == kind).toList();
  }

  /** The urgency code that stands for "that of the case". */
  static Optional<Urgency> urgency(String code) {
    return code.equals("as-the-case") ? Optional.empty() : Optional.of(Urgency.of(code));
  }
}
