package org.tapeline.journal.quarkus.metrics;

import java.util.Objects;

/**
 * A gauge that is counted in the database now and then, by one statement. Every copy of a service
 * counts the same: over copies the highest counts, not the sum.
 *
 * @param name with dots, such as {@code tapeline.helmets}; of seconds when it ends so
 * @param sql its columns are labels, by their names, but for the last one, which is the value; each
 *     row is a time series, so there must be few and always the same
 */
public record Figure(String name, String description, String sql) {

  public Figure {
    Objects.requireNonNull(name, "name");
    Objects.requireNonNull(description, "description");
    Objects.requireNonNull(sql, "sql");
  }
}
