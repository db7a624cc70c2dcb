package org.tapeline.fitting.fitday;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import java.time.Clock;
import java.time.Duration;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** How long the fit checks of the last twelve months took, by field. */
@ApplicationScoped
public class FitTimes {
  private static final Duration SEASON = Duration.ofDays(365);

  /**
   * Sessions that came to a result, by their length without pauses. What was over within a minute
   * was typed in afterwards, what ran past the longest slot was left open.
   */
  private static final String LENGTHS =
      """
      select field, cast(ceil(seconds / 300.0) * 5 as int), count(*)
      from (
        select field, extract(epoch from (ended_at - at)) - paused_seconds as seconds
        from fit_session
        where status in ('PASSED', 'FAILED') and ended_at >= :since
      ) as finished
      where seconds between 60 and :longest
      group by 1, 2
      """;

  private final EntityManager database;
  private final Clock clock;

  FitTimes(EntityManager database, Clock clock) {
    this.database = database;
    this.clock = clock;
  }

  public FitMinutes at(String field) {
    return at(List.of(field)).get(field);
  }

  public Map<String, FitMinutes> at(List<String> fields) {
    Map<String, Map<Integer, Long>> byField = new HashMap<>();
    Map<Integer, Long> all = new HashMap<>();
    List<?> rows =
        database
            .createNativeQuery(LENGTHS)
            .setParameter("since", clock.instant().minus(SEASON))
            .setParameter("longest", FitMinutes.LONGEST * 60)
            .getResultList();
    for (Object row : rows) {
      Object[] cell = (Object[]) row;
      int minutes = ((Number) cell[1]).intValue();
      long count = ((Number) cell[2]).longValue();
      byField.computeIfAbsent((String) cell[0], f -> new HashMap<>()).put(minutes, count);
      all.merge(minutes, count, Long::sum);
    }
    FitLengths association = FitLengths.of(all);
    Map<String, FitMinutes> answer = new HashMap<>();
    for (String field : fields) {
      FitLengths own = FitLengths.of(byField.getOrDefault(field, Map.of()));
      answer.put(field, FitMinutes.of(own, association));
    }
    return answer;
  }
}
