package org.tapeline.notify.trace;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Which notices are wanted; what is empty asks for all.
 *
 * @param from raised at or after
 * @param to raised before
 */
record NoticeFilter(
    Optional<String> kind,
    Optional<String> urgency,
    Optional<String> state,
    Optional<String> channel,
    Optional<Instant> from,
    Optional<Instant> to) {

  /** A condition in SQL and the values of its question marks. */
  record Condition(String sql, List<Object> values) {
    Condition and(String more, List<?> moreValues) {
      List<Object> all = new ArrayList<>(values);
      all.addAll(moreValues);
      return new Condition(sql + " and " + more, List.copyOf(all));
    }
  }

  /** On table {@code notice n}. */
  Condition condition() {
    List<String> parts = new ArrayList<>(List.of("true"));
    List<Object> values = new ArrayList<>();
    add(kind, "n.kind = ?", parts, values);
    add(urgency, "n.urgency = ?", parts, values);
    add(state, "n.state = ?", parts, values);
    add(channel, "coalesce(n.channel, 'none') = ?", parts, values);
    add(from, "n.raised_at >= ?", parts, values);
    add(to, "n.raised_at < ?", parts, values);
    return new Condition(String.join(" and ", parts), List.copyOf(values));
  }

  private static void add(Optional<?> value, String sql, List<String> parts, List<Object> values) {
    value.ifPresent(
        one -> {
          parts.add(sql);
          values.add(one);
        });
  }
}
